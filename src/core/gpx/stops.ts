/**
 * Finds where somebody stood while the device went on recording. Places scatter or drift then, and joined up they would
 * be hundreds of metres of road that nobody rode. With times slowness tells; without them, places that turn back on
 * themselves at every step. The limits are ours: what stands moves less than a bike is pushed up a hill.
 */
import { distanceM, type GlobePoint } from './globe.ts';
import { median } from './lists.ts';

/** Points from one index to another, both included. */
interface Stop {
  readonly from: number;
  readonly to: number;
}

/** How long points must stay how near to their middle (s, m): a long rest drifts further than a short one. */
const RESTS = [
  { forS: 90, withinM: 50 },
  { forS: 20, withinM: 8 },
] as const;
/** Slower than anybody pushes a bike (m/s), from the first third of the points to the last. */
const STANDS_MPS = 0.4;
/** Rounds on a small place: steps that go on where the last one went (mean cosine), at more than a walk (m/s). */
const ROUND_COSINE = 0.5;
const ROUND_MPS = 1;
/** Without times: so many points, their steps turning back, and no way made (share of their scatter). */
const SCATTER_POINTS = 40;
const SCATTER_COSINE = 0.3;
const SCATTER_WAY = 0.7;
/** So many points further out do not end a rest. */
const STRAYS = 10;

/** A rest of which less than this is walked about does no harm to the road (m). */
const WORTH_M = 20;
/** …nor one that leads on: its path is at least so many times the way made. */
const WANDERS = 2;
/** The way to a rest and away from it is road: only what is this near to its middle is rest (m, times the median). */
const CORE_M = 5;
const CORE_MEDIANS = 2;

/** Rests that would lengthen the road, in order; none shares a point with another. */
export function findStops(places: readonly GlobePoint[], timeS: readonly number[]): Stop[] {
  return allRests(places, timeS)
    .map((rest) => core(places, rest))
    .filter(({ from, to }) => {
      const { pathM } = movement(places, from, to);
      const netM = distanceM(places[from] as GlobePoint, places[to] as GlobePoint);
      return pathM - netM > WORTH_M && pathM > WANDERS * netM;
    });
}

/** A rest without the ways to it and away from it. */
function core(places: readonly GlobePoint[], { from, to }: Stop): Stop {
  const middle = meanPlace(places, from, to);
  const away = places.slice(from, to + 1).map((place) => distanceM(middle, place));
  const withinM = Math.max(CORE_M, CORE_MEDIANS * median(away));
  return {
    from: from + away.findIndex((m) => m <= withinM),
    to: from + away.findLastIndex((m) => m <= withinM),
  };
}

function allRests(places: readonly GlobePoint[], timeS: readonly number[]): Stop[] {
  const stops: Stop[] = [];
  let i = 0;
  while (i < places.length) {
    const found = restAt(places, timeS, i);
    if (found === null) {
      i += 1;
      continue;
    }
    const before = stops.at(-1);
    // A rest that drifts away from its first place is still one rest.
    if (before !== undefined && found.from - before.to <= 1)
      stops[stops.length - 1] = { from: before.from, to: found.to };
    else stops.push(found);
    i = found.to + 1;
  }
  return stops;
}

/** A device writes ten places a second at most; more of them are no rest but a damaged clock, and would take for ever. */
const MOST_POINTS = 10 * RESTS[0].forS;

/** The rest that begins with this point, if one does. */
function restAt(places: readonly GlobePoint[], timeS: readonly number[], from: number): Stop | null {
  const startS = timeS[from] ?? Number.NaN;
  if (Number.isNaN(startS)) {
    const to = from + SCATTER_POINTS - 1;
    if (to >= places.length || !isScatter(places, from, to)) return null;
    return extended(places, from, to, RESTS[0].withinM);
  }
  for (const { forS, withinM } of RESTS) {
    let to = from;
    const first = places[from] as GlobePoint;
    while (
      to < places.length &&
      to - from < MOST_POINTS &&
      (timeS[to] as number) - startS < forS &&
      distanceM(first, places[to] as GlobePoint) <= 2 * withinM
    )
      to += 1;
    // Only where points cover the time: a pause in the recording needs no mending.
    if (to >= places.length || !((timeS[to] as number) - startS >= forS) || to - from < 5) continue;
    if (standsStill(places, from, to, (timeS[to] as number) - startS, withinM))
      return extended(places, from, to, withinM);
  }
  return null;
}

