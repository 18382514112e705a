/**
 * The instruments' elements, made once. Only structure and names here; what they show is written by
 * `createHud.ts`, where they stand is said by `hud.css`.
 */
import type { MachineTones } from '../paint/palette.ts';
import { buildFace, type FaceMood } from './face.ts';
import { VERTICAL_EXAGGERATION } from '../engine/types.ts';
import { ROAD_AHEAD_M } from '../../core/settings/settings.ts';
import { words } from '../../words/words.ts';
import type { HudFormats, HudOptions } from './options.ts';

const say = words('hud');

/** Every element the instruments write to. */
export interface HudElements {
  readonly root: HTMLElement;
  readonly head: HTMLElement;
  /** Where the cadence stands as a number. */
  readonly cadenceNumber: HTMLElement;
  readonly roadCanvas: HTMLCanvasElement;
  readonly driveCanvas: HTMLCanvasElement;
  readonly topCanvas: HTMLCanvasElement;
  /** The card of the drivetrain, which comes forward while the chain moves. */
  readonly drive: HTMLElement;
  readonly gear: HTMLElement;
  /** The gear the levers have asked for, while the chain is on its way there. */
  readonly wanted: HTMLElement;
  readonly chainNote: HTMLElement;
  readonly cadence: HTMLElement;
  /** The face that says how the legs turn, seen where numbers are not. */
  readonly showMood: (mood: FaceMood) => void;
  readonly band: HTMLElement;
  readonly marker: HTMLElement;
  readonly speed: HTMLElement;
  readonly distance: HTMLElement;
  /** The same in km/h and m; the very elements above where these are shown anyway. */
  readonly plainSpeed: HTMLElement;
  readonly plainDistance: HTMLElement;
  /** What the legs do in a word, and the code of how they push. */
  readonly pressure: HTMLElement;
  readonly plainPressure: HTMLElement;
  readonly steps: HTMLElement;
  readonly reserve: HTMLElement;
  readonly reserveFill: HTMLElement;
  readonly stop: HTMLElement;
  readonly stopText: HTMLElement;
  readonly cue: HTMLElement;
  readonly remark: HTMLElement;
}

/** An element with a class, inside `parent`. */
export function put<Tag extends keyof HTMLElementTagNameMap>(
  parent: HTMLElement,
  tag: Tag,
  className: string,
  text = '',
): HTMLElementTagNameMap[Tag] {
  const element = document.createElement(tag);
  element.className = className;
  if (text) element.textContent = text;
  parent.append(element);
  return element;
}

/** Lowest and highest cadence on the scale (rpm). */
export const SCALE_LOW_RPM = 40;
export const SCALE_HIGH_RPM = 120;

/** Builds the instruments into `host`. */
export function buildHud(host: HTMLElement, formats: HudFormats, options: HudOptions): HudElements {
  const root = put(host, 'div', 'hud');
  root.dataset['touch'] = String(options.touch);
  root.dataset['still'] = String(options.reducedMotion);
  root.dataset['numbers'] = String(options.numbers);
  root.dataset['play'] = String(options.play);
  return {
    root,
    ...buildHead(root, formats),
    ...buildDrive(root),
    ...buildCadence(root, formats),
    ...buildLegs(root),
  };
}

function buildHead(root: HTMLElement, formats: HudFormats) {
  const head = put(root, 'div', 'hud-head');
  const road = put(head, 'section', 'hud-card hud-road');
  road.dataset['aid'] = 'roadAhead';
  const roadCanvas = put(road, 'canvas', 'hud-road-canvas');
  roadCanvas.setAttribute('role', 'img');
  roadCanvas.setAttribute('aria-label', say('roadAhead', { length: formats.metres(ROAD_AHEAD_M) }));
  put(road, 'span', 'hud-steeper', say('steeper', { times: VERTICAL_EXAGGERATION }));
  const stop = put(road, 'div', 'hud-stop');
  stop.hidden = true;
  put(stop, 'span', 'hud-stop-mark').setAttribute('aria-hidden', 'true');
  put(stop, 'span', 'hud-label', say('stopLine'));
  const stopText = put(stop, 'span', 'hud-stop-text');
  const cue = put(head, 'p', 'hud-card hud-cue');
  cue.dataset['hud'] = 'cue';
  cue.dataset['aid'] = 'cue';
  cue.setAttribute('role', 'status');
  const remark = put(head, 'p', 'hud-card hud-remark');
  remark.dataset['hud'] = 'remark';
  remark.setAttribute('role', 'status');
  return { head, roadCanvas, stop, stopText, cue, remark };
}

