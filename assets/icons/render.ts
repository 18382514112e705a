/**
 * Draws the icon of the game (a sprocket at the foot of a hill, cut from paper) and renders it in the sizes that
 * browsers and phones ask for. Run with `npx tsx assets/icons/render.ts` after a change and commit what it writes;
 * needs Chromium, as the browser tests do.
 */
import { writeFileSync } from 'node:fs';
import { chromium } from 'playwright-core';
import { findChromium } from '../../test/browser/chromium.ts';

const TEETH = 18;
/** Holes round the middle, as in a light sprocket. */
const HOLES = 5;
/** Side of the drawing (units of the SVG). */
const SIDE = 512;

/** A sprocket with narrow teeth, as an outline round a centre. */
function sprocket(x: number, y: number, rootRadius: number, tipRadius: number): string {
  const at = (turn: number, radius: number): string => {
    const angle = turn * 2 * Math.PI;
    return `${(x + Math.cos(angle) * radius).toFixed(1)} ${(y + Math.sin(angle) * radius).toFixed(1)}`;
  };
  const points = Array.from({ length: TEETH }, (_, i) => {
    const corner = (share: number, radius: number): string => at((i + share) / TEETH, radius);
    return [
      corner(-0.44, rootRadius),
      corner(-0.1, tipRadius),
      corner(0.1, tipRadius),
      corner(0.44, rootRadius),
    ];
  });
  return `M${points.flat().join('L')}Z`;
}

function holes(x: number, y: number): string {
  return Array.from({ length: HOLES }, (_, i) => {
    const angle = ((i - 0.25) / HOLES) * 2 * Math.PI;
    const centre = [x + Math.cos(angle) * 74, y + Math.sin(angle) * 74].map((value) => value.toFixed(1));
    return `<circle cx="${centre[0]}" cy="${centre[1]}" r="24"/>`;
  }).join('');
}

/** Hatching below the steep part: a gradient is told by ink. */
function hatching(): string {
  return Array.from({ length: 7 }, (_, i) => `M${318 + i * 28} ${(398 - i * 31).toFixed(0)}l-22 64`).join('');
}

/** The drawing; `inset` is kept free round what matters, because some phones cut icons to a circle. */
function drawing(inset: number, corner: number): string {
  const scale = (SIDE - 2 * inset) / SIDE;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${SIDE} ${SIDE}">
<clipPath id="c"><rect width="${SIDE}" height="${SIDE}" rx="${corner}"/></clipPath>
<g clip-path="url(#c)">
<rect width="${SIDE}" height="${SIDE}" fill="#f7e2c3"/>
<g transform="translate(${inset} ${inset}) scale(${scale})">
<circle cx="366" cy="120" r="58" fill="#fff8ec"/>
<path d="M-200 330C-60 240 60 236 180 300S420 300 720 210V800H-200Z" fill="#aec2b3"/>
<path d="M-200 432H220C330 430 400 250 560 170L800 120V800H-200Z" fill="#274844"/>
<path d="${hatching()}" stroke="#b3c3b6" stroke-width="11" stroke-linecap="round"/>
<path d="M-200 432H220C330 430 400 250 560 170L800 120" fill="none" stroke="#fff8ec" stroke-width="28"/>
<path d="${sprocket(172, 274, 122, 147)}" fill="#e2552c" stroke="#22303a" stroke-width="12" stroke-linejoin="round"/>
<g fill="#fff8ec" stroke="#22303a" stroke-width="10">${holes(172, 274)}<circle cx="172" cy="274" r="20"/></g>
</g>
</g>
</svg>
`;
}

const square = drawing(0, 92);
const files = [
  { name: 'icon-192.png', side: 192, svg: square },
  { name: 'icon-512.png', side: 512, svg: square },
  // Phones that round the corners themselves want none of ours.
  { name: 'icon-180.png', side: 180, svg: drawing(22, 0) },
  { name: 'icon-maskable-512.png', side: 512, svg: drawing(72, 0) },
];

writeFileSync(new URL('icon.svg', import.meta.url), square);
const browser = await chromium.launch({
  executablePath: findChromium(),
  args: ['--no-sandbox', '--disable-gpu'],
});
try {
  for (const { name, side, svg } of files) {
    const page = await browser.newPage({ viewport: { width: side, height: side } });
    const address = `data:image/svg+xml;base64,${Buffer.from(svg).toString('base64')}`;
    await page.setContent(
      `<style>*{margin:0}img{display:block}</style><img src="${address}" width="${side}" height="${side}">`,
    );
    await page.waitForFunction('document.images[0].complete');
    const picture = await page.screenshot({ omitBackground: true });
    writeFileSync(new URL(name, import.meta.url), picture);
    console.log(`${name} ${(picture.length / 1024).toFixed(1)} KB`);
    await page.close();
  }
} finally {
  await browser.close();
}
