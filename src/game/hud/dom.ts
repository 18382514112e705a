/**
 * The instruments' elements, made once. Only structure and names here; what they show is written by
 * `hud.ts`, where they stand is said by `hud.css`.
 */
import { buildFace } from './face.ts';
import { VERTICAL_EXAGGERATION } from '../engine/types.ts';
import { ROAD_AHEAD_M } from '../../core/settings/settings.ts';
import { words } from '../../words/words.ts';
import type { HudFormats, HudOptions } from './options.ts';

const say = words('hud');

/** Every element the instruments write to. */
export type HudElements = ReturnType<typeof buildHud>;

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

/** Keeps an element from being read aloud. */
function unread<Kind extends HTMLElement>(element: Kind): Kind {
  element.setAttribute('aria-hidden', 'true');
  return element;
}

/** Lowest and highest cadence on the scale (rpm). */
export const SCALE_LOW_RPM = 40;
export const SCALE_HIGH_RPM = 120;

/** Builds the instruments into `host`. */
export function buildHud(host: HTMLElement, formats: HudFormats, options: HudOptions) {
  const root = put(host, 'div', 'hud');
  root.dataset['touch'] = String(options.touch);
  root.dataset['still'] = String(options.reducedMotion);
  root.dataset['numbers'] = String(options.numbers);
  root.dataset['play'] = String(options.play);
  return {
    root,
    ...buildHead(root, formats, options),
    ...buildDrive(root),
    ...buildCadence(root, formats),
    ...buildLegs(root),
  };
}

function buildHead(root: HTMLElement, formats: HudFormats, options: HudOptions) {
  const head = put(root, 'div', 'hud-head');
  const road = put(head, 'section', 'hud-card hud-road');
  road.dataset['aid'] = 'roadAhead';
  const roadCanvas = put(road, 'canvas', 'hud-road-canvas');
  roadCanvas.setAttribute('role', 'img');
  roadCanvas.setAttribute('aria-label', say('roadAhead', { length: formats.metres(ROAD_AHEAD_M) }));
  put(road, 'span', 'hud-steeper', say('steeper', { times: VERTICAL_EXAGGERATION }));
  const stop = put(road, 'div', 'hud-stop');
  stop.hidden = true;
  unread(put(stop, 'span', 'hud-stop-mark'));
  put(stop, 'span', 'hud-label', say('stopLine'));
  const stopText = put(stop, 'span', 'hud-stop-text');
  const cue = put(head, 'p', 'hud-card hud-cue');
  cue.dataset['hud'] = 'cue';
  cue.dataset['aid'] = 'cue';
  cue.setAttribute('role', 'status');
  const remark = put(head, 'p', 'hud-card hud-remark');
  remark.dataset['hud'] = 'remark';
  remark.setAttribute('role', 'status');
  return { head, roadCanvas, stop, stopText, cue, remark, beside: buildBeside(head, options) };
}

/** A key to the silhouettes: each with a scrap of its paper, the rider's own with its pennant, and its name. */
function buildBeside(head: HTMLElement, { beside }: HudOptions): HTMLElement {
  const card = put(head, 'ul', 'hud-card hud-beside');
  for (const { who } of beside) {
    const row = put(card, 'li', '');
    row.dataset['beside'] = who;
    put(row, 'i', '').setAttribute('aria-hidden', 'true');
    put(row, 'span', '', say(`beside-${who}`));
  }
  return card;
}

function buildDrive(root: HTMLElement) {
  // It comes forward while the chain moves.
  const drive = put(root, 'section', 'hud-card hud-drive');
  drive.dataset['aid'] = 'gear';
  const driveCanvas = unread(put(drive, 'canvas', 'hud-drive-canvas'));
  const side = put(drive, 'div', 'hud-drive-side');
  put(side, 'span', 'hud-label', say('gear'));
  const gear = put(side, 'span', 'hud-gear');
  gear.dataset['hud'] = 'gear';
  // The gear the levers have asked for, while the chain is on its way there.
  const wanted = unread(put(drive, 'span', 'hud-wanted'));
  const chain = put(side, 'div', 'hud-chain');
  chain.dataset['aid'] = 'chainLine';
  const topCanvas = put(chain, 'canvas', 'hud-top-canvas');
  topCanvas.setAttribute('role', 'img');
  topCanvas.setAttribute('aria-label', say('chainFromAbove'));
  const chainNote = put(chain, 'span', 'hud-note');
  return { drive, driveCanvas, gear, wanted, topCanvas, chainNote };
}

function buildCadence(root: HTMLElement, formats: HudFormats) {
  const card = put(root, 'section', 'hud-card hud-cadence');
  const line = put(card, 'div', 'hud-line');
  const cadenceNumber = put(line, 'div', 'hud-cadence-number');
  cadenceNumber.dataset['aid'] = 'cadence';
  put(cadenceNumber, 'span', 'hud-label', say('cadence'));
  const cadence = put(cadenceNumber, 'span', 'hud-big');
  cadence.dataset['hud'] = 'cadence';
  put(cadenceNumber, 'span', 'hud-label hud-unit', say('perMinute'));
  const right = put(line, 'div', 'hud-pace');
  const speed = put(right, 'span', 'hud-speed');
  // The same in km/h and m; the very elements that are seen where these are shown anyway.
  const plainSpeed = formats.plain === null ? speed : putPlain(right);
  plainSpeed.dataset['hud'] = 'speed';
  const way = put(right, 'span', 'hud-label hud-way', `${say('distance')} `);
  const distance = put(way, 'span', 'hud-distance');
  const plainDistance = formats.plain === null ? distance : putPlain(way);
  plainDistance.dataset['hud'] = 'distance';
  const scale = unread(put(card, 'div', 'hud-scale'));
  scale.dataset['aid'] = 'cadence';
  const track = put(scale, 'div', 'hud-track');
  const band = put(track, 'div', 'hud-band');
  const lane = put(scale, 'div', 'hud-lane');
  const marker = put(lane, 'div', 'hud-marker');
  const numbers = put(scale, 'div', 'hud-numbers');
  for (let rpm = SCALE_LOW_RPM; rpm <= SCALE_HIGH_RPM; rpm += 20) put(numbers, 'span', '', String(rpm));
  // How the legs turn, where numbers are not seen.
  const showMood = buildFace(card);
  return { showMood, cadenceNumber, cadence, speed, plainSpeed, distance, plainDistance, band, marker };
}

/** Not seen, and not read aloud beside what is seen. */
function putPlain(parent: HTMLElement): HTMLElement {
  return unread(put(parent, 'span', 'hud-plain'));
}

function buildLegs(root: HTMLElement) {
  const card = put(root, 'section', 'hud-card hud-legs');
  card.dataset['aid'] = 'pressure';
  put(card, 'span', 'hud-label', say('pressure'));
  // What the legs do in a word, and the code of how they push.
  const pressure = put(card, 'span', 'hud-pressure');
  const plainPressure = putPlain(card);
  plainPressure.dataset['hud'] = 'pressure';
  const steps = unread(put(card, 'div', 'hud-steps'));
  for (let i = 0; i < 4; i++) put(steps, 'i', '');
  const reserve = put(card, 'div', 'hud-reserve');
  reserve.hidden = true;
  put(reserve, 'span', 'hud-label', say('reserve'));
  const bar = put(reserve, 'div', 'hud-reserve-bar');
  const reserveFill = put(bar, 'div', 'hud-reserve-fill');
  return { pressure, plainPressure, steps, reserve, reserveFill };
}
