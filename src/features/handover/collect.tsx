/**
 * The coach's page to collect results: the reader, what has come from which tablet, what is missing by number and
 * since when, and everything that was set apart, with its reason.
 */
import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { sortOut } from '../../core/group/records/merge.ts';
import { type DeviceStatus, deviceStatus } from '../../core/group/records/missing.ts';
import type { ClinicPlan } from '../../core/group/plan.ts';
import type { ReadFile } from '../../core/transfer/rideFile.ts';
import { TableHead } from '../../ui/tables.tsx';
import type { Format } from '../../words/format.ts';
import { Sheet } from '../../ui/parts.tsx';
import { common } from '../../words/common.ts';
import { words } from '../../words/words.ts';
import { SetApart } from './setApart.tsx';
import type { Collected, ReadRidesAway } from './services.ts';
import { Reader } from './reader.tsx';
import { tabletName } from './message.ts';
import './handover.css';
import './tablets.css';

const say = words('handover');
const clinic = words('clinic');

const COLUMNS = ['tablet', 'here', 'missing', 'since', 'heard'] as const;
/** Of more missing stretches only the first are named; the count stands behind them. */
const MOST_RANGES = 12;

interface CollectProps {
  readonly plan: ClinicPlan;
  readonly collected: Collected;
  /** What stood in the link behind `#collect/`, or empty. */
  readonly arrived: string;
  /** Nickname of a record, in words. */
  readonly nameOf: (nickname: string) => string;
  readonly format: Format;
  readonly readRides: ReadRidesAway;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  /** Takes in what was read; false where it could not be kept on this device. */
  readonly onTake: (read: ReadFile) => Promise<boolean>;
  /** What goes to a club's own store. */
  readonly store: JSX.Element | null;
}

export function Collect(props: CollectProps): JSX.Element {
  const { plan, collected } = props;
  const [notKept, setNotKept] = useState(false);
  // Rides of this reading may not have come back through `collected` yet when the next ones are counted.
  const seen = useRef(new Set<string>());
  for (const { id, checksum } of collected.set.records) seen.current.add(`${id} ${checksum}`);
  // Said only once it is kept: whoever closes the page then has lost nothing.
  const take = async (read: ReadFile): Promise<string> => {
    const ours = onlyOf(read, plan.id);
    const fresh = ours.set.records.filter(({ id, checksum }) => !seen.current.has(`${id} ${checksum}`));
    for (const { id, checksum } of fresh) seen.current.add(`${id} ${checksum}`);
    const kept = await props.onTake(ours).catch(() => false);
    setNotKept(!kept);
    const others = read.set.records.length - ours.set.records.length;
    return [
      say('took', { fresh: fresh.length, known: ours.set.records.length - fresh.length }),
      ours.set.damaged.length > 0 ? say('took-damaged', { pieces: ours.set.damaged.length }) : '',
      others > 0 ? say('took-otherPlan', { rides: others }) : '',
    ]
      .filter((sentence) => sentence !== '')
      .join(' ');
  };
  return (
    <Sheet title={clinic('tablets-collect-title')} intro={say('collect-intro')}>
      <div class="handover handover-wide">
        <Reader
          arrived={props.arrived}
          readRides={props.readRides}
          onArrival={(arrival) =>
            arrival.kind === 'rides' ? take(arrival.read) : say('reader-isPlan', { page: common('nav-join') })
          }
        />
        {notKept && <p class="paper reader-problem">{say('collect-notKept')}</p>}
        <section class="paper">
          <h2>{say('collect-tablets')}</h2>
          <Tablets {...props} />
          {props.store}
        </section>
        <SetApart collected={collected} format={props.format} nameOf={props.nameOf} />
      </div>
    </Sheet>
  );
}

/** Rides of another plan would spoil the count of this one; they stay where they came from. */
function onlyOf(read: ReadFile, planId: string): ReadFile {
  const records = read.set.records.filter((one) => one.planId === planId);
  const ours = new Set(records.map(({ deviceId }) => deviceId));
  // A tablet that has only rides of another plan has no part in this count.
  const others = new Set(read.set.records.map(({ deviceId }) => deviceId));
  const heard = read.heard.filter(({ deviceId }) => ours.has(deviceId) || !others.has(deviceId));
  return { ...read, heard, set: { ...read.set, records } };
}

function Tablets({ collected, now }: CollectProps): JSX.Element {
  const devices = deviceStatus(collected.set, collected.heard);
  const rides = sortOut(collected.set).rides.length;
  if (devices.length === 0) return <p>{say('collect-nobody')}</p>;
  return (
    <div class="tablets-scroll">
      <table class="tablets" data-rides={rides}>
        <caption class="unseen">{say('collect-tablets')}</caption>
        <TableHead names={COLUMNS.map((column) => say(`column-${column}`))} />
        <tbody>
          {devices.map((device) => (
            <Tablet key={device.deviceId} {...{ device, now }} />
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Tablet(props: { readonly device: DeviceStatus; readonly now: () => number }): JSX.Element {
  const { device, now } = props;
  const minutes = (atMs: number): string => ago(Math.floor((now() - atMs) / 60_000));
  const { missing, missingCount, missingSinceMs, lastHeardMs } = device;
  return (
    <tr data-tablet={device.deviceId}>
      <th scope="row">
        <bdi>{tabletName(device.deviceId)}</bdi>
      </th>
      <td data-label={say('column-here')}>{device.have}</td>
      <td data-label={say('column-missing')} data-missing={missingCount}>
        {missingCount === 0
          ? say('missing-nothing')
          : say('missing-rides', { count: missingCount, numbers: numbersOf(missing) })}
      </td>
      <td data-label={say('column-since')}>
        {missingCount === 0 ? '–' : missingSinceMs === null ? say('ago-neverSaid') : minutes(missingSinceMs)}
      </td>
      <td data-label={say('column-heard')}>
        {lastHeardMs === null ? say('ago-never') : minutes(lastHeardMs)}
      </td>
    </tr>
  );
}

/** How long ago something was. */
function ago(minutes: number): string {
  if (minutes < 1) return say('ago-now');
  return minutes < 120
    ? say('ago-minutes', { minutes })
    : say('ago-hours', { hours: Math.floor(minutes / 60) });
}

/** Numbers of rides, those in a row by their ends: "2, 5–7". */
function numbersOf(ranges: readonly (readonly [number, number])[]): string {
  const shown = ranges.slice(0, MOST_RANGES).map(([a, b]) => (a === b ? `${a}` : `${a}–${b}`));
  return `${shown.join(', ')}${ranges.length > MOST_RANGES ? ' …' : ''}`;
}
