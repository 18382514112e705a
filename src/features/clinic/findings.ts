/**
 * What a group picture says: for each question one sentence, one for children, and what is marked, all from the one
 * finding of the road that was chosen.
 */
import type { AttemptPicture, GroupPicture, RoadPicture } from '../../core/group/picture/group.ts';
import type { GroupPitch } from '../../core/group/picture/groupPitches.ts';
import type { TimingShares } from '../../core/group/picture/groupRide.ts';
import type { RoadVerdict } from '../../core/group/picture/verdict.ts';
import type { Format } from '../../words/format.ts';
import type { ClinicWords } from './words.ts';

/** Questions, in the order they are talked about. */
export const BOARDS = ['where', 'caught', 'timing', 'change', 'table'] as const;
export type Board = (typeof BOARDS)[number];

/** Before, at and after the foot. */
export const KINDS = ['tooEarly', 'aboutRight', 'tooLate'] as const;
type Kind = (typeof KINDS)[number];

/** What is looked at: one road, or all of them together where everybody rode a road of their own. */
export interface View {
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
export function viewOf(picture: GroupPicture, roadIndex: number): View {
  const road = picture.roads[Math.min(roadIndex, picture.roads.length - 1)];
  return road === undefined || hasOwnRoads(picture) ? { ...picture, road: null } : { ...road, road };
}

/** Kinds a finding is about: those that are marked where all three are shown. */
export function markedKinds(view: View): readonly Kind[] {
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

/** The sentence over a board. */
export function headlineOf(board: Board, view: View, words: ClinicWords, format: Format): string {
  const say = words.picture;
  const { road, attempts } = view;
  switch (board) {
    case 'where':
    case 'caught': {
      if (road === null) return say.ownRoads;
      const { kind, pitch, riders, of } = road.verdict;
      if (kind === 'none') return say.noPitch;
      if (kind === 'right' || pitch === null) return say.right;
      if (board === 'caught') return say.caught(pitch + 1, riders, of);
      if (kind !== 'mixed') return say.wrong[kind](pitch + 1, riders, of);
      const { earlyRiders = 0, lateRiders = 0 } = road.pitches[pitch] ?? {};
      return say.wrong.mixed(pitch + 1, earlyRiders, lateRiders, of);
    }
    case 'timing':
      return timingLine(view, words, format);
    case 'change': {
      const { pairs, better, worse } = attempts;
      if (pairs === 0) return say.changeNone;
      if (better + worse === 0) return say.changeSame;
      return say.change(better, worse, pairs, attempts.riders === pairs);
    }
    case 'table':
      return say.boards.table;
  }
}

/** Where the group had the gear of the pitch that is named, where that is the other half of the sentence; else null. */
export function detailOf({ road }: View, words: ClinicWords, format: Format): string | null {
  if (road === null) return null;
  const { kind, pitch } = road.verdict;
  const named = pitch === null ? undefined : road.pitches[pitch];
  const group = named?.readyBeforeFootM;
  const best = named?.referenceReadyBeforeFootM;
  if (named === undefined || group === null || group === undefined) return null;
  if (best === null || best === undefined) return null;
  const say = words.picture;
  if (kind === 'late' && named.neverReady * 2 > group.count)
    return say.neverReady(placeOf(best, words, format));
  if ((kind === 'late' && group.middle < 0) || (kind === 'early' && group.middle > best))
    return say.ready(placeOf(group.middle, words, format), placeOf(best, words, format));
  return null;
}

/** "12 m before the foot". */
export function placeOf(beforeFootM: number, words: ClinicWords, format: Format): string {
  const metres = format.distance(Math.abs(beforeFootM));
  return beforeFootM < 0 ? words.report.after(metres) : words.report.before(metres);
}

function timingLine({ road, timing }: View, words: ClinicWords, format: Format): string {
  const say = words.picture;
  const all = sum(timing);
  const kind = road === null ? commonOf(timing) : road.verdict.kind;
  if (all === 0 || kind === 'none') return say.noPitch;
  if (kind === 'right') return say.right;
  const share = (of: Kind): string => `${format.percent(timing[of] / all)} ${say.timing[of]}`;
  if (kind === 'mixed') return say.shares(share('tooEarly'), share('tooLate'));
  return say.shares(share(kind === 'late' ? 'tooLate' : 'tooEarly'), share('aboutRight'));
}

/** Over many roads only the rides can be counted. */
function commonOf({ tooEarly, aboutRight, tooLate }: TimingShares): RoadVerdict['kind'] {
  if (tooEarly + tooLate === 0) return aboutRight === 0 ? 'none' : 'right';
  if (tooEarly === tooLate) return 'mixed';
  return tooLate > tooEarly ? 'late' : 'early';
}

/** The answer for children. */
export function answerOf(board: Board, view: View, words: ClinicWords): string {
  const { answer } = words.picture;
  const { road, timing, attempts } = view;
  switch (board) {
    case 'where':
    case 'caught': {
      if (road === null) return words.picture.ownRoads;
      const { kind, pitch, riders, of } = road.verdict;
      if (kind === 'none') return answer.noHill;
      if (kind === 'right' || pitch === null) return answer.nobody;
      return board === 'caught'
        ? answer.caught(pitch + 1, riders, of)
        : answer.where[kind](pitch + 1, riders, of);
    }
    case 'timing': {
      const kind = road === null ? commonOf(timing) : road.verdict.kind;
      if (kind === 'none') return answer.noHill;
      if (kind === 'right') return answer.always;
      const mostly = timing.aboutRight > timing.tooEarly + timing.tooLate;
      return mostly ? answer.sometimes[kind] : answer.often[kind];
    }
    case 'change': {
      const { pairs, better, riders } = attempts;
      if (pairs === 0) return words.picture.changeNone;
      return answer.better(better, pairs, riders === pairs);
    }
    case 'table':
      return words.picture.boards.table;
  }
}
