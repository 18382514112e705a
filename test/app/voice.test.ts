/** The spoken ride takes a voice that lives on the device and speaks the language of the words, or is silent. */
import { afterEach, describe, expect, it, vi } from 'vitest';
import { createVoice } from '../../src/app/ride/voice.ts';
import { ENGLISH, speak } from '../../src/words/words.ts';

class Line {
  voice: SpeechSynthesisVoice | null = null;
  lang = '';
  rate = 1;
  readonly text: string;
  constructor(text: string) {
    this.text = text;
  }
}

/** A device with these voices, and what it says. */
function deviceWith(voices: readonly { readonly lang: string; readonly localService: boolean }[]) {
  const said: Line[] = [];
  const device = { getVoices: () => voices, cancel: () => undefined, speak: (line: Line) => said.push(line) };
  return { device: device as unknown as SpeechSynthesis, said };
}

const VOICES = [
  { lang: 'en-GB', localService: true },
  { lang: 'de-DE', localService: false },
  { lang: 'de_AT', localService: true },
];

describe('the voice of the device', () => {
  vi.stubGlobal('SpeechSynthesisUtterance', Line);
  afterEach(() => speak(ENGLISH));

  it.each([
    ['en', 'en-GB'],
    ['de', 'de_AT'],
  ])('speaks %s with its own voice', (language, lang) => {
    const { device, said } = deviceWith(VOICES);
    speak(language);
    createVoice(device).say('Hepp');
    expect(said.map((line) => [line.text, line.lang])).toEqual([['Hepp', lang]]);
  });

  it.each(['fr', 'e'])('is silent in %s, which no voice of the device speaks', (language) => {
    const { device, said } = deviceWith(VOICES);
    speak(language);
    createVoice(device).say('Hepp');
    expect(said).toEqual([]);
  });

  it('reads what somebody wrote in the language it was written in', () => {
    const { device, said } = deviceWith(VOICES);
    createVoice(device).say('Schau weit!', 'de');
    expect(said.map(({ lang }) => lang)).toEqual(['de_AT']);
  });
});
