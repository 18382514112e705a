/**
 * The message files: the compiler knows what stands in them, every language says what English says, and a message is
 * filled in as the package of the Fluent project does it.
 */
import { readFileSync } from 'node:fs';
import { FluentBundle, FluentResource } from '@fluent/bundle';
import {
  FluentParser,
  Junk,
  Message,
  type MessageReference,
  NumberLiteral,
  type SelectExpression,
  Term,
  type VariableReference,
  Visitor,
} from '@fluent/syntax';
import { describe, expect, it } from 'vitest';
import { carriedWords, ENGLISH, languages, textOf, wordFiles } from '../../assets/words/carry.ts';
import { messageTypes } from '../../assets/words/types.ts';
import { FRESH_PIECES } from '../../src/features/bench/fresh.ts';
import { fill } from '../../src/words/fill.ts';
import { speak, take, words } from '../../src/words/words.ts';

/** Languages that have everything; of others what is missing is English. */
const WHOLE = ['de', 'en', 'es', 'fr', 'nl'];

/** What a message is filled with, by which names something in it is chosen, and which messages are a part of it. */
class Parts extends Visitor {
  readonly values = new Set<string>();
  readonly names = new Set<string>();
  readonly used = new Set<string>();
  override visitMessageReference({ id }: MessageReference): void {
    this.used.add(id.name);
  }
  override visitVariableReference({ id }: VariableReference): void {
    this.values.add(id.name);
  }
  override visitSelectExpression(node: SelectExpression): void {
    for (const { key } of node.variants) if (!(key instanceof NumberLiteral)) this.names.add(key.name);
    this.genericVisit(node);
  }
}

/** Messages of a file by name. Throws where something cannot be read, or stands twice. */
function messagesOf(language: string, file: string): ReadonlyMap<string, Parts> {
  const found = new Map<string, Parts>();
  for (const entry of new FluentParser().parse(textOf(language, file)).body) {
    if (entry instanceof Junk) throw new Error(`${language}/${file}.ftl: ${entry.content}`);
    if (!(entry instanceof Message || entry instanceof Term)) continue;
    const id = entry instanceof Term ? `-${entry.id.name}` : entry.id.name;
    if (found.has(id)) throw new Error(`${language}/${file}.ftl has ${id} twice`);
    const parts = new Parts();
    parts.visit(entry);
    found.set(id, parts);
  }
  // What is said within a message is filled with the same values.
  const gather = (parts: Parts): void => {
    for (const id of parts.used) {
      const inner = found.get(id);
      if (inner === undefined) throw new Error(`${language}/${file}.ftl has no ${id}`);
      gather(inner);
      for (const name of inner.values) parts.values.add(name);
      for (const name of inner.names) parts.names.add(name);
    }
  };
  for (const parts of found.values()) gather(parts);
  return found;
}

const others = languages().filter((language) => language !== ENGLISH);
const pairs = languages().flatMap((language) => wordFiles().map((file) => [language, file] as const));

describe('message files', () => {
  it('are known to the compiler: `npm run words` has been called', () => {
    expect(readFileSync(new URL('../../src/words/messages.ts', import.meta.url), 'utf8')).toBe(
      messageTypes(),
    );
  });

  it.each(pairs)('%s/%s.ftl says nothing that English does not, with no other values', (language, file) => {
    const english = messagesOf(ENGLISH, file);
    const own = messagesOf(language, file);
    const used = new Set([...own.values()].flatMap((parts) => [...parts.used]));
    const strange = [...own].filter(([id, { values }]) => {
      const known = english.get(id)?.values;
      // What only helps others to say something, like a colour for each gender, need not be in English.
      if (known === undefined) return !id.startsWith('-') && !used.has(id);
      return [...values].some((name) => !known.has(name));
    });
    expect(strange.map(([id]) => id)).toEqual([]);
  });

  it.each(WHOLE)('%s has every message', (language) => {
    const missing = wordFiles().flatMap((file) => {
      const own = messagesOf(language, file);
      return [...messagesOf(ENGLISH, file).keys()].filter((id) => !id.startsWith('-') && !own.has(id));
    });
    expect(missing).toEqual([]);
  });

  it('have as many lines in every language where each line is a sentence', () => {
    const lines = (language: string, file: string) =>
      new Map(
        carriedWords(language, file).map(
          ([id, value]) => [id, typeof value === 'string' ? value.split('\n').length : 0] as const,
        ),
      );
    const wrong = others.flatMap((language) =>
      wordFiles().flatMap((file) => {
        const english = lines(ENGLISH, file);
        return [...lines(language, file)].filter(([id, count]) => (english.get(id) ?? count) !== count);
      }),
    );
    expect(wrong).toEqual([]);
  });
});

