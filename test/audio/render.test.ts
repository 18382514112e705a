/**
 * The rendered sounds themselves: the same every time, without seams, offsets or anything louder than the
 * click of a shift, and small enough to carry.
 */
import { readdirSync, statSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { renderLoop } from '../../assets/sounds/loops.ts';
import { loudestRmsOf, offsetOf, pcmOf, peakOf, rmsOf, seamOf, wavOf } from '../../assets/sounds/measure.ts';
import { renderShot } from '../../assets/sounds/shots.ts';
import { LOUDEST_GAIN } from '../../src/audio/mix.ts';
import { LOOP_NAMES, LOOPS, SHOT_NAMES } from '../../src/audio/sounds.ts';

const SOUND_NAMES = [...LOOP_NAMES, ...SHOT_NAMES];

const folder = 'assets/sounds';
const loops = new Map(LOOP_NAMES.map((name) => [name, renderLoop(name)]));
const shots = new Map(SHOT_NAMES.map((name) => [name, renderShot(name)]));
const click = renderShot('shift-click');

describe('rendering', () => {
  it.each(LOOP_NAMES)('gives the same samples of %s twice', (name) => {
    expect(Buffer.compare(pcmOf(renderLoop(name)), pcmOf(loops.get(name)!))).toBe(0);
  });

  it.each(SHOT_NAMES)('gives the same samples of %s twice', (name) => {
    expect(Buffer.compare(pcmOf(renderShot(name)), pcmOf(shots.get(name)!))).toBe(0);
  });

  it('writes a WAV whose sizes agree', () => {
    const wav = wavOf(click);
    const view = new DataView(wav.buffer);
    expect(wav.length).toBe(44 + click.length * 2);
    expect(view.getUint32(4, true)).toBe(wav.length - 8);
    expect(view.getUint32(40, true)).toBe(click.length * 2);
  });
});

describe('a seam', () => {
  it('is found where there is one', () => {
    const whole = Float64Array.from({ length: 4800 }, (_, i) => Math.sin((2 * Math.PI * i) / 480));
    const cut = whole.slice(0, 4700);
    expect(seamOf(whole).jump / seamOf(whole).typicalStep).toBeLessThan(2);
    expect(seamOf(cut).jump / seamOf(cut).typicalStep).toBeGreaterThan(20);
  });

  it.each(LOOP_NAMES)('is not in %s', (name) => {
    const seam = seamOf(loops.get(name)!);
    // Three and a half typical steps are what noise does on its own every few seconds.
    expect(seam.jump).toBeLessThan(3.5 * seam.typicalStep);
    expect(seam.kink).toBeLessThan(3.5 * seam.typicalKink);
  });
});

describe('every sound', () => {
  it.each(LOOP_NAMES)(
    '%s lasts as long as the player thinks and is a whole number of samples at 44.1 kHz',
    (name) => {
      expect(loops.get(name)!.length).toBe(LOOPS[name].periodMs * 48);
      expect((LOOPS[name].periodMs * 441) % 10).toBe(0);
    },
  );

  it.each(SOUND_NAMES)('%s is neither silent, clipped nor off centre', (name) => {
    const samples = new Map<string, Float64Array>([...loops, ...shots]).get(name)!;
    expect(rmsOf(samples)).toBeGreaterThan(0.01);
    expect(peakOf(samples)).toBeLessThan(0.9);
    expect(Math.abs(offsetOf(samples))).toBeLessThan(1e-6);
  });

  it.each(SHOT_NAMES)('%s begins and ends at nothing', (name) => {
    const samples = shots.get(name)!;
    expect(Math.abs(samples.at(0)!)).toBeLessThan(0.001);
    expect(Math.abs(samples.at(-1)!)).toBeLessThan(0.001);
  });
});

describe('nothing is louder than the click of a shift', () => {
  it.each(SHOT_NAMES.filter((name) => name !== 'shift-click'))('not %s', (name) => {
    expect(peakOf(shots.get(name)!)).toBeLessThan(peakOf(click));
    expect(loudestRmsOf(shots.get(name)!)).toBeLessThan(loudestRmsOf(click));
  });

  it.each(LOOP_NAMES)('not %s at its loudest', (name) => {
    expect(peakOf(loops.get(name)!) * LOUDEST_GAIN[name]).toBeLessThan(peakOf(click) / 2);
    expect(loudestRmsOf(loops.get(name)!) * LOUDEST_GAIN[name]).toBeLessThan(loudestRmsOf(click) / 1.5);
  });

  it('not a crossed, hanging shift with the brakes on in a gale on gravel', () => {
    const heard = LOOP_NAMES.filter((name) => !name.startsWith('freewheel'));
    const powers = heard.map((name) => (rmsOf(loops.get(name)!) * LOUDEST_GAIN[name]) ** 2);
    expect(Math.sqrt(powers.reduce((sum, power) => sum + power, 0))).toBeLessThan(loudestRmsOf(click));
  });
});

describe('the files', () => {
  const files = readdirSync(folder).filter((file) => /\.(webm|mp3)$/.test(file));

  it('are one webm and one mp3 for each sound and nothing else', () => {
    const wanted = SOUND_NAMES.flatMap((name) => [`${name}.webm`, `${name}.mp3`]);
    expect([...files].sort()).toEqual([...wanted].sort());
  });

  it('weigh at most 400 KB together', () => {
    const bytes = files.reduce((sum, file) => sum + statSync(`${folder}/${file}`).size, 0);
    expect(bytes).toBeGreaterThan(0);
    expect(bytes).toBeLessThanOrEqual(400 * 1024);
  });
});
