/** What the page of bike and rider asks of the app. */
import type { Settings } from '../../core/settings/settings.ts';

export interface BikeServices {
  /**
   * Draws the rider of these settings into a canvas, if that is still wanted when the drawing has been fetched;
   * rejects where it cannot be fetched.
   */
  readonly paintRider: (
    canvas: HTMLCanvasElement,
    settings: Settings,
    isWanted: () => boolean,
  ) => Promise<void>;
}
