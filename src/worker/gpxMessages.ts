/**
 * What the page and the worker that reads GPX files say to each other. The file goes in; only heights, distances
 * and sentences come out, and speed and cadence where somebody asks to compare.
 */
import type { RoadAnswers } from '../core/gpx/choose.ts';
import type { RoadStretch } from '../core/gpx/hardest.ts';
import type { LevelWishes } from '../core/gpx/level.ts';
import type { RecordedSample } from '../core/gpx/recorded.ts';
import type { GpxOutcome } from '../core/gpx/summary.ts';
import type { ParseResult } from '../core/level/parse.ts';

/** Page to worker. All but `read` are about the file that was read last. */
export type GpxRequest =
  | { readonly kind: 'read'; readonly id: number; readonly file: Blob }
  | { readonly kind: 'answer'; readonly id: number; readonly answers: RoadAnswers }
  | { readonly kind: 'cut'; readonly id: number; readonly wishes: LevelWishes }
  | { readonly kind: 'recorded'; readonly id: number; readonly stretch: RoadStretch }
  /** Stops reading and forgets the file. */
  | { readonly kind: 'cancel'; readonly id: number };

/** Worker to page. */
export type GpxAnswer =
  /** Share of the file that has been read, 0 to 1. */
  | { readonly kind: 'progress'; readonly id: number; readonly share: number }
  | { readonly kind: 'outcome'; readonly id: number; readonly outcome: GpxOutcome }
  | { readonly kind: 'level'; readonly id: number; readonly level: ParseResult }
  | { readonly kind: 'samples'; readonly id: number; readonly samples: readonly RecordedSample[] | null };
