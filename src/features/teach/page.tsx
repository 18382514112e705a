/**
 * Session plans: what a coach says and does in 20, 45 or 60 minutes, in the game and outside, and what is handed out.
 * Copies live in files of the coach; nothing of them is kept here.
 */
import { Button, FileButton } from '../../ui/controls.tsx';
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import {
  parseSessionPlanText,
  type SessionPlan,
  type SessionPlanCode,
  sessionPlanText,
  TEACH_AUDIENCES,
} from '../../core/group/sessionPlan.ts';
import type { Level } from '../../core/level/schema.ts';
import { hashOf } from '../../state/address.ts';
import { BackWay, type Page, Paper, Sheet } from '../../ui/parts.tsx';
import { ChangePlan } from './change.tsx';
import { LENGTHS_MIN, planIdOf, sessionPlan } from './plans.ts';
import type { TeachServices } from './services.ts';
import { CardsSheet, CertificateSheet, HomeSheet, PlanSheet } from './sheets.tsx';
import { common } from '../../words/common.ts';
import { fileNameOf } from '../../words/fileName.ts';
import { words } from '../../words/words.ts';
import './teach.css';

const say = words('teach');

/** The place of a coach's own copy. */
const OWN = 'own';
const SHEETS = { cards: CardsSheet, home: HomeSheet, certificate: CertificateSheet } as const;

const placeOf = (rest: string): string => hashOf({ view: 'teach', rest });

export const teachPage: Page<TeachServices> = (state, send, services) => (
  <Teach
    place={state.rest}
    levels={state.levels}
    services={services}
    onPlace={(rest) => send({ kind: 'address', address: { view: 'teach', rest } })}
  />
);

interface TeachProps {
  readonly place: string;
  readonly levels: readonly Level[];
  readonly services: TeachServices;
  readonly onPlace: (place: string) => void;
}

function Teach(props: TeachProps): JSX.Element {
  const { place, onPlace } = props;
  const [own, setOwn] = useState<SessionPlan | null>(null);
  const [changing, setChanging] = useState(false);
  const take = (plan: SessionPlan, change: boolean): void => {
    setOwn(plan);
    setChanging(change);
    onPlace(OWN);
  };
  const plan = place === OWN ? own : sessionPlan(place);
  const back = { href: placeOf(''), word: say('back') };
  if (plan !== null)
    return (
      <BackWay.Provider value={back}>
        <PlanPage
          {...props}
          plan={plan}
          changing={place === OWN && changing}
          onCopy={() => take(plan, true)}
          onChange={setOwn}
          onDone={() => setChanging(false)}
        />
      </BackWay.Provider>
    );
  if (place === 'cards' || place === 'home' || place === 'certificate') {
    const Shown = SHEETS[place];
    return (
      <BackWay.Provider value={back}>
        <Sheet title={say(place)} intro={say(`${place}Hint`)}>
          <div class="teach-tools buttons">
            <Button strong data-print onClick={props.services.print}>
              {say('print')}
            </Button>
          </div>
          <Shown />
        </Sheet>
      </BackWay.Provider>
    );
  }
  return <Home lost={place === OWN} onOpen={(opened) => take(opened, false)} />;
}

function PlanPage(
  props: TeachProps & {
    readonly plan: SessionPlan;
    readonly changing: boolean;
    readonly onCopy: () => void;
    readonly onChange: (plan: SessionPlan) => void;
    readonly onDone: () => void;
  },
): JSX.Element {
  const { plan, levels, services, changing } = props;
  const level = levels.find(({ id }) => id === plan.levelId) ?? null;
  const save = (): void =>
    services.saveSessionPlan(`${fileNameOf(plan.title, say('fileName'))}.json`, sessionPlanText(plan));
  return (
    <Sheet title={plan.title}>
      <div class="teach-tools buttons">
        {changing ? (
          <Button strong data-done onClick={props.onDone}>
            {say('done')}
          </Button>
        ) : (
          <>
            <Button strong data-print onClick={services.print}>
              {say('print')}
            </Button>
            <Button data-change onClick={props.onCopy}>
              {say('change')}
            </Button>
          </>
        )}
        <Button data-save onClick={save}>
          {say('save')}
        </Button>
        {level !== null && (
          <a class="button" href={hashOf({ view: 'ride', rest: level.id })}>
            {say('rideRoad')}
          </a>
        )}
        <a class="button" href={hashOf({ view: 'clinic', rest: '' })}>
          {say('toClinic')}
        </a>
      </div>
      {changing ? (
        <ChangePlan plan={plan} levels={levels} onChange={props.onChange} />
      ) : (
        <PlanSheet plan={plan} level={level} />
      )}
    </Sheet>
  );
}

function Home(props: {
  /** A copy was looked for that is not here any more. */
  readonly lost: boolean;
  readonly onOpen: (plan: SessionPlan) => void;
}): JSX.Element {
  const [problem, setProblem] = useState<'ownGone' | `problems-${SessionPlanCode}` | null>(
    props.lost ? 'ownGone' : null,
  );
  const open = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    const text = await file.text().catch(() => '');
    const read = parseSessionPlanText(text);
    if (read.ok) props.onOpen(read.plan);
    else setProblem(`problems-${read.code}`);
  };
  return (
    <Sheet title={common('nav-teach')} intro={say('intro')}>
      <div class="teach-home-page">
        {TEACH_AUDIENCES.map((audience) => (
          <Paper key={audience} title={say(`audiences-${audience}`)}>
            <div class="buttons">
              {LENGTHS_MIN.map((minutes) => (
                <a
                  key={minutes}
                  class="button"
                  aria-label={say('lengthFor', {
                    length: say('min', { minutes }),
                    audience: say(`audiences-${audience}`),
                  })}
                  href={placeOf(planIdOf(audience, minutes))}
                >
                  {say('min', { minutes })}
                </a>
              ))}
            </div>
          </Paper>
        ))}
        <Paper title={say('sheets')}>
          <div class="buttons">
            {(['cards', 'home', 'certificate'] as const).map((sheet) => (
              <a key={sheet} class="button" href={placeOf(sheet)}>
                {say(sheet)}
              </a>
            ))}
          </div>
        </Paper>
        <Paper title={say('own')}>
          <p>{say('openHint')}</p>
          <FileButton name="data-open-plan" onFiles={([file]) => void open(file)}>
            {say('open')}
          </FileButton>
          {problem !== null && (
            <p class="notice" role="alert">
              {say(problem)}
            </p>
          )}
        </Paper>
      </div>
    </Sheet>
  );
}
