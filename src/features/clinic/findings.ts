/**
 * What a group picture says: for each question one sentence, one for children, and what is marked, all from the one
 * finding of the road that was chosen.
 */
import type { AttemptPicture, GroupPicture, RoadPicture } from '../../core/group/picture/group.ts';
import type { GroupPitch } from '../../core/group/picture/groupPitches.ts';
import type { TimingShares } from '../../core/group/picture/groupRide.ts';
import type { RoadVerdict } from '../../core/group/picture/verdict.ts';
import { wholePercents } from '../../core/math/wholePercents.ts';
import type { Format } from '../../words/format.ts';
import { words } from '../../words/words.ts';

const say = words('clinic');

/** Questions, in the order they are talked about. */
export const BOARDS = ['where', 'caught', 'timing', 'change', 'table'] as const;
export type Board = (typeof BOARDS)[number];

/** Before, at and after the foot. */
export const KINDS = ['tooEarly', 'aboutRight', 'tooLate'] as const;
type Kind = (typeof KINDS)[number];

/** What is looked at: one road, or all of them together where everybody rode a road of their own. */
export interface PictureView {
  /** Null for all together; then there is no common line. */
  readonly road: RoadPicture | null;
  readonly rides: number;
  readonly riders: number;
  readonly timing: TimingShares;
  readonly attempts: AttemptPicture;
}

/** True where no two rides went over the same road. */
export function hasOwnRoads({ roads }: GroupPicture): boolean {
  return roads.length > 1 && roads.every(({ rides }) => rides === 1);
}

/** The view on a road by its place in the list; a place that is not there any more is the last one. */
export function viewOf(picture: GroupPicture, roadIndex: number): PictureView {
  const road = picture.roads[Math.min(roadIndex, picture.roads.length - 1)];
  return road === undefined || hasOwnRoads(picture) ? { ...picture, road: null } : { ...road, road };
}

/** Kinds a finding is about: those that are marked where all three are shown. */
export function markedKinds(view: PictureView): readonly Kind[] {
  const kind = view.road === null ? commonOf(view.timing) : view.road.verdict.kind;
  if (kind === 'none') return [];
  if (kind === 'mixed') return ['tooEarly', 'tooLate'];
  return [kind === 'late' ? 'tooLate' : kind === 'early' ? 'tooEarly' : 'aboutRight'];
}

/** Riders who took a pitch so at least once; about right is who never took it otherwise. */
export function ridersBy(pitch: GroupPitch, kind: Kind): number {
  if (kind === 'tooEarly') return pitch.earlyRiders;
  return kind === 'tooLate' ? pitch.lateRiders : pitch.riders - pitch.eitherRiders;
}

/** All times a pitch was ridden. */
export function sum(timing: TimingShares): number {
  return timing.tooEarly + timing.aboutRight + timing.tooLate;
}

/** Each kind's share of all times a pitch was ridden (0 to 1), in whole percent that add up to all of them. */
export function sharesOf(timing: TimingShares): Readonly<Record<Kind, number>> {
  const [tooEarly = 0, aboutRight = 0, tooLate = 0] = wholePercents(KINDS.map((kind) => timing[kind]));
  return { tooEarly: tooEarly / 100, aboutRight: aboutRight / 100, tooLate: tooLate / 100 };
}

/** The sentence over a board. */
export function headlineOf(board: Board, view: PictureView, format: Format): string {
  const { road, attempts } = view;
  switch (board) {
    case 'where':
    case 'caught': {
      if (road === null) return say('picture-ownRoads');
      const { kind, pitch, riders, of } = road.verdict;
      if (kind === 'none') return say('picture-noPitch');
      if (kind === 'right' || pitch === null) return say('picture-right');
      const caught = { pitch: pitch + 1, count: riders, all: of };
      if (board === 'caught') return say('picture-caught', caught);
      if (kind !== 'mixed') return say(`picture-wrong-${kind}`, caught);
      const { earlyRiders: early = 0, lateRiders: late = 0 } = road.pitches[pitch] ?? {};
      return say('picture-wrong-mixed', {
        pitch: pitch + 1,
        early,
        late,
        both: early + late - riders,
        all: of,
      });
    }
    case 'timing':
      return timingLine(view, format);
    case 'change': {
      const { pairs, better, worse } = attempts;
      if (pairs === 0) return say('picture-changeNone');
      if (better + worse === 0) return say('picture-changeSame');
      return say('picture-change', { better, worse, all: pairs, who: whoOf(attempts) });
    }
    case 'table':
      return say('picture-boards-table');
  }
}

