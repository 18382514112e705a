/** Builds the page of `entry.tsx` into a folder that goes away with the test, and opens devices on it. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { build } from 'vite';
import { wordsPlugin } from '../../../.ci/wordsPlugin.ts';
import type { ClinicPlan } from '../../../src/core/group/plan.ts';
import type { RideRecord } from '../../../src/core/group/records/record.ts';
import type { OpenPage, Site } from '../site.ts';

/** The folder with the page, and how to remove it. */
export interface BuiltPage {
  readonly folder: string;
  readonly remove: () => void;
}

/** Builds it. */
export async function buildHandoverPage(): Promise<BuiltPage> {
  const folder = mkdtempSync(join(tmpdir(), 'handover-page-'));
  await build({
    configFile: false,
    logLevel: 'silent',
    root: fileURLToPath(new URL('.', import.meta.url)),
    base: './',
    plugins: [wordsPlugin()],
    build: { outDir: folder, emptyOutDir: false, target: 'es2022' },
  });
  return { folder, remove: () => rmSync(folder, { recursive: true, force: true }) };
}

/** Every device has a profile of its own; all of them have the same clock, which does not move. */
export async function openDevice(site: Site, address: string, width = 1024, height = 768): Promise<OpenPage> {
  const device = await site.openPage({ width, height, address, context: { acceptDownloads: true } });
  await device.page.clock.setFixedTime(new Date('2026-06-02T17:00:00Z'));
  await ready(device.page);
  return device;
}

/** Waits until the page has its storage. */
export async function ready(page: Page): Promise<void> {
  await page.waitForSelector('body[data-ready="true"]');
}

/** Makes a device one that has ridden. */
export function rideOn(
  page: Page,
  plan: ClinicPlan,
  deviceId: string,
  records: readonly RideRecord[],
): Promise<void> {
  return page.evaluate(([a, b, c]) => window.lab.ride(a, b, c), [plan, deviceId, records] as const);
}

/** Waits until the reader has nothing left to do. */
export async function settled(page: Page): Promise<void> {
  await page.waitForSelector('.reader[data-busy="false"]');
}

/** Gives a text to the reader by hand. */
export async function paste(page: Page, text: string): Promise<void> {
  await page.click('.reader .choice-row label:nth-child(3)');
  await page.fill('[data-read-text]', text);
  await page.click('[data-take-text]');
  await settled(page);
}

/** Gives files or pictures to the reader. */
export async function giveFiles(
  page: Page,
  files: readonly { readonly name: string; readonly mimeType: string; readonly buffer: Buffer }[],
): Promise<void> {
  await page.click('.reader .choice-row label:nth-child(2)');
  await page.setInputFiles('[data-read-files]', [...files]);
  await page.waitForTimeout(50);
  await settled(page);
}

/** How the picture of a code is spoilt by a canvas. */
export interface Spoiling {
  readonly angleDeg: number;
  readonly blurPx: number;
  readonly shade: number;
}

/** The code on the screen, painted on a canvas as a bad camera would see it, as a PNG. */
export async function photograph(page: Page, spoiling: Spoiling): Promise<Buffer> {
  const address = await page.evaluate(async ({ angleDeg, blurPx, shade }) => {
    const svg = document.querySelector('svg.code')?.cloneNode(true) as SVGSVGElement;
    svg.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
    svg.setAttribute('width', '480');
    svg.setAttribute('height', '480');
    const image = new Image();
    image.src = `data:image/svg+xml,${encodeURIComponent(new XMLSerializer().serializeToString(svg))}`;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = 720;
    canvas.height = 720;
    const pen = canvas.getContext('2d') as CanvasRenderingContext2D;
    pen.fillStyle = '#7d7468';
    pen.fillRect(0, 0, 720, 720);
    pen.filter = `blur(${blurPx}px)`;
    pen.translate(360, 360);
    pen.rotate((angleDeg * Math.PI) / 180);
    pen.drawImage(image, -240, -240, 480, 480);
    pen.resetTransform();
    pen.filter = 'none';
    const light = pen.createLinearGradient(0, 0, 720, 300);
    light.addColorStop(0, `rgb(0 0 0 / ${shade})`);
    light.addColorStop(1, 'rgb(0 0 0 / 0.1)');
    pen.fillStyle = light;
    pen.fillRect(0, 0, 720, 720);
    return canvas.toDataURL('image/png');
  }, spoiling);
  return Buffer.from(address.split(',')[1] ?? '', 'base64');
}
