/**
 * A thin Phaser scene: asks for the frame of this moment and lets the stage draw it through one display
 * object on the canvas renderer. Holds no formula, no clock of its own and no words.
 */
import type { Context } from '../paint/pen.ts';
import type Phaser from 'phaser';
import type { RideEvent, RideFrame, RideWorld } from '../../core/ride/types.ts';
import { GameObject, ScaleEvents, Scene, SceneEvents } from '../engine/engine.ts';
import { type PictureQuality, QualityWatch } from '../engine/quality.ts';
import type { Beside, Look, Scenery } from '../engine/types.ts';
import { layoutFor } from '../views/layout.ts';
import { Stage } from '../views/stage.ts';

/** What the scene is given when it is made. */
interface RideSceneOptions {
  readonly world: RideWorld;
  readonly scenery: Scenery;
  readonly look: Look;
  readonly beside: readonly Beside[];
  readonly nextFrame: (timeMs: number) => RideFrame;
  readonly deviceScale: () => number;
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
  readonly #options: RideSceneOptions;
  #stage: Stage | null = null;
  #frame: RideFrame | null = null;
  #spilled = 0;
  #lastTimeS = Number.NaN;
  #elapsedS = 0;
  readonly #quality = new QualityWatch();
  #told: PictureQuality | null = null;

  constructor(options: RideSceneOptions) {
    super({ key: 'ride' });
    this.#options = options;
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
    const frame = this.#options.nextFrame(timeMs);
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
    const deviceScale = this.#options.deviceScale();
    const { world, scenery, look, beside } = this.#options;
    const width = this.scale.width / deviceScale;
    const height = this.scale.height / deviceScale;
    const layout = layoutFor(width, height, deviceScale, look.childRider);
    this.#stage = new Stage(layout, world, scenery, look, beside);
    this.#stage.spill(this.#spilled);
  }
}
