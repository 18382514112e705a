/** What does not simply count: damaged pieces, rides set apart, contradictions, rides taken back. All named. */
import type { JSX } from 'preact';
import { countsAsItCame } from '../../core/group/records/apart.ts';
import { sortOut } from '../../core/group/records/merge.ts';
import { RULES_VERSION } from '../../core/coach/rules.ts';
import type { RideRecord } from '../../core/group/records/record.ts';
import type { DamagedPiece } from '../../core/group/records/recordFile.ts';
import type { Remark } from '../../core/group/records/remark.ts';
import type { Format } from '../../words/format.ts';
import { words } from '../../words/words.ts';
import type { Collected } from './services.ts';
import { tabletName } from './message.ts';

const say = words('handover');

/** Longer lists are cut; the count stands above them. */
const MOST_LINES = 100;

/** Everything that was set apart. */
export function SetApart(props: {
  readonly collected: Collected;
  readonly format: Format;
  readonly nameOf: (nickname: string) => string;
}): JSX.Element | null {
  const { collected, format, nameOf } = props;
  const { damaged, conflicts, withdrawn } = sortOut(collected.set);
  const apart = collected.remarks.filter(isApart);
  const same = collected.remarks.filter((remark) => remark.kind === 'same').length;
  const otherVersion = collected.set.records.filter(({ version }) => version !== RULES_VERSION).length;
  const unknownLevel = collected.remarks.filter(
    (remark) => remark.kind === 'apart' && remark.code === 'unknown-level',
  ).length;
  const marksOnly = collected.set.records.filter((record) => record.recording === null).length;
  return (
    <>
      {collected.set.records.length > 0 && (
        <section class="paper">
          {same > 0 && <p data-checked={same}>{say('checked', { rides: same })}</p>}
          {collected.toCheck > 0 && <output>{say('checking', { rides: collected.toCheck })}</output>}
          {otherVersion > 0 && (
            <p data-other-version={otherVersion}>{say('otherVersion', { rides: otherVersion })}</p>
          )}
          {unknownLevel > 0 && <p data-unknown-level>{say('unknownLevel', { rides: unknownLevel })}</p>}
          {marksOnly > 0 && <p>{say('marksOnly', { rides: marksOnly })}</p>}
          {withdrawn.length > 0 && <p>{say('withdrawn', { rides: withdrawn.length })}</p>}
        </section>
      )}
      {damaged.length > 0 && (
        <List title={say('damaged-title', { count: damaged.length })} hint={say('damaged-hint')}>
          {damaged.slice(0, MOST_LINES).map((piece) => (
            <li key={`${piece.fingerprint} ${piece.code}`} data-damaged={piece.code}>
              <bdi>{nameOfPiece(piece)}</bdi>: {say(`piece-${piece.code}`)}
            </li>
          ))}
        </List>
      )}
      {apart.length > 0 && (
        <List title={say('apart-title', { count: apart.length })} hint={say('apart-hint')}>
          {apart.slice(0, MOST_LINES).map(({ record, code, total }) => (
            <li key={`${record.id} ${record.checksum}`} data-apart={code}>
              <bdi>{nameOfRide(record, nameOf)}</bdi>: {say(`apart-${code}`)}
              {total !== null &&
                ` (${say('apart-totals', { said: format.number(record.total, 1), found: format.number(total, 1) })})`}
            </li>
          ))}
        </List>
      )}
      {conflicts.length > 0 && (
        <List title={say('conflict-title', { count: conflicts.length })} hint="">
          {conflicts.slice(0, MOST_LINES).map(({ code, records }, i) => (
            <li key={i} data-conflict={code}>
              {records.slice(0, 2).map((record) => (
                <bdi key={record.checksum}>{nameOfRide(record, nameOf)}. </bdi>
              ))}
              {say(`conflict-${code}`)}
            </li>
          ))}
        </List>
      )}
    </>
  );
}

function List(props: {
  readonly title: string;
  readonly hint: string;
  readonly children: readonly JSX.Element[];
}): JSX.Element {
  return (
    <section class="paper apart">
      <h2>{props.title}</h2>
      {props.hint !== '' && <p>{props.hint}</p>}
      <ul>{props.children}</ul>
    </section>
  );
}

function isApart(remark: Remark): remark is Extract<Remark, { readonly kind: 'apart' }> {
  return remark.kind === 'apart' && !countsAsItCame(remark.code);
}

function nameOfPiece({ deviceId, seq }: DamagedPiece): string {
  const from = deviceId === null ? 'nobody' : 'tablet';
  return say('damaged-piece', { from, tablet: tabletName(deviceId ?? ''), seq: seq ?? 0 });
}

function nameOfRide({ deviceId, seq, nickname }: RideRecord, nameOf: (nickname: string) => string): string {
  return say('apart-ride', { tablet: tabletName(deviceId), seq, name: nameOf(nickname) });
}
