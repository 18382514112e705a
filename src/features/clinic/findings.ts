/** What a group picture says, one sentence for each question, and the same for children. */
import type { GroupPicture, RoadPicture } from '../../core/group/picture/group.ts';
import type { GroupPitch } from '../../core/group/picture/groupPitches.ts';
import type { TimingShares } from '../../core/group/picture/groupRide.ts';
import type { Format } from '../../words/format.ts';
import type { ClinicWords } from './words.ts';

/** Questions, in the order they are talked about. */
export const BOARDS = ['where', 'caught', 'timing', 'change', 'table'] as const;
export type Board = (typeof BOARDS)[number];

/** Closer than this to the best ride is like it (m). */
const LIKE_BEST_M = 3;

type Road = RoadPicture | undefined;

/** The sentence over a board. */
export function headlineOf(
  board: Board,
  picture: GroupPicture,
  road: Road,
  words: ClinicWords,
  format: Format,
): string {
  const say = words.picture;
  switch (board) {
    case 'where': {
      const idle = withoutShift(road);
      if (idle !== null) return say.without(idle.index + 1, idle.withoutShift, idle.rides);
      const found = widestGap(road);
      if (found === null) return say.boards.where;
      const metres = format.distance(Math.abs(found.gapM));
      if (Math.abs(found.gapM) < LIKE_BEST_M) return say.likeBest;
      return found.gapM > 0 ? say.later(metres, found.index + 1) : say.sooner(metres, found.index + 1);
    }
    case 'caught': {
      const worst = caughtOf(road);
      if (worst !== null) return say.caught(worst.index + 1, worst.caughtRiders, worst.riders);
      return road !== undefined && road.pitches.length > 0 ? say.caughtNobody : say.noPitch;
    }
    case 'timing': {
      const all = sum(picture.timing);
      return all === 0 ? say.noPitch : say.timingTitle(format.percent(picture.timing.aboutRight / all));
    }
    case 'change': {
      const { first, last } = picture.attempts;
      if (first === null || last === null) return say.changeNone;
      return say.change(format.number(first.middle), format.number(last.middle));
    }
    case 'table':
      return say.boards.table;
  }
}

/** The answer for children. */
export function findingOf(
  board: Board,
  picture: GroupPicture,
  road: Road,
  words: ClinicWords,
  format: Format,
): string {
  const { answer, timing } = words.picture;
  switch (board) {
    case 'where': {
      const idle = withoutShift(road);
      if (idle !== null) return answer.without(idle.index + 1);
      const found = widestGap(road);
      if (found === null) return words.picture.boards.where;
      const metres = format.distance(Math.abs(found.gapM));
      if (Math.abs(found.gapM) < LIKE_BEST_M) return answer.like;
      return found.gapM > 0 ? answer.later(metres) : answer.sooner(metres);
    }
    case 'caught': {
      const worst = caughtOf(road);
      return worst === null
        ? answer.nobody
        : answer.caught(worst.index + 1, worst.caughtRiders, worst.riders);
    }
    case 'timing': {
      const shares = picture.timing;
      const [most] = (['aboutRight', 'tooLate', 'tooEarly'] as const).toSorted(
        (a, b) => shares[b] - shares[a],
      );
      return most === undefined || sum(shares) === 0 ? words.picture.noPitch : answer.timing(timing[most]);
    }
    case 'change': {
      const { pairs, better } = picture.attempts;
      return pairs === 0 ? words.picture.changeNone : answer.better(better, pairs);
    }
    case 'table':
      return words.picture.boards.table;
  }
}

/** All pitches that were counted. */
export function sum(timing: TimingShares): number {
  return timing.tooEarly + timing.aboutRight + timing.tooLate;
}

/** The pitch that caught most riders. */
function caughtOf(road: Road): GroupPitch | null {
  return road?.caughtPitch === null || road === undefined ? null : (road.pitches[road.caughtPitch] ?? null);
}

/** Where the middle of the group is farthest from the best ride; positive is later (m). */
function widestGap(road: Road): { readonly index: number; readonly gapM: number } | null {
  const gaps = (road?.pitches ?? []).flatMap(
    ({ index, firstShiftBeforeFootM: group, referenceFirstShiftBeforeFootM: best }) =>
      group === null || best === null ? [] : [{ index, gapM: best - group.middle }],
  );
  return gaps.toSorted((a, b) => Math.abs(b.gapM) - Math.abs(a.gapM))[0] ?? null;
}

/** The pitch before which most rides made no easier shift at all; where the rest shifted would say little there. */
function withoutShift(road: Road): GroupPitch | null {
  const idle = (road?.pitches ?? []).filter((pitch) => pitch.withoutShift * 2 > pitch.rides);
  return idle.toSorted((a, b) => b.withoutShift - a.withoutShift)[0] ?? null;
}