/** Where the group had the gear of the pitch that is named, where that is the other half of the sentence; else null. */
export function detailOf({ road }: PictureView, format: Format): string | null {
  if (road === null) return null;
  const { kind, pitch } = road.verdict;
  const named = pitch === null ? undefined : road.pitches[pitch];
  const group = named?.readyBeforeFootM;
  const best = named?.referenceReadyBeforeFootM;
  if (named === undefined || group === null || group === undefined) return null;
  if (best === null || best === undefined) return null;
  if (kind === 'late' && mostlyNeverReady(named))
    return say('picture-neverReady', { best: distanceOf(best, format), bestSide: sideOf(best) });
  if ((kind === 'late' && group.middle < 0) || (kind === 'early' && group.middle > best))
    return say('picture-ready', {
      group: distanceOf(group.middle, format),
      groupSide: sideOf(group.middle),
      best: distanceOf(best, format),
      bestSide: sideOf(best),
    });
  return null;
}

/** Most rides never had the gear for a pitch, so that no place says where the group was ready. */
export function mostlyNeverReady({ neverReady, readyBeforeFootM }: GroupPitch): boolean {
  return neverReady * 2 > (readyBeforeFootM?.count ?? 0);
}

/** "12 m before the foot". */
export function placeAtFoot(beforeFootM: number, format: Format): string {
  return say(`report-${sideOf(beforeFootM)}`, { distance: distanceOf(beforeFootM, format) });
}

const sideOf = (beforeFootM: number): 'before' | 'after' => (beforeFootM < 0 ? 'after' : 'before');
const distanceOf = (beforeFootM: number, format: Format): string => format.distance(Math.abs(beforeFootM));
/** Pairs of rides are riders where everybody rode one road twice. */
const whoOf = ({ riders, pairs }: AttemptPicture): 'riders' | 'pairs' =>
  riders === pairs ? 'riders' : 'pairs';

/** A pitch by its place in the road, from 0; children call it a hill. */
export const pitchName = (index: number, isHill: boolean): string =>
  isHill ? say('picture-answer-hill', { hill: index + 1 }) : say('picture-pitch', { pitch: index + 1 });

function timingLine({ road, timing }: PictureView, format: Format): string {
  const all = sum(timing);
  const kind = road === null ? commonOf(timing) : road.verdict.kind;
  if (all === 0 || kind === 'none') return say('picture-noPitch');
  if (kind === 'right') return say('picture-right');
  const shares = sharesOf(timing);
  const share = (of: Kind): string => format.percent(shares[of]);
  return say(`picture-shares-${kind}`, {
    one: share(kind === 'late' ? 'tooLate' : 'tooEarly'),
    other: share(kind === 'mixed' ? 'tooLate' : 'aboutRight'),
  });
}

/** Over many roads only the rides can be counted. */
function commonOf({ tooEarly, aboutRight, tooLate }: TimingShares): RoadVerdict['kind'] {
  if (tooEarly + tooLate === 0) return aboutRight === 0 ? 'none' : 'right';
  if (tooEarly === tooLate) return 'mixed';
  return tooLate > tooEarly ? 'late' : 'early';
}

/** The answer for children. */
export function answerAfterTalk(board: Board, view: PictureView): string {
  const { road, timing, attempts } = view;
  switch (board) {
    case 'where':
    case 'caught': {
      if (road === null) return say('picture-ownRoads');
      const { kind, pitch, riders, of } = road.verdict;
      if (kind === 'none') return say('picture-answer-noHill');
      if (kind === 'right' || pitch === null) return say('picture-answer-nobody');
      const caught = { hill: pitch + 1, count: riders, all: of };
      return board === 'caught'
        ? say('picture-answer-caught', caught)
        : say(`picture-answer-where-${kind}`, caught);
    }
    case 'timing': {
      const kind = road === null ? commonOf(timing) : road.verdict.kind;
      if (kind === 'none') return say('picture-answer-noHill');
      if (kind === 'right') return say('picture-answer-always');
      const mostly = timing.aboutRight > timing.tooEarly + timing.tooLate;
      return say(`picture-answer-${mostly ? 'sometimes' : 'often'}-${kind}`);
    }
    case 'change': {
      const { pairs, better } = attempts;
      if (pairs === 0) return say('picture-changeNone');
      return say('picture-answer-better', { better, all: pairs, who: whoOf(attempts) });
    }
    case 'table':
      return say('picture-boards-table');
  }
}
