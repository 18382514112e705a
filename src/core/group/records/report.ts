/**
 * A session as a table for a spreadsheet or another program: one row per ride, documented columns. Cells are
 * quoted as RFC 4180 says, and one that a spreadsheet would take for a formula gets an apostrophe in front.
 */
import { readNickname } from '../nicknames.ts';
import type { RideRecord } from './record.ts';

/** One column of the table. */
export interface ReportColumn {
  readonly name: string;
  /** What stands in it; for people who open the file without the game. */
  readonly meaning: string;
  readonly cell: (record: RideRecord) => string | number | null;
}

/** The columns, in order. Empty cells mean that there was nothing to judge. */
export const REPORT_COLUMNS: readonly ReportColumn[] = [
  { name: 'planId', meaning: 'the plan of the session', cell: (r) => r.planId },
  { name: 'deviceId', meaning: 'the tablet that rode', cell: (r) => r.deviceId },
  { name: 'seq', meaning: 'number of the ride on that tablet, from 1', cell: (r) => r.seq },
  { name: 'recordId', meaning: 'name of this ride, unique', cell: (r) => r.id },
  { name: 'nickname', meaning: 'nickname of the rider on that tablet', cell: nicknameShown },
  { name: 'ride', meaning: 'which of the rides of the plan, from 1', cell: (r) => r.rideIndex + 1 },
  { name: 'attempt', meaning: 'which attempt on it, from 1', cell: (r) => r.attempt },
  { name: 'levelId', meaning: 'the level', cell: (r) => r.levelId },
  { name: 'levelHash', meaning: 'fingerprint of the level as ridden', cell: (r) => r.levelHash },
  { name: 'seed', meaning: 'seed of the road', cell: (r) => r.seed },
  { name: 'bikeId', meaning: 'the bike', cell: (r) => r.bikeId },
  { name: 'riderId', meaning: 'the rider by strength', cell: (r) => r.riderId },
  { name: 'total', meaning: 'total, 0 to 100', cell: (r) => r.total },
  { name: 'cadence', meaning: 'mark, 0 to 100', cell: (r) => r.marks.cadence },
  { name: 'foresight', meaning: 'mark, 0 to 100', cell: (r) => r.marks.foresight },
  { name: 'easing', meaning: 'mark, 0 to 100', cell: (r) => r.marks.easing },
  { name: 'chainLine', meaning: 'mark, 0 to 100', cell: (r) => r.marks.chainLine },
  { name: 'economy', meaning: 'mark, 0 to 100', cell: (r) => r.marks.economy },
  { name: 'timeS', meaning: 'time ridden in seconds', cell: (r) => Math.round((r.ticks / 120) * 10) / 10 },
  {
    name: 'pitchCreditsPercent',
    meaning:
      'credit of each pitch in percent, in riding order, separated by spaces; a dash where it asked nothing',
    cell: (r) => r.pitches.map((pitch) => pitch.creditPercent ?? '–').join(' '),
  },
  { name: 'tooEarly', meaning: 'pitches taken too early', cell: (r) => countOf(r, 'too-early') },
  { name: 'aboutRight', meaning: 'pitches taken about right', cell: (r) => countOf(r, 'about-right') },
  { name: 'tooLate', meaning: 'pitches taken too late', cell: (r) => countOf(r, 'too-late') },
  {
    name: 'firstShiftsBeforeFootM',
    meaning:
      'first easier shift of each pitch in metres before its foot, separated by spaces; a dash without one',
    cell: (r) => r.pitches.map((pitch) => pitch.firstShiftBeforeFootM ?? '–').join(' '),
  },
  { name: 'version', meaning: 'version of the game that rode', cell: (r) => r.version },
  {
    name: 'hasRecording',
    meaning: '1 if the ride itself was handed over',
    cell: (r) => (r.recording === null ? 0 : 1),
  },
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
