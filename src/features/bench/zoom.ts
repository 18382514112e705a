/** Which part of a road is shown: nearer, further, along it. Pure; `null` is the whole road. */

/** From one place to another (m from the start). */
export interface Span {
  readonly fromM: number;
  readonly toM: number;
}

/** Nearer than this nothing more is to be seen (m). */
const LEAST_VIEW_M = 100;
const CLOSER = 0.5;
/** Moving along leaves this much of what was shown in sight. */
const STAYS = 0.25;

/** What is shown of a road of this length. */
export function shownOf(view: Span | null, lengthM: number): Span {
  if (view === null || lengthM <= LEAST_VIEW_M) return { fromM: 0, toM: lengthM };
  const spanM = Math.min(view.toM - view.fromM, lengthM);
  const fromM = Math.min(Math.max(0, view.fromM), lengthM - spanM);
  return { fromM, toM: fromM + spanM };
}

/** Half as much, round a place. */
export function closer(view: Span | null, lengthM: number, aroundM: number): Span | null {
  const { fromM, toM } = shownOf(view, lengthM);
  return round(aroundM, Math.max(LEAST_VIEW_M, (toM - fromM) * CLOSER), lengthM);
}

/** Twice as much, round the middle. */
export function wider(view: Span | null, lengthM: number): Span | null {
  const { fromM, toM } = shownOf(view, lengthM);
  return round((fromM + toM) / 2, (toM - fromM) / CLOSER, lengthM);
}

/** The next part, or the one before. */
export function along(view: Span | null, lengthM: number, direction: 1 | -1): Span | null {
  const { fromM, toM } = shownOf(view, lengthM);
  const byM = direction * (toM - fromM) * (1 - STAYS);
  return round((fromM + toM) / 2 + byM, toM - fromM, lengthM);
}

/** The same, moved so that a place is in it; as it was where it is. */
export function withPlace(view: Span | null, lengthM: number, place: Span): Span | null {
  if (view === null) return null;
  const { fromM, toM } = shownOf(view, lengthM);
  if (place.toM >= fromM && place.fromM <= toM) return view;
  return round((place.fromM + place.toM) / 2, toM - fromM, lengthM);
}

function round(middleM: number, spanM: number, lengthM: number): Span | null {
  if (spanM >= lengthM) return null;
  const fromM = Math.min(Math.max(0, middleM - spanM / 2), lengthM - spanM);
  return { fromM, toM: fromM + spanM };
}
