/** No text for people stands outside the message files; the finder sees a planted one of every kind. */
import { describe, expect, it } from 'vitest';
import { carriedWords, ENGLISH } from '../../assets/words/carry.ts';
import { fill } from '../../src/words/fill.ts';
import { listFiles, readTexts } from '../house/files.ts';
import { spokenInLevel, spokenInSource, spokenInStyle } from './spoken.ts';

/** What looks like text for people and is none, or has to stand there, each with its reason. */
const EXCEPTIONS: Readonly<Record<string, { readonly texts: readonly string[]; readonly why: string }>> = {
  'src/app/device/trouble.ts': { texts: ["'ResizeObserver loop'"], why: 'what a browser says of itself' },
  'src/app/ride/views.ts': { texts: ["'Unable to preload'"], why: 'what the build says of itself' },
  'src/core/math/hash.ts': { texts: ["'null'"], why: 'JSON' },
  'src/core/level/generate.ts': {
    texts: [
      "'Check ride'",
      "'A road you have not seen, without help.'",
      "'Free ride'",
      "'Any road you like, as long and as hilly as you like.'",
    ],
    why: 'kept in recordings, whose hashes must not change; pages say the message of the id',
  },
};
/** The command line speaks English only. */
const isCommandLine = (path: string): boolean => path.startsWith('src/cli/');