function buildDrive(root: HTMLElement) {
  const card = put(root, 'section', 'hud-card hud-drive');
  card.dataset['aid'] = 'gear';
  const driveCanvas = put(card, 'canvas', 'hud-drive-canvas');
  driveCanvas.setAttribute('aria-hidden', 'true');
  const side = put(card, 'div', 'hud-drive-side');
  put(side, 'span', 'hud-label', say('gear'));
  const gear = put(side, 'span', 'hud-gear');
  gear.dataset['hud'] = 'gear';
  const wanted = put(card, 'span', 'hud-wanted');
  wanted.setAttribute('aria-hidden', 'true');
  const chain = put(side, 'div', 'hud-chain');
  chain.dataset['aid'] = 'chainLine';
  const topCanvas = put(chain, 'canvas', 'hud-top-canvas');
  topCanvas.setAttribute('role', 'img');
  topCanvas.setAttribute('aria-label', say('chainFromAbove'));
  const chainNote = put(chain, 'span', 'hud-note');
  return { drive: card, driveCanvas, gear, wanted, topCanvas, chainNote };
}

function buildCadence(root: HTMLElement, formats: HudFormats) {
  const card = put(root, 'section', 'hud-card hud-cadence');
  const line = put(card, 'div', 'hud-line');
  const left = put(line, 'div', 'hud-cadence-number');
  left.dataset['aid'] = 'cadence';
  put(left, 'span', 'hud-label', say('cadence'));
  const cadence = put(left, 'span', 'hud-big');
  cadence.dataset['hud'] = 'cadence';
  put(left, 'span', 'hud-label hud-unit', say('perMinute'));
  const right = put(line, 'div', 'hud-pace');
  const speed = put(right, 'span', 'hud-speed');
  const plainSpeed = formats.plain === null ? speed : putPlain(right);
  plainSpeed.dataset['hud'] = 'speed';
  const way = put(right, 'span', 'hud-label hud-way', `${say('distance')} `);
  const distance = put(way, 'span', 'hud-distance');
  const plainDistance = formats.plain === null ? distance : putPlain(way);
  plainDistance.dataset['hud'] = 'distance';
  const scale = put(card, 'div', 'hud-scale');
  scale.dataset['aid'] = 'cadence';
  scale.setAttribute('aria-hidden', 'true');
  const track = put(scale, 'div', 'hud-track');
  const band = put(track, 'div', 'hud-band');
  const lane = put(scale, 'div', 'hud-lane');
  const marker = put(lane, 'div', 'hud-marker');
  const numbers = put(scale, 'div', 'hud-numbers');
  for (let rpm = SCALE_LOW_RPM; rpm <= SCALE_HIGH_RPM; rpm += 20) put(numbers, 'span', '', String(rpm));
  const showMood = buildFace(card);
  return { showMood, cadenceNumber: left, cadence, speed, plainSpeed, distance, plainDistance, band, marker };
}

/** Not seen, and not read aloud beside what is seen. */
function putPlain(parent: HTMLElement): HTMLElement {
  const element = put(parent, 'span', 'hud-plain');
  element.setAttribute('aria-hidden', 'true');
  return element;
}

function buildLegs(root: HTMLElement) {
  const card = put(root, 'section', 'hud-card hud-legs');
  card.dataset['aid'] = 'pressure';
  put(card, 'span', 'hud-label', say('pressure'));
  const pressure = put(card, 'span', 'hud-pressure');
  const plainPressure = putPlain(card);
  plainPressure.dataset['hud'] = 'pressure';
  const steps = put(card, 'div', 'hud-steps');
  steps.setAttribute('aria-hidden', 'true');
  for (let i = 0; i < 4; i++) put(steps, 'i', '');
  const reserve = put(card, 'div', 'hud-reserve');
  reserve.hidden = true;
  put(reserve, 'span', 'hud-label', say('reserve'));
  const bar = put(reserve, 'div', 'hud-reserve-bar');
  const reserveFill = put(bar, 'div', 'hud-reserve-fill');
  return { pressure, plainPressure, steps, reserve, reserveFill };
}

/** Reads `--paper`, `--ink` and so on as they apply to `element`: the tones of the small canvases. The fallbacks are those of `hud.css`. */
export function readTones(element: HTMLElement): MachineTones {
  const style = getComputedStyle(element);
  const read = (name: string, fallback: string) => style.getPropertyValue(name).trim() || fallback;
  return {
    paper: read('--paper', '#fff8ec'),
    ink: read('--ink', '#22303a'),
    sand: read('--sand', '#d9ccb2'),
    sandDark: read('--sand-dark', '#8f8168'),
    rider: read('--rider', '#e2552c'),
    attention: read('--attention', '#f0a51e'),
  };
}
