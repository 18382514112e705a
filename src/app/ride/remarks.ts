/**
 * Chooses the one short remark that may stand on the screen: only for what went outside tolerance, one at a time,
 * and not the same again and again. Pure; words are found by the caller.
 */
import { motorPulled } from '../../core/coach/shifts.ts';
import { HEAVY_LOAD } from '../../core/model/shift.ts';
import type { RideEvent, ShiftDirection } from '../../core/ride/types.ts';
import type { Messages } from '../../words/messages.ts';

/** Remarks there are words for. */
type CodeOf<Id> = Id extends `remark-${infer Code}` ? Code : never;
type RemarkCode = CodeOf<keyof Messages['hud']>;

/** How long a remark stands, and how long the same one then stays away (s of ride time). */
const REMARK_SHOWN_S = 2.6;
const REMARK_REST_S = 8;

/** These say what to do at once; they may push another remark aside. */
const URGENT: readonly RemarkCode[] = ['chain-dropped', 'foot-down', 'line-missed'];

/** Whether there is another chainring that way. */
type RingFor = (direction: ShiftDirection) => boolean;

/** The remark an event deserves, or null for most of them. */
function remarkOf(event: RideEvent, ringFor: RingFor): RemarkCode | null {
  switch (event.kind) {
    case 'shift-done':
      if (event.load < HEAVY_LOAD) return null;
      if (motorPulled(event)) return 'motor-pulled';
      return event.hub === true ? 'hub-knocked' : 'heavy-shift';
    case 'shift-refused':
      if (event.reason === 'crossed') return 'refused-crossed';
      if (event.derailleur === 'front') return 'no-ring';
      // The last sprocket is not the last gear while there is another ring.
      return ringFor(event.direction) ? `ring-${event.direction}` : `no-${event.direction}`;
    case 'chain-crossed':
      return 'crossed';
    case 'shift-hung':
      return event.hub === true ? 'hub-waits' : 'shift-hung';
    case 'shift-waiting':
    case 'chain-dropped':
    case 'foot-down':
    case 'line-missed':
    case 'reserve-empty':
    case 'battery-empty':
      return event.kind;
    case 'chain-restored':
    case 'pushed-off':
    case 'stopped-at-line':
    case 'reserve-back':
    case 'finished':
      return null;
  }
}

/** What stands now, and when each remark was last said. Plain data. */
interface RemarkBoard {
  readonly code: RemarkCode | null;
  readonly untilS: number;
  readonly saidS: Readonly<Partial<Record<RemarkCode, number>>>;
}

export const EMPTY_BOARD: RemarkBoard = { code: null, untilS: 0, saidS: {} };

/** A dropped chain is told about until it is back on: nothing else can be done meanwhile. */
function shownS(code: RemarkCode): number {
  return code === 'chain-dropped' ? Number.MAX_SAFE_INTEGER : REMARK_SHOWN_S;
}

/** The board after these events at this ride time (s). */
export function afterEvents(
  board: RemarkBoard,
  events: readonly RideEvent[],
  timeS: number,
  ringFor: RingFor,
): RemarkBoard {
  let next: RemarkBoard = timeS >= board.untilS && board.code !== null ? { ...board, code: null } : board;
  for (const event of events) {
    if (event.kind === 'chain-restored' && next.code === 'chain-dropped') next = { ...next, code: null };
    const code = remarkOf(event, ringFor);
    if (code === null) continue;
    const saidS = next.saidS[code];
    if (saidS !== undefined && timeS - saidS < REMARK_REST_S) continue;
    if (next.code !== null && (!URGENT.includes(code) || URGENT.includes(next.code))) continue;
    next = { code, untilS: timeS + shownS(code), saidS: { ...next.saidS, [code]: timeS } };
  }
  return next;
}
