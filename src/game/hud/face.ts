/**
 * One face for the legs, for those who do not read numbers: straining when they turn too slowly, smiling when they turn
 * well, whirring when they turn too fast, and at rest. Cut paper like everything else; shapes tell it, not colours.
 */
import type { RideFrame } from '../../core/ride/types.ts';

export type FaceMood = 'straining' | 'smiling' | 'whirring' | 'resting';

/** A cadence this little outside the band still smiles (rpm). */
const KIND_RPM = 3;

export function moodOf(frame: RideFrame): FaceMood {
  const { pressure, cadenceRpm, bandLowRpm, bandHighRpm, braking, chainOn, phase } = frame;
  if (phase === 'finished') return 'smiling';
  if (phase !== 'riding' || braking || !chainOn || pressure === 'coast') return 'resting';
  if (cadenceRpm < bandLowRpm - KIND_RPM) return 'straining';
  return cadenceRpm > bandHighRpm + KIND_RPM ? 'whirring' : 'smiling';
}

const SVG = 'http://www.w3.org/2000/svg';
const SPIRAL = 'm0 0c3-1 4 3 1 4s-7-2-5-7 9-6 12-2 1 11-4 13-12 0-14-5';

/** What each mood has in its face; `fill` shapes are full, the rest are strokes. */
const FEATURES: Readonly<Record<FaceMood, readonly { readonly d: string; readonly fill?: true }[]>> = {
  straining: [
    { d: 'M30 52 46 58M90 52 74 58' },
    { d: 'M34 64h12M74 64h12' },
    { d: 'M44 90c6-6 8 6 16 0s10 6 16 0' },
    { d: 'M98 44c6 8 8 12 3 15s-9-4-3-15Z', fill: true },
  ],
  smiling: [
    { d: 'M40 56a6 7 0 1 0 .1 0ZM80 56a6 7 0 1 0 .1 0Z', fill: true },
    { d: 'M38 80c10 18 34 18 44 0' },
  ],
  whirring: [
    { d: `M40 64${SPIRAL}` },
    { d: `M80 64${SPIRAL}` },
    { d: 'M60 82a11 12 0 1 0 .1 0Z', fill: true },
    { d: 'M8 58h12M4 70h14M100 58h12M102 70h14' },
  ],
  resting: [{ d: 'M32 62c4 6 12 6 16 0M72 62c4 6 12 6 16 0' }, { d: 'M46 84c8 8 20 8 28 0' }],
};

/** Puts the face into `parent`; the answer shows another mood. */
export function buildFace(parent: HTMLElement): (mood: FaceMood) => void {
  const add = (into: Element, name: string, attributes: Readonly<Record<string, string>>): Element => {
    const element = into.ownerDocument.createElementNS(SVG, name);
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
    into.append(element);
    return element;
  };
  const svg = add(parent, 'svg', { class: 'hud-face', viewBox: '0 0 120 120', 'aria-hidden': 'true' });
  add(svg, 'circle', { cx: '60', cy: '68', r: '46', class: 'hud-face-skin' });
  add(svg, 'path', { d: 'M12 52C14 20 40 8 60 8s46 12 48 44c-30-10-66-10-96 0Z', class: 'hud-face-helmet' });
  for (const [mood, features] of Object.entries(FEATURES)) {
    const group = add(svg, 'g', { 'data-face': mood });
    for (const { d, fill } of features)
      add(group, 'path', { d, class: fill === true ? 'hud-face-full' : 'hud-face-line' });
  }
  return (mood) => {
    if (svg.getAttribute('data-mood') !== mood) svg.setAttribute('data-mood', mood);
  };
}
