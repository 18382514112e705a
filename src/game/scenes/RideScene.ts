/**
 * A thin Phaser scene: asks for the frame of this moment and lets the stage draw it through one display
 * object on the canvas renderer. Holds no formula, no clock of its own and no words.
 */
import type Phaser from 'phaser';
import type { RideEvent, RideFrame, RideWorld } from '../../core/ride/types.ts';
import { GameObject, ScaleEvents, Scene, SceneEvents } from '../engine/engine.ts';
import { type PictureQuality, QualityWatch } from '../engine/quality.ts';
import type { Beside, Look, Scenery } from '../engine/types.ts';
import type { Context } from '../paint/pen.ts';
import { deviceScale } from '../paint/sheet.ts';
import { layoutFor } from '../views/layout.ts';
import { Stage } from '../views/stage.ts';

/** What the scene is given when it is made. */
export interface RideShow {
  readonly world: RideWorld;
  readonly scenery: Scenery;
  readonly look: Look;
  /** Who is seen riding beside, as silhouettes. */
  readonly beside: readonly Beside[];
  /** Asked once per picture with the browser's raw time (ms); must not keep the frame it returned alive. */
  readonly nextFrame: (timeMs: number) => RideFrame;
}

/** Longest time one picture may stand for (s); longer gaps are not animated. */
const LONGEST_STEP_S = 0.1;

/** The one display object: draws with the canvas context Phaser is using. */
class PaperObject extends GameObject {
  readonly #paint: (context: Context) => void;

  constructor(scene: Phaser.Scene, paint: (context: Context) => void) {
    super(scene, 'Paper');
    this.#paint = paint;
  }

  /** Called by the canvas renderer for every object of a scene. */
  renderCanvas(renderer: Phaser.Renderer.Canvas.CanvasRenderer): void {
    this.#paint(renderer.currentContext);
  }
}

export class RideScene extends Scene {
  readonly #show: RideShow;
  #stage: Stage | null = null;
  #frame: RideFrame | null = null;
  #spilled = 0;
  #lastTimeS = Number.NaN;
  #elapsedS = 0;
  readonly #quality = new QualityWatch();
  #told: PictureQuality | null = null;

  constructor(show: RideShow) {
    super({ key: 'ride' });
    this.#show = show;
  }

  create(): void {
    this.#build();
    this.add.existing(new PaperObject(this, (context) => this.#draw(context)));
    this.scale.on(ScaleEvents.RESIZE, this.#build, this);
    this.events.once(SceneEvents.SHUTDOWN, () => {
      this.scale.off(ScaleEvents.RESIZE, this.#build, this);
      this.#stage = null;
    });
  }

  override update(timeMs: number): void {
    const frame = this.#show.nextFrame(timeMs);
    const timeS = timeMs / 1000;
    const passed = Number.isNaN(this.#lastTimeS) ? 0 : timeS - this.#lastTimeS;
    this.#quality.frame(passed);
    this.#tellQuality();
    this.#elapsedS = Math.max(0, Math.min(LONGEST_STEP_S, passed));
    this.#lastTimeS = timeS;
    this.#frame = frame;
    this.#stage?.update(frame, this.#elapsedS);
  }

  applyEvents(events: readonly RideEvent[]): void {
    this.#stage?.applyEvents(events);
  }

  spill(count: number): void {
    this.#spilled = count;
    this.#stage?.spill(count);
  }

  /** How much of the picture there is time to draw. */
  get quality(): PictureQuality {
    return this.#quality.level;
  }

  /** For whoever measures; players are told nothing. */
  #tellQuality(): void {
    if (this.#quality.level === this.#told) return;
    this.#told = this.#quality.level;
    this.sys.game.canvas.dataset['quality'] = String(this.#told);
  }

  #draw(context: Context): void {
    if (this.#frame) this.#stage?.draw(context, this.#frame, this.#elapsedS, this.#quality.level);
    // A paused scene is still rendered; without an update no time has passed.
    this.#elapsedS = 0;
  }

  /** Everything painted once is painted anew for a new size. */
  #build(): void {
    const scale = deviceScale();
    const { world, scenery, look, beside } = this.#show;
    const layout = layoutFor(this.scale.width / scale, this.scale.height / scale, scale, look.childRider);
    this.#stage = new Stage(layout, world, scenery, look, beside);
    this.#stage.spill(this.#spilled);
  }
}
