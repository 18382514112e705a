/**
 * Renders every sound and writes it twice, as webm (opus) and as mp3, beside this file:
 * `npx tsx assets/sounds/render.ts`. Needs ffmpeg on the path; the same sources give the same samples every time.
 * With `--wav FOLDER` it also leaves the uncompressed sounds there to listen to.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { LOOP_LEAD_MS, LOOP_NAMES, SHOT_NAMES, type SoundName } from '../../src/audio/sounds.ts';
import { renderLoop } from './loops.ts';
import { decibels, loudestRmsOf, offsetOf, peakOf, rmsOf, samplesOfPcm, seamOf, wavOf } from './measure.ts';
import { renderShot } from './shots.ts';
import { SAMPLE_RATE_HZ, samplesOf } from './synthesis.ts';

/** All files together stay below this (bytes). */
const MOST_BYTES = 400 * 1024;
/** A seam in an encoded loop, in typical steps of that loop: good enough to stop looking, and the most allowed. */
const ORDINARY_SEAM_RATIO = 1.5;
const MOST_SEAM_RATIO = 3;
/** Samples by which decoders were seen to differ in where a file begins. */
const DECODER_SLACK = 24;
/** How many beginnings on the circle are tried. */
const BEGINNINGS = 101;

type Format = 'webm' | 'mp3';

function run(args: readonly string[], input: Uint8Array): Uint8Array {
  const done = spawnSync('ffmpeg', ['-hide_banner', '-loglevel', 'error', ...args], {
    input,
    maxBuffer: 64 * 1024 * 1024,
  });
  if (done.error) throw done.error;
  if (done.status !== 0) throw new Error(`ffmpeg ${args.join(' ')}: ${done.stderr.toString()}`);
  return done.stdout;
}

function encode(wav: Uint8Array, format: Format, isLoop: boolean): Uint8Array {
  const codec =
    format === 'webm'
      ? [
          '-c:a',
          'libopus',
          '-b:a',
          isLoop ? '48k' : '64k',
          '-vbr',
          'on',
          '-application',
          'audio',
          '-f',
          'webm',
        ]
      : ['-c:a', 'libmp3lame', '-b:a', isLoop ? '48k' : '64k', '-id3v2_version', '0', '-f', 'mp3'];
  const exact = ['-map_metadata', '-1', '-fflags', '+bitexact', '-flags:a', '+bitexact'];
  return run(
    ['-f', 'wav', '-i', 'pipe:0', '-ac', '1', ...codec.slice(0, -2), ...exact, ...codec.slice(-2), 'pipe:1'],
    wav,
  );
}

function decode(file: Uint8Array): Float64Array {
  return samplesOfPcm(
    run(['-i', 'pipe:0', '-f', 's16le', '-ac', '1', '-ar', `${SAMPLE_RATE_HZ}`, 'pipe:1'], file),
  );
}

/** The period, begun `turnS` later, with some of itself before and after. */
function withLead(period: Float64Array, turnS: number): Float64Array {
  const lead = samplesOf(LOOP_LEAD_MS / 1000);
  const from = samplesOf(turnS) + period.length - lead;
  return new Float64Array(period.length + 2 * lead).map((_, i) => period[(from + i) % period.length] ?? 0);
}

/**
 * Step or kink over the seam of a decoded file, whichever is worse, as a multiple of what the loop does anyway. Looked
 * at in three places, because browsers cut a different handful of samples from the beginning.
 */
function decodedSeamRatio(file: Uint8Array, periodLength: number): number {
  const lead = samplesOf(LOOP_LEAD_MS / 1000);
  const decoded = decode(file);
  const ratios = [-DECODER_SLACK, 0, DECODER_SLACK].map((slack) => {
    const seam = seamOf(decoded.slice(lead + slack, lead + slack + periodLength));
    return Math.max(seam.jump / seam.typicalStep, seam.kink / seam.typicalKink);
  });
  return Math.max(...ratios);
}

/**
 * Encoding is not the same twice round a circle, so a seam that was perfect may step a little. Where on the circle a
 * loop begins is free: take the first beginning whose encoded seam is an ordinary step, else the best of all.
 */
function bestBeginning(period: Float64Array): { readonly turned: Float64Array; readonly ratio: number } {
  let best = { turned: withLead(period, 0), ratio: Number.POSITIVE_INFINITY };
  for (let turn = 0; turn < BEGINNINGS && best.ratio > ORDINARY_SEAM_RATIO; turn++) {
    const turned = withLead(period, (turn * period.length) / SAMPLE_RATE_HZ / BEGINNINGS);
    const ratio = decodedSeamRatio(encode(wavOf(turned), 'webm', true), period.length);
    if (ratio < best.ratio) best = { turned, ratio };
  }
  if (best.ratio > MOST_SEAM_RATIO)
    throw new Error(`the seam is heard: ${best.ratio.toFixed(2)} ordinary steps`);
  return best;
}

function describe(name: SoundName, samples: Float64Array, notes: readonly string[]): void {
  const numbers = [peakOf(samples), rmsOf(samples), loudestRmsOf(samples)].map((v) =>
    decibels(v).toFixed(1).padStart(6),
  );
  console.log(
    `${name.padEnd(17)} ${numbers.join(' ')} ${offsetOf(samples).toExponential(1).padStart(8)}  ${notes.join('  ')}`,
  );
}

const here = fileURLToPath(new URL('.', import.meta.url));
const wavFlag = process.argv.indexOf('--wav');
const wavFolder = wavFlag > 0 ? process.argv[wavFlag + 1] : undefined;
if (wavFolder !== undefined) mkdirSync(wavFolder, { recursive: true });
let totalBytes = 0;

function write(name: SoundName, samples: Float64Array, isLoop: boolean): void {
  const beginning = isLoop ? bestBeginning(samples) : undefined;
  const wav = wavOf(beginning?.turned ?? samples);
  if (wavFolder !== undefined) writeFileSync(join(wavFolder, `${name}.wav`), wav);
  const notes = beginning === undefined ? [] : [`seam ${beginning.ratio.toFixed(2)}`];
  for (const format of ['webm', 'mp3'] as const) {
    const file = encode(wav, format, isLoop);
    writeFileSync(join(here, `${name}.${format}`), file);
    totalBytes += file.length;
    notes.push(`${format} ${(file.length / 1024).toFixed(1)} KB`);
  }
  describe(name, samples, notes);
}

console.log('sound               peak    rms   50ms   offset');
for (const name of LOOP_NAMES) write(name, renderLoop(name), true);
for (const name of SHOT_NAMES) write(name, renderShot(name), false);
console.log(`together ${(totalBytes / 1024).toFixed(1)} KB`);
if (totalBytes > MOST_BYTES) throw new Error('the sounds weigh too much');
