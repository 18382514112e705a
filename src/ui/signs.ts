/**
 * One sign for each thing the hands do, the same on pads, in hints, in the first steps, in help and after the ride:
 * toothed wheels whose size says which way is which (easier is a bigger sprocket, but a smaller ring; rings have
 * their crank), a feather for soft feet, a shoe on the pedal for pushing, a lever for braking. No words here.
 */
import type { KeyAction } from '../core/settings/settings.ts';

const SVG = 'http://www.w3.org/2000/svg';

/** The sign of an action: 48 × 48 in the colour of the text, hidden from screen readers. */
export function drawSign(action: KeyAction): SVGSVGElement {
  const svg = document.createElementNS(SVG, 'svg');
  svg.setAttribute('viewBox', '0 0 48 48');
  svg.setAttribute('aria-hidden', 'true');
  svg.setAttribute('focusable', 'false');
  svg.dataset['sign'] = action;
  const path = document.createElementNS(SVG, 'path');
  path.setAttribute('d', signPath(action));
  path.setAttribute('fill', 'currentColor');
  path.setAttribute('fill-rule', 'evenodd');
  svg.append(path);
  return svg;
}

/** The same as a path, for those who draw with elements. */
export function signPath(action: KeyAction): string {
  switch (action) {
    case 'rear-easier':
      return toothedWheel(21, 18, 5);
    case 'rear-harder':
      return toothedWheel(11, 10, 4);
    case 'front-bigger':
      return `${toothedWheel(20, 22, 13)}${CRANK}`;
    case 'front-smaller':
      return `${toothedWheel(13, 13, 7)}${CRANK}`;
    case 'ease':
      return 'M42 5C24 6 11 16 10 32L5 42l4 2 4-8c15 1 27-11 29-31ZM15 31 31 16 17 33Z';
    case 'press':
      return 'M12 5h13v15c9 2 17 4 18 12v3H12ZM6 38h36v5H6Z';
    case 'coast':
      return 'M24 15a9 9 0 1 1 0 18 9 9 0 0 1 0-18Zm0 6a3 3 0 1 0 0 6 3 3 0 0 0 0-6ZM2 19h11v10H2ZM35 19h11v10H35Z';
    case 'brake':
      return 'M8 10h26a6 6 0 0 1 6 6v2H8ZM10 22h27l-6 19a3 3 0 0 1-6-2l4-11H10Z';
    case 'pause':
      return 'M12 8h8v32h-8ZM28 8h8v32h-8Z';
  }
}

/** A crank arm with its pedal, from the middle down; its end lies beyond the bigger wheel. */
const CRANK = 'M21.5 24h5v17h7v5h-18v-5h6Z';

/** A wheel with `teeth` flat teeth and a hole (radii in drawing units, middle at 24, 24). */
function toothedWheel(radius: number, teeth: number, hole: number): string {
  const points: string[] = [];
  const root = radius - 3;
  for (let i = 0; i < teeth; i += 1) {
    const steps = [0, 0.25, 0.5, 0.75] as const;
    steps.forEach((part, j) => {
      const angle = (2 * Math.PI * (i + part)) / teeth;
      const r = j < 2 ? radius : root;
      points.push(`${(24 + r * Math.cos(angle)).toFixed(1)} ${(24 + r * Math.sin(angle)).toFixed(1)}`);
    });
  }
  const circle = `M${24 - hole} 24a${hole} ${hole} 0 1 0 ${2 * hole} 0a${hole} ${hole} 0 1 0 ${-2 * hole} 0Z`;
  return `M${points.join('L')}Z${circle}`;
}