const files = [...readTexts(listFiles().filter((path) => /^(src|levels)\//.test(path)))];
const carried = carriedWords(ENGLISH, 'ladder');
const entries = new Map(carried.map(([id, value, attributes = {}]) => [id, { value, attributes }]));
/** What the messages of levels say where speeds are in km/h, as in the files of the levels. */
const ladder: ReadonlySet<string> = new Set(
  carried.map(([, value]) => fill({ entries, locale: ENGLISH }, value, { speed: '25 km/h' })),
);

function spokenIn(path: string, text: string): readonly string[] {
  const found = /\.tsx?$/.test(path)
    ? spokenInSource(path, text)
    : path.endsWith('.css')
      ? spokenInStyle(text)
      : /^levels\/(?!level\.schema).*\.json$/.test(path)
        ? spokenInLevel(text, ladder)
        : [];
  return found
    .filter((one) => EXCEPTIONS[path]?.texts.includes(one.text) !== true)
    .map((one) => `${path}:${one.line} ${one.text}`);
}

describe('text for people', () => {
  it('stands in message files and nowhere else', () => {
    const looked = files.filter(([path]) => !isCommandLine(path));
    expect(looked.length).toBeGreaterThan(500);
    expect(looked.flatMap(([path, text]) => spokenIn(path, text))).toEqual([]);
  });

  it('has no exception that is not needed any more', () => {
    const texts = new Map(files);
    const needless = Object.entries(EXCEPTIONS).flatMap(([path, { texts: known }]) => {
      const there = spokenInSource(path, texts.get(path) ?? '').map(({ text }) => text);
      return known.filter((text) => !there.includes(text));
    });
    expect(needless).toEqual([]);
  });

  it.each([
    ['text of an element', 'const a = <p>again</p>;'],
    ['a choice within an element', "const a = <p>{on ? 'on' : say('off')}</p>;"],
    ['what stands behind a condition', "const a = <p>{open && 'opened'}</p>;"],
    ['a unit glued to a number', 'const a = <p>{`${n} km`}</p>;'],
    ['a unit beside a number', 'const a = <p>{n} km</p>;'],
    ['a title', 'const a = <i title="steep" />;'],
    ['a name read aloud', 'const a = <i aria-label={`${n} of ${m}`} />;'],
    ['a placeholder', 'const a = <input placeholder="name" />;'],
    ['a text instead of a picture', 'const a = <img alt="hill" />;'],
    ['a label of our own', "const a = <Tick label={'ring' + n} />;"],
    ['an attribute set by hand', "node.setAttribute('aria-label', 'road');"],
    ['a text set by hand', "node.textContent = 'wait';"],
    ['the title of the document', "document.title = 'Hill';"],
    ['text on a canvas', "context.fillText('foot', x, y);"],
    ['text in the picture of a ride', "scene.add.text(x, y, 'GO');"],
    ['text that is changed there', 'sign.setText(`${n} left`);'],
    ['what is said aloud', "speak(new SpeechSynthesisUtterance('easier'));"],
    ['a question of the browser', "window.confirm('really?');"],
    ['the name of a file', "link.download = 'ride.json';"],
    ['a sentence in a constant', "const WORDS = { late: 'You shifted late.' };"],
    ['a label in a constant', "const NAMES = { again: 'Ride it again' };"],
    ['a word in a constant', "const WAIT = 'wait';\nconst a = <p>{WAIT}</p>;"],
    ['a word in a list', "const NAMES = { a: 'hill' } as const;\nconst a = <p>{NAMES[kind]}</p>;"],
    [
      'what a function gives back',
      "const word = (n: number) => (n > 1 ? say('more') : 'one');\nconst a = <p>{word(n)}</p>;",
    ],
    [
      'what a longer function gives back',
      "function word() { if (on) return 'on'; return ''; }\nnode.title = word();",
    ],
    ['markup set by hand', "node.innerHTML = '<b>wait</b>';"],
    ['text put beside something', "node.insertAdjacentText('afterend', WAIT);\nconst WAIT = `Wait`;"],
    ['a refusal of a field', "input.setCustomValidity('too long');"],
    ['the name of a file that is offered', "offerFile(blob, 'my-rides.json');"],
    ['half a sentence', 'const half = (n: number) => `${n} shifts`;'],
    ['a sentence with something filled in', 'const half = `The road is ${n} long.`;'],
  ])('is seen as %s', (_, source) => {
    expect(spokenInSource('src/features/a/b.tsx', source)).toHaveLength(1);
  });

  it.each([
    ["throw new Error('a machine has at least one gear');"],
    ["console.warn('The store did not answer.');"],
    ["const a = <p class={`paper ${kind} drop-place`}>{say('again')}</p>;"],
    ["const a = <p data-kind={kind === 'late' ? 'late' : 'early'}>–</p>;"],
    ["const a = { title: 'first-hour' };"],
    ["import { a } from '../level/parse.ts';"],
    ["const a = <p>{kind === 'late' && say('late')}</p>;"],
    ["const NAMES = { late: 'late-shift' };\nconst a = <p data-kind={NAMES.late}>{say(NAMES.late)}</p>;"],
    ['offerFile(blob, `${level.id}.level.json`);'],
  ])('is not seen in %s', (source) => {
    expect(spokenInSource('src/features/a/b.tsx', source)).toEqual([]);
  });

  it('is seen in styles', () => {
    const found = spokenInStyle(
      '.a::before { content: "▼ "; }\n/* content: "no" */\n.b::after {\n  content: "new";\n}',
    );
    expect(found).toEqual([{ line: 4, text: 'new' }]);
    expect(spokenInStyle('.a { content: attr(data-label); } .b { content: "\\25bc "; }')).toEqual([]);
    for (const style of [
      '.a { --word: "new"; } .a::after { content: var(--word); }',
      ".a { list-style-type: 'new'; }",
      '.a::after { content: url("data:image/svg+xml,%3Csvg%3E%3Ctext y=\'9\'%3Enew%3C/text%3E%3C/svg%3E"); }',
      '@counter-style a { suffix: "new"; }',
    ])
      expect(spokenInStyle(style)).toEqual([{ line: 1, text: 'new' }]);
    expect(
      spokenInStyle(':root { --font: "Segoe UI"; --grain: url("data:image/svg+xml,%3Cg id=\'it\'/%3E"); }'),
    ).toEqual([]);
  });

  it('is seen in a bundled level that has no message', () => {
    const level = '{\n"id": "a",\n"title": "Down to the sea",\n"sentence": "Nobody translated me."\n}';
    expect(spokenInLevel(level, ladder)).toEqual([{ line: 4, text: 'Nobody translated me.' }]);
  });
});