function standsStill(
  places: readonly GlobePoint[],
  from: number,
  to: number,
  tookS: number,
  withinM: number,
): boolean {
  const { radiusM, pathM, wayM, cosine } = movement(places, from, to);
  if (radiusM > withinM || wayM > (STANDS_MPS * tookS * 2) / 3) return false;
  return !(cosine > ROUND_COSINE && pathM > ROUND_MPS * tookS);
}

function isScatter(places: readonly GlobePoint[], from: number, to: number): boolean {
  const withinM = RESTS[0].withinM;
  if (distanceM(places[from] as GlobePoint, places[to] as GlobePoint) > 2 * withinM) return false;
  const { radiusM, pathM, wayM, cosine } = movement(places, from, to);
  return radiusM <= withinM && pathM > 3 * radiusM && cosine < SCATTER_COSINE && wayM < SCATTER_WAY * radiusM;
}

/** How points move: how far from their middle, along their steps, from first to last third, and how straight. */
function movement(places: readonly GlobePoint[], from: number, to: number) {
  const middle = meanPlace(places, from, to);
  const third = Math.max(1, Math.floor((to - from + 1) / 3));
  let [radiusM, pathM, dots, squares] = [0, 0, 0, 0];
  for (let i = from; i <= to; i += 1) {
    const place = places[i] as GlobePoint;
    radiusM = Math.max(radiusM, distanceM(middle, place));
    if (i === from) continue;
    const step = minus(place, places[i - 1] as GlobePoint);
    pathM += Math.sqrt(dot(step, step));
    squares += dot(step, step);
    if (i > from + 1) dots += dot(step, minus(places[i - 1] as GlobePoint, places[i - 2] as GlobePoint));
  }
  const wayM = distanceM(meanPlace(places, from, from + third - 1), meanPlace(places, to - third + 1, to));
  return { radiusM, pathM, wayM, cosine: squares > 0 ? dots / squares : 0 };
}

/** Goes on as long as points keep near to the middle of those so far, but for a few strays. */
function extended(places: readonly GlobePoint[], from: number, to: number, withinM: number): Stop {
  let middle = meanPlace(places, from, to);
  let last = to;
  for (let i = to + 1; i < places.length && i - last <= STRAYS; i += 1) {
    const place = places[i] as GlobePoint;
    if (distanceM(middle, place) > withinM) continue;
    const share = 1 / (i - from + 1);
    middle = {
      xM: middle.xM + (place.xM - middle.xM) * share,
      yM: middle.yM + (place.yM - middle.yM) * share,
      zM: middle.zM + (place.zM - middle.zM) * share,
    };
    last = i;
  }
  return { from, to: last };
}

/** The middle of some places (as good as on the ground, for places this near). */
export function meanPlace(places: readonly GlobePoint[], from: number, to: number): GlobePoint {
  let [xM, yM, zM] = [0, 0, 0];
  for (let i = from; i <= to; i += 1) {
    const place = places[i] as GlobePoint;
    xM += place.xM;
    yM += place.yM;
    zM += place.zM;
  }
  const count = to - from + 1;
  return { xM: xM / count, yM: yM / count, zM: zM / count };
}

function minus(a: GlobePoint, b: GlobePoint): GlobePoint {
  return { xM: a.xM - b.xM, yM: a.yM - b.yM, zM: a.zM - b.zM };
}

function dot(a: GlobePoint, b: GlobePoint): number {
  return a.xM * b.xM + a.yM * b.yM + a.zM * b.zM;
}
