/**
 * The little drawings on the pads: toothed wheels whose size says which way is which (easier is a bigger
 * sprocket, but a smaller ring), a foot on a pedal, a brake lever. No words here.
 */

const SVG = 'http://www.w3.org/2000/svg';

/** What can be drawn. */
export type PadShape =
  | 'big-sprocket'
  | 'small-sprocket'
  | 'big-ring'
  | 'small-ring'
  | 'press'
  | 'ease'
  | 'brake'
  | 'pause';

/** A drawing of 48 × 48 in the colour of the text, hidden from screen readers. */
export function drawPadShape(shape: PadShape): SVGSVGElement {
  const svg = document.createElementNS(SVG, 'svg');
  svg.setAttribute('viewBox', '0 0 48 48');
  svg.setAttribute('aria-hidden', 'true');
  svg.setAttribute('focusable', 'false');
  const path = document.createElementNS(SVG, 'path');
  path.setAttribute('d', pathOf(shape));
  path.setAttribute('fill', 'currentColor');
  path.setAttribute('fill-rule', 'evenodd');
  svg.append(path);
  return svg;
}

function pathOf(shape: PadShape): string {
  switch (shape) {
    case 'big-sprocket':
      return toothedWheel(21, 18, 5);
    case 'small-sprocket':
      return toothedWheel(11, 10, 4);
    case 'big-ring':
      return toothedWheel(21, 22, 14);
    case 'small-ring':
      return toothedWheel(13, 13, 7);
    case 'press':
      return 'M24 5 41 24H31V43H17V24H7Z';
    case 'ease':
      return 'M24 41 9 25h9V19h12v6h9ZM18 8h12v4H18Z';
    case 'brake':
      return 'M8 10h26a6 6 0 0 1 6 6v2H8ZM10 22h27l-6 19a3 3 0 0 1-6-2l4-11H10Z';
    case 'pause':
      return 'M12 8h8v32h-8ZM28 8h8v32h-8Z';
  }
}

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
