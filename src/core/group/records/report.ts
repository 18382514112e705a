/**
 * A session as a table for a spreadsheet or another program: one row per ride. What stands in each column is told in
 * the guide of the command line (`src/cli/GUIDE.md`), which a test compares with the list below. Cells are quoted as
 * RFC 4180 says, and one that a spreadsheet would take for a formula gets an apostrophe in front.
 */
import { TICKS_PER_S } from '../../ride/clock.ts';
import { readNickname } from '../nicknames.ts';
import type { RideRecord } from './record.ts';

interface ReportColumn {
  readonly name: string;
  readonly cell: (record: RideRecord) => string | number | null;
}

export const REPORT_COLUMNS: readonly ReportColumn[] = [
  { name: 'planId', cell: (r) => r.planId },
  { name: 'deviceId', cell: (r) => r.deviceId },
  { name: 'seq', cell: (r) => r.seq },
  { name: 'recordId', cell: (r) => r.id },
  { name: 'nickname', cell: nicknameShown },
  { name: 'ride', cell: (r) => r.rideIndex + 1 },
  { name: 'attempt', cell: (r) => r.attempt },
  { name: 'levelId', cell: (r) => r.levelId },
  { name: 'levelHash', cell: (r) => r.levelHash },
  { name: 'seed', cell: (r) => r.seed },
  { name: 'bikeId', cell: (r) => r.bikeId },
  { name: 'riderId', cell: (r) => r.riderId },
  { name: 'total', cell: (r) => r.total },
  { name: 'cadence', cell: (r) => r.marks.cadence },
  { name: 'foresight', cell: (r) => r.marks.foresight },
  { name: 'easing', cell: (r) => r.marks.easing },
  { name: 'chainLine', cell: (r) => r.marks.chainLine },
  { name: 'economy', cell: (r) => r.marks.economy },
  { name: 'timeS', cell: (r) => Math.round((r.ticks / TICKS_PER_S) * 10) / 10 },
  {
    name: 'pitchCreditsPercent',
    cell: (r) => r.pitches.map((pitch) => pitch.creditPercent ?? '–').join(' '),
  },
  { name: 'tooEarly', cell: (r) => countOf(r, 'too-early') },
  { name: 'aboutRight', cell: (r) => countOf(r, 'about-right') },
  { name: 'tooLate', cell: (r) => countOf(r, 'too-late') },
  {
    name: 'firstShiftsBeforeFootM',
    cell: (r) => r.pitches.map((pitch) => pitch.firstShiftBeforeFootM ?? '–').join(' '),
  },
  { name: 'version', cell: (r) => r.version },
  { name: 'hasRecording', cell: (r) => (r.recording === null ? 0 : 1) },
];

/** The table as text: a head row, then one row per ride, each ending in CR LF. */
export function csvReport(records: readonly RideRecord[]): string {
  const head = REPORT_COLUMNS.map((column) => csvCell(column.name));
  const rows = records.map((record) => REPORT_COLUMNS.map((column) => csvCell(column.cell(record))));
  return [head, ...rows].map((row) => `${row.join(',')}\r\n`).join('');
}

/** The table as plain data: one object per ride, keyed by column. */
export function jsonReport(
  records: readonly RideRecord[],
): Readonly<Record<string, string | number | null>>[] {
  return records.map((record) =>
    Object.fromEntries(REPORT_COLUMNS.map((column) => [column.name, column.cell(record)])),
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
