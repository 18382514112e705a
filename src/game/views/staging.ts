/** What all views of one picture share: it is the same for one ride on one size of screen. */
import type { Course } from '../../core/course/types.ts';
import type { Bike } from '../../core/model/types.ts';
import type { Look, Scenery } from '../engine/types.ts';
import type { Palette } from '../paint/palette.ts';
import type { Camera, Layout } from './layout.ts';

export interface Staging {
  readonly layout: Layout;
  readonly palette: Palette;
  readonly scenery: Scenery;
  readonly look: Look;
  readonly course: Course;
  readonly bike: Bike;
  /** Follows the rider; the stage moves it before anything is drawn. */
  readonly camera: Camera;
}
