/**
 * What is said to somebody who rides: a cue of the road and a remark about what happened. Both are shown; a cue is spoken
 * to children who wish it, a remark is told to those who ride by ear. The same is said once.
 */
import type { Level } from '../../core/level/schema.ts';
import type { Settings } from '../../core/settings/settings.ts';
import type { SpokenGuidance } from './guidance.ts';
import type { RideViews } from './views.ts';
import { createVoice } from './voice.ts';

interface SpeechOptions {
  readonly level: Level;
  readonly settings: () => Settings;
  readonly views: () => Pick<RideViews, 'say'> | null;
  readonly ear: () => SpokenGuidance | null;
  /** Whether a hint tells the hands what to do in this moment. */
  readonly handsTold: () => boolean;
}

export function createSaid({ level, settings, views, ear, handsTold }: SpeechOptions) {
  const voice = createVoice();
  let cueBefore: string | null = null;
  let remarkBefore: string | null = null;
  const isSpokenTo = (): boolean => {
    const { childVoice, byEar, muted } = settings();
    return level.audience === 'children' && childVoice && !byEar && !muted;
  };
  return {
    /** Says these from now on, null for nothing; `isQuiet` while something else is asked of the rider. */
    say(cue: string | null, remark: string | null, isQuiet: boolean): void {
      // Remarks somebody wrote are in the language of their level.
      const isOwnText = level.cues.some((one) => 'text' in one && one.text === cue);
      const lang = isOwnText ? level.lang : undefined;
      if (!isQuiet && remark !== null && remark !== remarkBefore) ear()?.mention(remark);
      // What somebody wrote for a place knows nothing of the legs; the hint does, and may say the opposite.
      const shown = isOwnText && handsTold() ? null : cue;
      if (!isQuiet && shown !== null && cue !== cueBefore && isSpokenTo()) voice.say(shown, lang);
      remarkBefore = remark;
      cueBefore = cue;
      if (isQuiet) views()?.say(null, null, lang);
      else views()?.say(shown, remark, lang);
    },
    stop: (): void => voice.stop(),
  };
}
