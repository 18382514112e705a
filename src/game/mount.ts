/**
 * The door of the ride picture: puts a Phaser game on Canvas into an element and keeps its size. The caller
 * owns clock, commands and stepping and hands over a frame whenever one is asked for.
 */
import type { RideEvent } from '../core/ride/types.ts';
import { CANVAS, CoreEvents, Game, SCALE_NONE } from './engine/engine.ts';
import { watchSize } from './watchSize.ts';
import { deviceScale } from './paint/sheet.ts';
import { RideScene, type RideShow } from './scenes/RideScene.ts';

/** What a ride picture needs. */
interface RideMountOptions extends RideShow {
  readonly parent: HTMLElement;
  /** A picture could not be drawn: an error came out of it, or out of `nextFrame`. No further one is asked for. */
  readonly onBroken: (error: unknown) => void;
}

/**
 * The engine without its own watch for hidden pages, which listens to the document and cannot be taken away again:
 * every ride would leave one behind. Browsers ask a hidden page for no frames, and the ride pauses itself.
 */
class PictureGame extends Game {
  protected override start(): void {
    Object.assign(this, { isRunning: true });
    this.loop.start((timeMs: number, deltaMs: number) => this.#stepOnce(timeMs, deltaMs));
  }

  /** Hears of an error once. */
  onBroken: ((error: unknown) => void) | null = null;
  #broken = false;

  /** A loop whose step throws is never called again by the browser; so nothing comes out of this one. */
  #stepOnce(timeMs: number, deltaMs: number): void {
    // A broken engine is asked only once more, to take itself away.
    const { pendingDestroy } = this as unknown as { readonly pendingDestroy: boolean };
    if (this.#broken && !pendingDestroy) return;
    try {
      this.step(timeMs, deltaMs);
    } catch (error) {
      const isFirst = !this.#broken;
      this.#broken = true;
      if (pendingDestroy) {
        this.loop.destroy();
        this.canvas.remove();
      } else if (isFirst) this.onBroken?.(error);
    }
  }
}

const RESIZE_REST_MS = 120;

/** Mounts the picture into `parent`, which must have a size. */
export function mountRide({ parent, onBroken, ...show }: RideMountOptions) {
  const scene = new RideScene(show);
  const scale = deviceScale();
  const game = new PictureGame({
    type: CANVAS,
    parent,
    width: Math.max(1, Math.round(parent.clientWidth * scale)),
    height: Math.max(1, Math.round(parent.clientHeight * scale)),
    // Its own look at the size every half second would cost a layout; `watchRest` tells it instead.
    scale: { mode: SCALE_NONE, zoom: 1 / scale, resizeInterval: Number.MAX_SAFE_INTEGER },
    banner: false,
    audio: { noAudio: true },
    input: { keyboard: false, mouse: false, touch: false, gamepad: false },
    disableContextMenu: false,
    render: { clearBeforeRender: false, antialias: true },
    scene,
  });
  game.onBroken = onBroken;
  game.events.once(CoreEvents.READY, () => game.canvas.setAttribute('aria-hidden', 'true'));
  const stopWatching = watchRest(parent, () => fitGame(game, parent));
  return {
    /** Shows what happened since the last call. */
    applyEvents: (events: readonly RideEvent[]) => scene.applyEvents(events),
    /** So many apples have hopped out of the basket since the start. */
    spill: (count: number) => scene.spill(count),
    /** A paused picture stands still and asks for no frames. */
    setPaused: (paused: boolean) => {
      if (paused) game.scene.pause('ride');
      else game.scene.resume('ride');
    },
    /** How much of the picture there is time to draw: 2 everything, 0 the least. */
    quality: () => scene.quality,
    destroy: () => {
      stopWatching();
      // The engine forgets this one, and through its canvas a whole ride would stay in memory.
      (game.textures.tileSprite as Phaser.GameObjects.TileSprite | undefined)?.destroy();
      game.destroy(true);
    },
  };
}

/** Device pixels for the engine, CSS pixels for the page: without a scale mode the engine leaves the latter alone. */
function fitGame(game: Phaser.Game, parent: HTMLElement): void {
  const scale = deviceScale();
  const width = parent.clientWidth;
  const height = parent.clientHeight;
  game.scale.setZoom(1 / scale);
  game.scale.resize(Math.round(width * scale), Math.round(height * scale));
  game.canvas.style.width = `${width}px`;
  game.canvas.style.height = `${height}px`;
}

/** Calls back once the size of `element` has come to rest. */
function watchRest(element: HTMLElement, onRest: () => void): () => void {
  let timer = 0;
  let width = element.clientWidth;
  let height = element.clientHeight;
  const stop = watchSize(element, () => {
    if (element.clientWidth === width && element.clientHeight === height) return;
    width = element.clientWidth;
    height = element.clientHeight;
    window.clearTimeout(timer);
    if (width > 0 && height > 0) timer = window.setTimeout(onRest, RESIZE_REST_MS);
  });
  return () => {
    window.clearTimeout(timer);
    stop();
  };
}
