/**
 * The instruments over the picture: builds them, writes text at most four times a second, moves the cadence
 * marker and the drivetrain with every frame. Words and aids come from the caller; nothing is decided here.
 */
import './hud.css';
import './hud-legs.css';
import './hud-touch.css';
import './hud-child.css';
import './hud-play.css';
import { CLEAN_LOAD, HEAVY_LOAD } from '../../core/model/shift.ts';
import type { Machine, Pressure } from '../../core/model/types.ts';
import type { RideEvent, RideFrame } from '../../core/ride/types.ts';
import { ChainTopView } from '../views/chainTop.ts';
import { DrivetrainView } from '../views/drivetrain.ts';
import { isStuck } from '../views/stuck.ts';
import { readTones } from '../paint/palette.ts';
import { buildHud, type HudElements, SCALE_HIGH_RPM, SCALE_LOW_RPM } from './dom.ts';
import { moodOf } from './face.ts';
import { buildHelp, type HudHelp } from './help.ts';
import { RoadAheadView } from './roadAhead.ts';
import { watchSize } from '../watchSize.ts';
import { words } from '../../words/words.ts';
import type { HudAids, HudFormats, HudOptions, LegsShown, MotorShown } from './options.ts';

const say = words('hud');

/** Text is renewed this often (s of ride time, or sooner when the ride jumps). */
const TEXT_EVERY_S = 0.25;
const SHUDDER_S = 0.4;
/** So long the sprocket shows that it took the chain cleanly (s). */
const SEATED_S = 0.35;
const PRESSURES: readonly Pressure[] = ['coast', 'ease', 'steady', 'press'];
/** Those who ride beside are named for so long (s of ride time). */
const NAMED_S = 10;
/** From this distance on a stop line is counted down (m). */
const STOP_SHOWN_M = 120;

/** The running instruments. */
export class Hud {
  /** Next step, marks so far, and the beat. */
  readonly help: HudHelp;
  readonly #elements: HudElements;
  readonly #formats: HudFormats;
  readonly #still: boolean;
  readonly #beside: HudOptions['beside'];
  readonly #road: RoadAheadView;
  readonly #machine: Machine;
  #drive: DrivetrainView;
  #top: ChainTopView;
  #boxKey = '';
  readonly #stopWatching: () => void;
  #laneWidth = 0;
  #handsKey = -1;
  #textAtS = Number.NEGATIVE_INFINITY;
  #shudderUntilS = Number.NEGATIVE_INFINITY;
  #timeS = 0;
  /** What is shown, for canvases that a new size has emptied while the ride stands still. */
  #frame: RideFrame | null = null;
  #gearShown = true;
  #skippedFrames = 0;
  #seatedUntilS = Number.NEGATIVE_INFINITY;
  #markerPx = Number.NaN;
  #cueText = '';
  #remarkText = '';
  #chainKey = Number.NaN;

