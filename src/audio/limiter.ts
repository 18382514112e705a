/**
 * The last thing before the loudspeaker: a limiter, so that many sounds at once do not clip. Only where
 * Web Audio is there; elsewhere the sounds' own levels have to do.
 */
import { Howler } from 'howler';

/** Everything is turned down this much, so that click and road together have room. */
const MASTER_GAIN = 0.8;
const THRESHOLD_DB = -4;
const RATIO = 20;
/**
 * A compressor node turns everything up by 0.6 of what it would take from full scale (its standard says so);
 * this takes it back: 0.6 · 4 dB · (1 − 1/20) = 2.28 dB.
 */
const MAKEUP_UNDONE = 0.769;

let limited: AudioContext | null = null;

/** Puts the limiter between the master volume and the loudspeaker, once for each audio context. */
export function limitMaster(): void {
  const context = Howler.ctx as AudioContext | null;
  if (!Howler.usingWebAudio || context === null || context === limited) return;
  const limiter = new DynamicsCompressorNode(context, {
    threshold: THRESHOLD_DB,
    knee: 0,
    ratio: RATIO,
    attack: 0.001,
    release: 0.12,
  });
  const level = new GainNode(context, { gain: MASTER_GAIN * MAKEUP_UNDONE });
  Howler.masterGain.disconnect();
  Howler.masterGain.connect(limiter).connect(level).connect(context.destination);
  limited = context;
}
