/** Records are written once and checked at the door: damage of any kind is named, and nothing else is changed. */
import { describe, expect, it } from 'vitest';
import { makeRecord, type RideRecord, sealRecord } from '../../../src/core/group/records/record.ts';
import { parseRecord, parseRecordText } from '../../../src/core/group/records/recordFile.ts';
import { cleanText, isCleanText } from '../../../src/core/group/texts.ts';
import { bundledRemarker, madeUpRecord, marksOnly, realRecord, recordingOf, VERSION } from './rides.ts';
import { levelById } from '../ride/worlds.ts';

const real = realRecord({ deviceId: 'tablet-1', seq: 1, nickname: 'red-fox', attempt: 1 }, 0.4);
const made = madeUpRecord({ deviceId: 'tablet-1', seq: 7 });
const codeOf = (value: unknown): string | undefined => parseRecord(value).damaged?.code;
const resealed = (changes: object): unknown => sealRecord({ ...made, ...changes });

describe('records', () => {
  it('a real one and a made-up one come back from JSON the same', () => {
    for (const record of [real, made, marksOnly(real)])
      expect(parseRecordText(JSON.stringify(record))).toEqual({ record, damaged: null });
  });

  it('a record without its recording is still the same record', () => {
    expect(sealRecord(marksOnly(real)).checksum).toBe(real.checksum);
    expect(real.recordingHash).toMatch(/^[0-9a-f]{16}$/);
  });

  it('holds the marks of the ride to a tenth', () => {
    const report = bundledRemarker().mark(levelById('one-pitch-announced'), real.recording as never);
    expect(Math.abs((report?.total ?? -1) - real.total)).toBeLessThanOrEqual(0.05);
    expect(real.pitches).toHaveLength(report?.pitches.length ?? -1);
  });

  it('texts are cleaned and cut when it is made', () => {
    const level = levelById('one-pitch-announced');
    const recording = recordingOf(level, 0.9, 1);
    const report = bundledRemarker().mark(level, recording);
    const odd = { ...recording, bike: { ...recording.bike, id: `my\u202E\u0000 bike${'x'.repeat(10_000)}` } };
    const record = makeRecord({
      id: 'a.1',
      planId: 'tuesday',
      deviceId: 'a',
      seq: 1,
      nickname: 'red-fox',
      attempt: 1,
      rideIndex: 0,
      version: `${VERSION}\u2066${'y'.repeat(1000)}`,
      recording: odd,
      report: report as never,
    });
    expect(record.bikeId).toBe(`my bike${'x'.repeat(53)}`);
    expect(record.version).toHaveLength(40);
    expect(parseRecord(marksOnly(record)).damaged).toBeNull();
  });

  it('every changed part is noticed, whatever it is', () => {
    for (const key of Object.keys(made) as (keyof RideRecord)[]) {
      if (key === 'recording') continue;
      const value = made[key];
      const other = typeof value === 'number' ? value + 1 : typeof value === 'string' ? `${value}0` : [];
      expect([key, parseRecord({ ...made, [key]: other }).record]).toEqual([key, null]);
    }
  });

  it('a flipped bit anywhere in the text is noticed, or changes nothing', () => {
    const text = JSON.stringify(made);
    for (let i = 0; i < text.length; i += 1) {
      const flipped = text.slice(0, i) + String.fromCharCode(text.charCodeAt(i) ^ 1) + text.slice(i + 1);
      const { record, damaged } = parseRecordText(flipped);
      if (damaged === null) expect(record).toEqual(made);
      else expect(record).toBeNull();
    }
  });

  it('a text cut off anywhere is noticed and mostly still has a name', () => {
    const text = JSON.stringify(made);
    let namedPieces = 0;
    for (let length = 0; length < text.length; length += 1) {
      const { record, damaged } = parseRecordText(text.slice(0, length));
      expect([record, damaged?.code]).toEqual([null, 'not-json']);
      if (damaged?.recordId === made.id && damaged.seq === made.seq) namedPieces += 1;
    }
    expect(namedPieces).toBeGreaterThan(text.length / 2);
  });

  it('a spoilt recording costs the recording and not the marks', () => {
    const spoilt = { ...real, recording: { ...real.recording, ticks: 3 } };
    const { record, damaged } = parseRecord(spoilt);
    expect(record).toEqual(marksOnly(real));
    expect(damaged).toMatchObject({ code: 'recording', recordId: real.id, deviceId: 'tablet-1', seq: 1 });
  });

  it.each([
    ['nothing', null, 'not-a-record'],
    ['a list', [], 'not-a-record'],
    ['a text', 'x', 'not-a-record'],
    ['a newer format', { ...made, schema: 2 }, 'newer-version'],
    ['a huge number', resealed({ total: 1e300 }), 'not-a-record'],
    ['no number', resealed({ total: Number.NaN }), 'not-a-record'],
    ['a number that is not rounded', resealed({ total: 50.123 }), 'not-a-record'],
    ['a number below zero', resealed({ seq: -1 }), 'not-a-record'],
    ['a nickname that is none', resealed({ nickname: 'Maria Muster' }), 'dirty-text'],
    ['a nickname that turns reading round', resealed({ nickname: '~a\u202Eb' }), 'dirty-text'],
    ['a control character', resealed({ bikeId: 'a\u0007' }), 'dirty-text'],
    ['a text of 10,000 characters', resealed({ version: 'x'.repeat(10_000) }), 'not-a-record'],
    ['markup as an id', resealed({ id: '<img src=x onerror=alert(1)>' }), 'not-a-record'],
    ['a part too many', resealed({ html: '<b>' }), 'not-a-record'],
  ])('%s is refused with a code', (_what, value, code) => {
    expect(codeOf(value)).toBe(code);
  });

  it('prototype keys and deep nesting are named, not followed', () => {
    const proto = JSON.stringify(made).replace('{', '{"__proto__":{"total":100},');
    expect(parseRecordText(proto).record).toBeNull();
    const deep = `${'['.repeat(50_000)}${']'.repeat(50_000)}`;
    for (const recording of [deep, `{"a":${deep}}`]) {
      const text = JSON.stringify(made).replace('"recording":null', `"recording":${recording}`);
      const { record, damaged } = parseRecordText(text);
      expect(record).toBeNull();
      expect(['not-json', 'not-a-record']).toContain(damaged?.code);
    }
    expect(({} as { total?: number }).total).toBeUndefined();
  });

  it('a line far too long is not even read', () => {
    expect(parseRecordText(`{"id":"a.1","x":"${'x'.repeat(9_000_000)}"}`).damaged).toMatchObject({
      code: 'too-long',
      recordId: 'a.1',
    });
  });
});

describe('clean texts', () => {
  it.each([
    ['a  b\t\nc', 'a b c'],
    ['\u202Eabc\u202C', 'abc'],
    ['\u200Fשלום', 'שלום'],
    ['a\u0000\u001b[31mb', 'a[31mb'],
    ['\ufeffx\u00ad', 'x'],
    ['e\u0301', 'e\u0301'],
  ])('%j', (text, clean) => {
    expect(cleanText(text, 40)).toBe(clean);
    expect(isCleanText(clean, 40)).toBe(true);
    if (text !== clean) expect(isCleanText(text, 40)).toBe(false);
  });

  it('cutting never splits a character or leaves a space at the end', () => {
    expect(cleanText('😀😀😀', 2)).toBe('😀😀');
    expect(cleanText('ab cd', 3)).toBe('ab');
  });
});
