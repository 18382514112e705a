/**
 * A session as a table for a spreadsheet or another program: one row per ride. What stands in each column is told in
 * the guide of the command line (`src/cli/GUIDE.md`), which a test compares with the list below. Cells are quoted as
 * RFC 4180 says, and one that a spreadsheet would take for a formula gets an apostrophe in front.
 */
import { TICKS_PER_S } from '../../ride/clock.ts';
import { readNickname } from '../nicknames.ts';
import type { RideRecord } from './record.ts';

/** The columns in order, and what stands in each. */
export const REPORT_COLUMNS: Readonly<Record<string, (record: RideRecord) => string | number | null>> = {
  planId: (r) => r.planId,
  deviceId: (r) => r.deviceId,
  seq: (r) => r.seq,
  recordId: (r) => r.id,
  nickname: nicknameShown,
  ride: (r) => r.rideIndex + 1,
  attempt: (r) => r.attempt,
  levelId: (r) => r.levelId,
  levelHash: (r) => r.levelHash,
  seed: (r) => r.seed,
  bikeId: (r) => r.bikeId,
  riderId: (r) => r.riderId,
  total: (r) => r.total,
  cadence: (r) => r.marks.cadence,
  foresight: (r) => r.marks.foresight,
  easing: (r) => r.marks.easing,
  chainLine: (r) => r.marks.chainLine,
  economy: (r) => r.marks.economy,
  timeS: (r) => Math.round((r.ticks / TICKS_PER_S) * 10) / 10,
  pitchCreditsPercent: (r) => r.pitches.map((pitch) => pitch.creditPercent ?? '–').join(' '),
  tooEarly: (r) => countOf(r, 'too-early'),
  aboutRight: (r) => countOf(r, 'about-right'),
  tooLate: (r) => countOf(r, 'too-late'),
  firstShiftsBeforeFootM: (r) => r.pitches.map((pitch) => pitch.firstShiftBeforeFootM ?? '–').join(' '),
  version: (r) => r.version,
  hasRecording: (r) => (r.recording === null ? 0 : 1),
};

/** The table as text: a head row, then one row per ride, each ending in CR LF. */
export function csvReport(records: readonly RideRecord[]): string {
  const head = Object.keys(REPORT_COLUMNS).map(csvCell);
  const rows = records.map((record) => Object.values(REPORT_COLUMNS).map((cell) => csvCell(cell(record))));
  return [head, ...rows].map((row) => `${row.join(',')}\r\n`).join('');
}

/** The table as plain data: one object per ride, keyed by column. */
export function jsonReport(
  records: readonly RideRecord[],
): Readonly<Record<string, string | number | null>>[] {
  return records.map((record) =>
    Object.fromEntries(Object.entries(REPORT_COLUMNS).map(([name, cell]) => [name, cell(record)])),
  );
}

/**
 * One cell. Texts that begin like a formula get an apostrophe in front; numbers are written as they are. A
 * text of several numbers that begins with a minus is a text like any other.
 */
export function csvCell(value: string | number | null): string {
  if (value === null) return '';
  if (typeof value === 'number') return String(value);
  const safe = /^[\s]*[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** A name of the rider's own choice without its mark. */
function nicknameShown(record: RideRecord): string {
  const name = readNickname(record.nickname);
  return name?.kind === 'own' ? name.text : record.nickname;
}

function countOf(record: RideRecord, timing: RideRecord['pitches'][number]['timing']): number {
  return record.pitches.filter((pitch) => pitch.creditPercent !== null && pitch.timing === timing).length;
}