  /** Puts the instruments into `host`. */
  constructor(host: HTMLElement, formats: HudFormats, options: HudOptions) {
    this.#elements = buildHud(host, formats, options);
    this.#formats = formats;
    this.#still = options.reducedMotion;
    this.#beside = options.beside;
    const { root, head, cadenceNumber, roadCanvas, driveCanvas, topCanvas } = this.#elements;
    this.help = buildHelp(head, cadenceNumber, options.drawSign);
    const inRoad = options.numbers ? formats : { ...formats, percent: () => '', metres: () => '' };
    this.#road = new RoadAheadView(roadCanvas, options.course, readTones(root), inRoad);
    this.#machine = options.machine;
    this.#drive = this.#makeDrive(driveCanvas);
    this.#top = this.#makeTop(topCanvas);
    // A screen reader is told of every change in what it can read, and its voice comes seconds late for it.
    if (options.silent) root.setAttribute('aria-hidden', 'true');
    this.#stopWatching = watchSize(root, () => this.#measure());
    this.#measure();
    show(this.#elements.cue, '');
    show(this.#elements.remark, '');
  }

  #makeDrive(canvas: HTMLCanvasElement): DrivetrainView {
    const { width, height } = boxOf(canvas, 220, 112);
    return new DrivetrainView(canvas, this.#machine.bike, readTones(canvas), width, height, this.#still);
  }

  #makeTop(canvas: HTMLCanvasElement): ChainTopView {
    const { width, height } = boxOf(canvas, 104, 40);
    return new ChainTopView(canvas, this.#machine.bike, readTones(canvas), width, height);
  }

  /** Sizes are read here and nowhere else: reading them while riding would cost a layout per frame. */
  #measure(): void {
    this.#laneWidth = this.#elements.marker.parentElement?.clientWidth ?? 0;
    this.#road.fit();
    const { driveCanvas, topCanvas } = this.#elements;
    const drive = boxOf(driveCanvas, 220, 112);
    const boxKey = `${drive.width} ${drive.height}`;
    if (this.#boxKey !== '' && boxKey !== this.#boxKey) {
      this.#drive = this.#makeDrive(driveCanvas);
      this.#top = this.#makeTop(topCanvas);
      this.#chainKey = Number.NaN;
    }
    this.#boxKey = boxKey;
    this.#textAtS = Number.NEGATIVE_INFINITY;
    if (this.#frame === null) return;
    this.#drawMachine(this.#frame);
    this.#road.draw(this.#frame);
  }

  /** With `unhurried` the machine is drawn less often. */
  update(frame: RideFrame, unhurried: boolean): void {
    this.#timeS = frame.timeS;
    this.#frame = frame;
    this.#moveMarker(frame.cadenceRpm);
    if (this.#gearShown && this.#isMachineDue(frame, unhurried)) this.#drawMachine(frame);
    // What the hands have just done is answered at once; the rest may be read four times a second.
    const handsKey = handsKeyOf(frame);
    const isDue = Math.abs(frame.timeS - this.#textAtS) >= TEXT_EVERY_S;
    if (!isDue && handsKey === this.#handsKey) return;
    this.#handsKey = handsKey;
    this.#textAtS = frame.timeS;
    this.#writeText(frame);
    this.#writeStates(frame);
    this.#nameBeside(frame);
    this.#road.draw(frame);
  }

  #nameBeside({ timeS, phase }: RideFrame): void {
    const { beside } = this.#elements;
    const isTime = timeS < NAMED_S && phase !== 'finished';
    this.#beside.forEach(({ at }, i) => {
      (beside.children[i] as HTMLElement).hidden = !isTime || at(timeS) === null;
    });
    beside.hidden = ![...beside.children].some((row) => !(row as HTMLElement).hidden);
  }

  /** A chain that only runs round is shown in every second frame; one that moves across, shudders or dangles in all. */
  #isMachineDue(frame: RideFrame, unhurried: boolean): boolean {
    const answers = frame.timeS < Math.max(this.#shudderUntilS, this.#seatedUntilS);
    const lively = frame.shift !== null || !frame.chainOn || answers;
    const skips = (lively ? 0 : 1) + (unhurried ? 1 : 0);
    this.#skippedFrames = this.#skippedFrames < skips ? this.#skippedFrames + 1 : 0;
    return this.#skippedFrames === 0;
  }

  #drawMachine(frame: RideFrame): void {
    const left = (this.#shudderUntilS - frame.timeS) / SHUDDER_S;
    const stuck = isStuck(frame);
    const shudder = this.#still ? 0 : Math.max(stuck ? 0.7 : 0, Math.min(1, left));
    const seated = Math.max(0, Math.min(1, (this.#seatedUntilS - frame.timeS) / SEATED_S));
    this.#drive.draw(frame, Math.max(0, shudder), seated);
    const shift = stuck ? 'stuck' : frame.shift !== null ? 'moving' : seated > 0 ? 'done' : 'none';
    const { drive } = this.#elements;
    if (drive.dataset['shift'] !== shift) drive.dataset['shift'] = shift;
    const key =
      frame.chainAtRing * 100 + frame.chainAtSprocket + (frame.crossed ? 1e4 : 0) + (frame.chainOn ? 1e5 : 0);
    if (key === this.#chainKey) return;
    this.#chainKey = key;
    this.#top.draw(frame);
  }

  #moveMarker(cadenceRpm: number): void {
    const share = (cadenceRpm - SCALE_LOW_RPM) / (SCALE_HIGH_RPM - SCALE_LOW_RPM);
    const held = Math.max(0, Math.min(1, share));
    // Whole pixels are as fine as can be seen here; an unchanged place is not written again.
    const px = Math.round(held * this.#laneWidth);
    if (px === this.#markerPx) return;
    this.#markerPx = px;
    this.#elements.marker.style.transform = `translateX(${px}px)`;
  }

  #writeText(frame: RideFrame): void {
    const elements = this.#elements;
    write(elements.cadence, String(Math.round(frame.cadenceRpm)));
    // The number is the chain's; what the levers have asked for stands beside it until the chain has followed.
    write(elements.gear, this.#formats.gearName(frame.gear));
    const { leverGear } = frame;
    write(
      elements.wanted,
      leverGear === frame.gear ? '' : `→ ${this.#formats.gearWanted(frame.gear, leverGear)}`,
    );
    write(elements.speed, this.#formats.speed(frame.speedMps));
    write(elements.distance, this.#formats.metres(Math.round(frame.distanceM)));
    const { plain } = this.#formats;
    if (plain !== null) {
      write(elements.plainSpeed, plain.speed(frame.speedMps));
      write(elements.plainDistance, plain.metres(Math.round(frame.distanceM)));
    }
    write(elements.plainPressure, frame.pressure);
    const near = frame.stopInM !== null && frame.stopInM <= STOP_SHOWN_M;
    elements.stop.hidden = !near;
    if (near) write(elements.stopText, this.#formats.metres(Math.max(0, Math.round(frame.stopInM ?? 0))));
  }

  #writeStates(frame: RideFrame): void {
    this.#elements.showMood(moodOf(frame));
    const { band, steps, pressure, reserve, reserveFill, chainNote, root } = this.#elements;
    const span = SCALE_HIGH_RPM - SCALE_LOW_RPM;
    band.style.left = `${((frame.bandLowRpm - SCALE_LOW_RPM) / span) * 100}%`;
    band.style.width = `${((frame.bandHighRpm - frame.bandLowRpm) / span) * 100}%`;
    const level = PRESSURES.indexOf(frame.pressure);
    pressure.dataset['value'] = frame.pressure;
    writeFitting(pressure, say(`legs-${legsOf(frame)}`));
    for (let i = 0; i < steps.children.length; i++) {
      (steps.children[i] as HTMLElement).dataset['on'] = String(i <= level);
    }
    reserve.hidden = frame.reserveRatio > 0.995;
    reserveFill.style.width = `${(frame.reserveRatio * 100).toFixed(1)}%`;
    reserve.dataset['spent'] = String(frame.spent);
    root.dataset['crossed'] = String(frame.crossed && frame.chainOn);
    const outside = frame.cadenceRpm < frame.bandLowRpm || frame.cadenceRpm > frame.bandHighRpm;
    root.dataset['outside'] = String(outside);
    writeFitting(chainNote, this.#chainNote(frame));
  }

  #chainNote(frame: RideFrame): string {
    if (!frame.chainOn) return say('chainOff');
    if (frame.crossed) return say('crossed');
    return frame.motor === null
      ? say('widened', { times: this.#top.widening })
      : say(`motor-${motorShown(frame.motor)}`, { speed: this.#formats.helpLimit });
  }

  /** The chain shudders for a moment after a shift under load. */
  applyEvents(events: readonly RideEvent[]): void {
    for (const event of events) {
      if (event.kind === 'shift-done' && event.derailleur === 'rear' && event.load <= CLEAN_LOAD) {
        this.#seatedUntilS = this.#timeS + SEATED_S;
        if (event.direction === 'easier') this.#breathOut();
      }
      const heavy = event.kind === 'shift-done' && event.load >= HEAVY_LOAD;
      if (heavy || event.kind === 'shift-hung') this.#shudderUntilS = this.#timeS + SHUDDER_S;
    }
  }

  /** The cadence is relieved where the legs are: it swells and settles once. */
  #breathOut(): void {
    const { dataset } = this.#elements.cadence;
    // Another name for the same movement begins it anew.
    dataset['breath'] = dataset['breath'] === 'out' ? 'again' : 'out';
  }

  /** `lang` (BCP 47): where it is not in the language of the page. */
  setCue(text: string | null, lang?: string): void {
    if (this.#cueText === (text ?? '')) return;
    this.#cueText = text ?? '';
    if (lang === undefined) this.#elements.cue.removeAttribute('lang');
    else this.#elements.cue.lang = lang;
    show(this.#elements.cue, this.#cueText);
  }

  setRemark(text: string | null): void {
    if (this.#remarkText === (text ?? '')) return;
    this.#remarkText = text ?? '';
    show(this.#elements.remark, this.#remarkText);
  }

  /** Hides what a level does not want shown. */
  setAids(aids: HudAids): void {
    this.#gearShown = aids.gear;
    for (const element of this.#elements.root.querySelectorAll<HTMLElement>('[data-aid]')) {
      const aid = element.dataset['aid'] as keyof HudAids;
      element.classList.toggle('hud-off', !aids[aid]);
    }
  }

  destroy(): void {
    this.#stopWatching();
    this.#elements.root.remove();
  }
}

/** Changes with every push of a lever, every gear that has come in, and every change of pressure. */
function handsKeyOf(frame: RideFrame): number {
  const { gear, leverGear, phase, pressure } = frame;
  const onTheWay = leverGear === gear ? 0 : 1;
  const isOver = phase === 'finished' ? 1 : 0;
  return ((leverGear.developmentM * 2 + onTheWay) * 2 + isOver) * 10 + PRESSURES.indexOf(pressure);
}

/** Below this a motor is not felt to pull (W). */
const PULLS_FROM_W = 15;

function motorShown({ powerW, helpShare, chargeRatio }: NonNullable<RideFrame['motor']>): MotorShown {
  if (chargeRatio <= 0) return 'empty';
  if (helpShare <= 0) return 'too-fast';
  return powerW >= PULLS_FROM_W ? 'pulls' : 'rests';
}

/** The size a canvas was given by the style sheet, or a sensible one before styles apply. */
function boxOf(canvas: HTMLCanvasElement, width: number, height: number): { width: number; height: number } {
  const style = getComputedStyle(canvas);
  return {
    width: Number.parseFloat(style.getPropertyValue('--w')) || width,
    height: Number.parseFloat(style.getPropertyValue('--h')) || height,
  };
}

function write(element: HTMLElement, text: string): void {
  if (element.textContent !== text) element.textContent = text;
}

/** How many letters it has is told to the style sheet, which makes a long word small enough. */
function writeFitting(element: HTMLElement, text: string): void {
  if (element.textContent === text) return;
  element.textContent = text;
  element.style.setProperty('--letters', String(text.length));
}

function show(element: HTMLElement, text: string): void {
  element.classList.toggle('hud-empty', text === '');
  write(element, text);
}

/** Turning so much slower than the band, or faster (rpm), is told in a word. */
const FAR_OUT_RPM = 12;

function legsOf(frame: RideFrame): LegsShown {
  const { pressure, cadenceRpm, bandLowRpm, bandHighRpm, braking, chainOn, phase } = frame;
  if (phase !== 'riding' || braking || !chainOn) return 'coast';
  if (pressure !== 'steady') return pressure;
  if (cadenceRpm < bandLowRpm - FAR_OUT_RPM) return 'too-slow';
  return cadenceRpm > bandHighRpm + FAR_OUT_RPM ? 'too-fast' : 'steady';
}