/** Values that make every choice of a message come up: numbers, and the names something is chosen by. */
function trials({ values, names }: Parts): readonly Readonly<Record<string, string | number>>[] {
  const some = [0, 1, 2, 3, 5, 21, 1234.5, 'a b', ...names];
  return some.map((_, shift) =>
    Object.fromEntries([...values].map((name, i) => [name, some[(shift + i * 3) % some.length] ?? 0])),
  );
}

describe('a message', () => {
  it.each(pairs)('of %s/%s.ftl is filled in as by the package of the Fluent project', (language, file) => {
    const bundle = new FluentBundle(language, { useIsolating: false });
    bundle.addResource(new FluentResource(textOf(language, file)));
    const entries = new Map(
      carriedWords(language, file).map(([id, value, attributes = {}]) => [id, { value, attributes }]),
    );
    for (const [id, parts] of messagesOf(language, file)) {
      if (id.startsWith('-')) continue;
      for (const values of trials(parts)) {
        const theirs = bundle.formatPattern(bundle.getMessage(id)?.value ?? '', values, []);
        expect([id, fill({ entries, locale: language }, entries.get(id)?.value ?? '', values)]).toEqual([
          id,
          theirs,
        ]);
      }
    }
  });

  it('is filled in like that with everything Fluent has', () => {
    const text = `
-ring = { $case ->
    [dative] dem Kettenblatt
   *[nominative] das Kettenblatt
}
    .gender = neuter
place = { NUMBER($n, maximumFractionDigits: 0) ->
    [one] { $n } one
   *[other] { NUMBER($n, useGrouping: "false") } others
}
mit = Mit { -ring(case: "dative") } und { -ring }, { -ring.gender ->
    [neuter] es
   *[other] sie
}
exact = { $n ->
    [0] none
    [1.5] one and a half
    [one] one
   *[other] { NUMBER($n, minimumFractionDigits: 2) } { "{" }{ place }
}
`;
    const bundle = new FluentBundle('en', { useIsolating: false });
    const resource = new FluentResource(text);
    bundle.addResource(resource);
    const entries = new Map(
      (resource.body as unknown as { id: string; value: string; attributes: Record<string, string> }[]).map(
        ({ id, value, attributes }) => [id, { value, attributes }],
      ),
    );
    for (const id of ['place', 'mit', 'exact'])
      for (const n of [0, 1, 1.5, 2, 3, 4, 11, 21, 1e6])
        expect([id, n, fill({ entries, locale: 'en' }, entries.get(id)?.value ?? '', { n })]).toEqual([
          id,
          n,
          bundle.formatPattern(bundle.getMessage(id)?.value ?? '', { n }, []),
        ]);
  });

  it('keeps a name that runs the other way from turning the sentence around', () => {
    expect(words('ride')('title', { level: 'תל' })).toBe('Riding: \u2068תל\u2069');
    expect(words('ride')('title', { level: 'Hill' })).toBe('Riding: Hill');
  });

  it('is said in the language that is spoken now, and by its name where that has none', () => {
    const say = words('cautions');
    take('xx', 'cautions', [['accept', 'Los']]);
    speak('xx');
    const said = [say('accept'), say('more'), say.has('more')];
    speak(ENGLISH);
    expect(said).toEqual(['Los', 'cautions more', false]);
    expect(say.lines('short')).toHaveLength(4);
  });
});

describe('what is said of a piece of road nobody knows', () => {
  const kinds = [...Object.keys(FRESH_PIECES), 'recorded'];

  it.each(languages())('names every kind there is, in %s', (language) => {
    const said = new Map(
      carriedWords(language, 'problems').map(([id, value]) => [id, JSON.stringify(value)]),
    );
    const unnamed = ['level-missing-kind', 'level-unknown-kind'].flatMap((id) =>
      kinds.filter((kind) => said.get(id)?.includes(kind) !== true),
    );
    expect(unnamed).toEqual([]);
  });
});
