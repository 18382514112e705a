/**
 * `clinic`: puts together what tablets handed over, rides it again where recordings came along, and prints
 * the group's table or its picture. What could not be used is named, never dropped.
 */
import { groupPicture, type GroupPicture } from '../../core/group/picture/group.ts';
import { groupRideOf } from '../../core/group/picture/groupRide.ts';
import { type ApartCode, countsAsItCame } from '../../core/group/records/apart.ts';
import { mergeSets, sortOut } from '../../core/group/records/merge.ts';
import { deviceStatus, type Heard } from '../../core/group/records/missing.ts';
import { type ClinicPlan, parsePlanText } from '../../core/group/plan.ts';
import { createRemarker, type Remark } from '../../core/group/records/remark.ts';
import { csvReport, jsonReport } from '../../core/group/records/report.ts';
import type { Level } from '../../core/level/schema.ts';
import { needed } from '../common/args.ts';
import { BadInput } from '../common/badInput.ts';
import { firstOf, levelFromFile } from '../common/choose.ts';
import { bundledLevelFiles, readTextFile } from '../common/files.ts';
import { countedOrNo, fixed, table } from '../common/print.ts';
import { printedPicture } from '../common/printedPicture.ts';
import type { Verb } from '../common/verb.ts';
import { planLevel, readRides } from './clinicRides.ts';

type Gathered = ReturnType<typeof gather>;

export const clinic: Verb = {
  usage: '--plan FILE --rides FILE [FILE …] [--csv]',
  summary: 'puts the rides of a group together and reports on them',
  flags: { plan: 'text', rides: 'text', csv: 'switch' },
  takesFiles: true,
  run(args) {
    const levels = bundledLevelFiles().map(levelFromFile);
    const plan = readPlan(needed(args, 'plan', 'the file of a plan'), levels);
    const files = [needed(args, 'rides', 'a file of rides; more may follow'), ...args.files];
    const gathered = gather(plan, files, levels);
    const records = gathered.rides.map((ride) => ride.record);
    const picture = groupPicture(gathered.rides);
    const json = {
      planId: plan.id,
      rides: jsonReport(records),
      picture: printedPicture(picture, gathered.rides),
      apart: gathered.apart,
      damaged: gathered.sorted.damaged,
      conflicts: gathered.sorted.conflicts.map(({ code, records: several }) => ({
        code,
        recordIds: several.map((record) => record.id),
      })),
      withdrawn: gathered.sorted.withdrawn.map((record) => record.id),
      otherPlan: gathered.otherPlan.map((record) => record.id),
      devices: gathered.devices.map(({ deviceId, have, lastSeq, missing }) => ({
        deviceId,
        have,
        lastSeq,
        missing,
      })),
    };
    return {
      json,
      text: args.switches.has('csv') ? csvReport(records).trimEnd() : sentences(picture, gathered),
    };
  },
};

function readPlan(path: string, levels: readonly Level[]): ClinicPlan {
  const parsed = parsePlanText(readTextFile(path), new Set(levels.map((level) => level.id)));
  if (parsed.ok) return parsed.plan;
  throw new BadInput(`"${path}" is no plan that can be used${firstOf(parsed.problems)}`);
}

function gather(plan: ClinicPlan, paths: readonly string[], levels: readonly Level[]) {
  const remarker = createRemarker((record) => planLevel(plan, record.rideIndex, record.seed, levels));
  const read = readRides({ plan, levels, remarker }, paths);
  const set = mergeSets(...read.map((file) => file.set));
  if (set.records.length === 0 && set.damaged.length === 0)
    throw new BadInput(`There are no rides in ${paths.map((path) => `"${path}"`).join(', ')}.`);
  const heard: Heard[] = read.flatMap((file) => file.heard.map((item) => ({ ...item, atMs: 0 })));
  const sorted = sortOut(set);
  const remarks = sorted.rides
    .filter((record) => record.planId === plan.id)
    .map((record): Remark => remarker.remark(record));
  return {
    rides: remarks.flatMap((remark) => groupRideOf(remark) ?? []),
    apart: remarks.flatMap((remark) =>
      remark.kind === 'apart' ? [{ recordId: remark.record.id, code: remark.code, tick: remark.tick }] : [],
    ),
    sorted,
    devices: deviceStatus(set, heard),
    otherPlan: sorted.rides.filter((record) => record.planId !== plan.id),
  };
}

/** Why marks cannot be checked that are shown all the same, as it is said of a number of rides. */
const UNCHECKED = [
  ['other-version', 'of another version of the game'],
  ['unknown-level', 'on a level that is not here'],
] as const satisfies readonly (readonly [ApartCode, string])[];

/** Rides whose marks are shown as they came, in one sentence for each reason. */
function asTheyCame({ apart }: Gathered): string[] {
  return UNCHECKED.flatMap(([code, what]) => {
    const n = apart.filter((one) => one.code === code).length;
    if (n === 0) return [];
    return [`${countedOrNo(n, 'ride')} ${what}: the marks are shown as they came and cannot be checked.`];
  });
}

function sentences(picture: GroupPicture, gathered: Gathered): string {
  const rows = picture.roads.map((road) => [
    road.levelId,
    String(road.rides),
    String(road.riders),
    road.totals === null ? '' : fixed(road.totals.middle, 1),
    String(road.timing.tooEarly),
    String(road.timing.aboutRight),
    String(road.timing.tooLate),
    road.verdict.pitch === null ? '' : String(road.verdict.pitch + 1),
  ]);
  const head = [
    'level',
    'rides',
    'riders',
    'middle total',
    'too early',
    'about right',
    'too late',
    'worst pitch',
  ];
  const { attempts } = picture;
  const lines = [
    table(head, rows),
    `${countedOrNo(picture.rides, 'ride')} by ${countedOrNo(picture.riders, 'rider')}.`,
    ...(attempts.change === null
      ? []
      : [
          `From first to last attempt the middle change is ${fixed(attempts.change.middle, 1)} points: ${attempts.better} better, ${attempts.worse} worse, ${attempts.withinChance} within chance.`,
        ]),
    ...gathered.apart
      .filter(({ code }) => !countsAsItCame(code))
      .map(({ recordId, code }) => `Set apart: ${recordId} (${code}).`),
    ...asTheyCame(gathered),
    ...gathered.sorted.conflicts.map(
      ({ code, records }) => `Conflict (${code}): ${records.map((r) => r.id).join(', ')}.`,
    ),
    ...gathered.sorted.damaged.map(
      ({ code, recordId }) => `Damaged: ${recordId ?? 'a piece without a name'} (${code}).`,
    ),
    ...gathered.otherPlan.map((record) => `Of another plan: ${record.id}.`),
    ...gathered.devices
      .filter((device) => device.missingCount > 0)
      .map(
        (device) =>
          `Missing from ${device.deviceId}: ${device.missing.map(([a, b]) => (a === b ? a : `${a} to ${b}`)).join(', ')}.`,
      ),
  ];
  return lines.join('\n');
}
