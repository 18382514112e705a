/** What is left of a session: one page for paper, files, and deleting it. Names are only on paper when wanted. */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { csvReport, jsonReport } from '../../core/group/records/report.ts';
import { Button, Tick } from '../../ui/controls.tsx';
import { Question } from '../../ui/question.tsx';
import { ReportSheet } from './reportSheet.tsx';
import { ridesOf } from './session.ts';
import type { InSession } from './services.ts';
import { planTitle } from '../../words/group.ts';
import { fileNameOf } from '../../words/fileName.ts';
import { words } from '../../words/words.ts';

const say = words('clinic');

/** The page. */
export function Report({ props, session }: InSession): JSX.Element {
  const { saved, apart, onSaveFile, onPrint, onDeleteSession, onPlace } = props;
  const [named, setNamed] = useState(false);
  const [asking, setAsking] = useState(false);
  const rides = ridesOf(session, saved.records, apart);
  const name = fileNameOf(planTitle(session.plan), say('report-fileName'));
  const csv = (): void => onSaveFile(`${name}.csv`, csvReport(rides));
  const json = (): void => onSaveFile(`${name}.json`, `${JSON.stringify(jsonReport(rides), null, 1)}\n`);
  return (
    <div class="report-page">
      <section class="paper report-tools">
        <h2>{say('report-title')}</h2>
        <p>{say('report-intro')}</p>
        {apart.length > 0 && <p role="note">{say('picture-apart', { rides: apart.length })}</p>}
        <Tick label={say('report-names')} checked={named} onChange={setNamed} />
        <p class="hint">{say('report-namesHint')}</p>
        <div class="buttons">
          <Button strong data-print onClick={onPrint}>
            {say('report-print')}
          </Button>
          <Button data-csv onClick={csv}>
            {say('report-csv')}
          </Button>
          <Button data-json onClick={json}>
            {say('report-json')}
          </Button>
          <Button data-delete onClick={() => setAsking(true)}>
            {say('report-remove')}
          </Button>
        </div>
      </section>
      <section class="report-preview" aria-label={say('report-sheet')}>
        <ReportSheet {...{ props, session, named }} />
      </section>
      {asking && (
        <Question
          title={say('report-sureTitle')}
          text={say('report-sure', { rides: rides.length })}
          keep={say('report-keep')}
          onKeep={() => setAsking(false)}
        >
          <Button onClick={json}>{say('report-saveFirst')}</Button>
          <Button
            data-delete-sure
            onClick={() => {
              void onDeleteSession(session.plan.id);
              onPlace('');
            }}
          >
            {say('report-removeSure')}
          </Button>
        </Question>
      )}
    </div>
  );
}
