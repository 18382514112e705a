/**
 * Cues in the voice of the device, for children who do not read yet and wish it. Only voices that live on the device
 * speak: others would send the words to somebody.
 */
interface Voice {
  /** Says a sentence; what is being said is broken off. */
  say(text: string): void;
  stop(): void;
}

const LANGUAGE = 'en';

/** A voice, or silence where the device has none of its own. */
export function createVoice(device: SpeechSynthesis | undefined = globalThis.speechSynthesis): Voice {
  return {
    say(text) {
      const voice = device
        ?.getVoices()
        .find(({ localService, lang }) => localService && lang.toLowerCase().startsWith(LANGUAGE));
      if (device === undefined || voice === undefined) return;
      const line = new SpeechSynthesisUtterance(text);
      line.voice = voice;
      line.lang = voice.lang;
      line.rate = 0.95;
      device.cancel();
      device.speak(line);
    },
    stop: () => device?.cancel(),
  };
}
