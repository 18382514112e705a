/**
 * Cues in the voice of the device, for children who do not read yet and wish it. Only voices that live on the device
 * speak: others would send the words to somebody. Where none of them speaks the language of the words, there is silence.
 */
import { spokenLanguage } from '../../words/words.ts';

/** Some devices write `de_DE`. */
const speaks = (tag: string, language: string): boolean =>
  tag.toLowerCase().split(/[-_]/)[0] === language.toLowerCase().split('-')[0];

/** A voice, or silence where the device has none of its own. */
export function createVoice(device: SpeechSynthesis | undefined = globalThis.speechSynthesis) {
  return {
    /** Says a sentence in a language (BCP 47), else in that of the page; what is being said is broken off. */
    say(text: string, language: string = spokenLanguage()): void {
      const voice = device
        ?.getVoices()
        .find(({ localService, lang }) => localService && speaks(lang, language));
      if (device === undefined || voice === undefined) return;
      const utterance = new SpeechSynthesisUtterance(text);
      utterance.voice = voice;
      utterance.lang = voice.lang;
      utterance.rate = 0.95;
      device.cancel();
      device.speak(utterance);
    },
    stop: (): void => device?.cancel(),
  };
}
