/** What is left of a session: one page for paper, files, and deleting it. Names are only on paper when wanted. */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { csvReport, jsonReport } from '../../core/group/records/report.ts';
import { Button, Tick } from '../../ui/controls.tsx';
import { Dialog } from '../../ui/parts.tsx';
import { ReportSheet } from './reportSheet.tsx';
import { ridesOf } from './session.ts';
import type { SavedRound } from '../../core/group/savedRound.ts';
import type { ClinicProps } from './services.ts';

/** The page. */
export function Report({
  props,
  session,
}: {
  readonly props: ClinicProps;
  readonly session: SavedRound;
}): JSX.Element {
  const { words, saved, apart, onSaveFile, onPrint, onDeleteSession, onPlace } = props;
  const [named, setNamed] = useState(false);
  const [asking, setAsking] = useState(false);
  const rides = ridesOf(session, saved.records, apart);
  const name = fileName(session.plan.title);
  const csv = (): void => onSaveFile(`${name}.csv`, csvReport(rides));
  const json = (): void => onSaveFile(`${name}.json`, `${JSON.stringify(jsonReport(rides), null, 1)}\n`);
  return (
    <div class="report-page">
      <section class="paper report-tools">
        <h2>{words.report.title}</h2>
        <p>{words.report.intro}</p>
        {apart.length > 0 && <p role="note">{words.picture.apart(apart.length)}</p>}
        <Tick label={words.report.names} checked={named} onChange={setNamed} />
        <p class="hint">{words.report.namesHint}</p>
        <div class="buttons">
          <Button strong data-print onClick={onPrint}>
            {words.report.print}
          </Button>
          <Button data-csv onClick={csv}>
            {words.report.csv}
          </Button>
          <Button data-json onClick={json}>
            {words.report.json}
          </Button>
          <Button data-delete onClick={() => setAsking(true)}>
            {words.report.remove}
          </Button>
        </div>
      </section>
      <section class="report-preview" aria-label={words.report.sheet}>
        <ReportSheet {...{ props, session, named }} />
      </section>
      {asking && (
        <Sure
          words={words}
          rides={rides.length}
          onKeep={() => setAsking(false)}
          onSave={json}
          onDelete={() => {
            void onDeleteSession(session.plan.id);
            onPlace('');
          }}
        />
      )}
    </div>
  );
}

/** Says what would go, and makes keeping the easy answer. */
function Sure(props: {
  readonly words: ClinicProps['words'];
  readonly rides: number;
  readonly onKeep: () => void;
  readonly onSave: () => void;
  readonly onDelete: () => void;
}): JSX.Element {
  const { report } = props.words;
  return (
    <Dialog title={report.sureTitle} onClose={props.onKeep}>
      <p>{report.sure(props.rides)}</p>
      <div class="buttons">
        <Button strong autofocus onClick={props.onKeep}>
          {report.keep}
        </Button>
        <Button onClick={props.onSave}>{report.saveFirst}</Button>
        <Button data-delete-sure onClick={props.onDelete}>
          {report.removeSure}
        </Button>
      </div>
    </Dialog>
  );
}

/** A title as a file name: letters and digits of any script, dashes between. */
function fileName(title: string): string {
  const plain = title
    .toLocaleLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-+|-+$/g, '');
  return plain === '' ? 'session' : plain;
}
