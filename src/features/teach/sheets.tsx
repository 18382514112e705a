/** Sheets of A4 in black and white, the same on the screen as on paper: a plan, drill cards, a sheet for home, a certificate. */
import { type ComponentChildren, Fragment, type JSX } from 'preact';
import { DRILLS, type DrillId, SESSION_PARTS, type SessionPlan } from '../../core/group/sessionPlan.ts';
import { courseOfLevel } from '../../core/level/build.ts';
import type { Level } from '../../core/level/schema.ts';
import { Profile } from '../../ui/pictures/profile.tsx';
import { Lines } from '../../ui/parts.tsx';
import { words } from '../../words/words.ts';

const say = words('teach');
const cautions = words('cautions');

/** Cautions stand on every page. */
function Care(): JSX.Element {
  return (
    <footer class="teach-care">
      <p>{careText()}</p>
    </footer>
  );
}

function careText(): string {
  return [cautions('title'), ...cautions.lines('short'), ...say.lines('moreCautions'), say('defers')].join(
    ' ',
  );
}

/** One plan on one page. */
export function PlanSheet(props: { readonly plan: SessionPlan; readonly level: Level | null }): JSX.Element {
  const { plan, level } = props;
  return (
    <article class="teach-sheet on-paper" data-sheet="plan">
      <h2>{plan.title}</h2>
      {SESSION_PARTS.filter((name) => plan.parts[name].lines.length > 0).map((name) => (
        <section key={name} class="teach-part" data-part={name}>
          <h3>
            {say(`parts-${name}`)}
            {plan.parts[name].minutes > 0 && (
              <small>{say('min', { minutes: plan.parts[name].minutes })}</small>
            )}
          </h3>
          <div>
            {name === 'road' && <Road level={level} />}
            <Lines lines={plan.parts[name].lines} />
            {name === 'drill' && plan.drills.map((id) => <DrillInPlan key={id} id={id} />)}
          </div>
        </section>
      ))}
      <section class="teach-sources">
        <Lines lines={say.lines(`sources-${plan.audience}`)} />
        <p>{say('practice')}</p>
      </section>
      <Care />
    </article>
  );
}

function Road({ level }: { readonly level: Level | null }): JSX.Element {
  if (level === null) return <p>{say('noRoad')}</p>;
  return (
    <>
      <div class="teach-road">
        <Profile course={courseOfLevel(level)} label={level.title} />
      </div>
      <p>
        <strong>{say('road', { road: level.title })}</strong>
      </p>
    </>
  );
}

function DrillInPlan({ id }: { readonly id: DrillId }): JSX.Element {
  return (
    <p class="teach-drill">
      <strong>{say('drillInPlan', { drill: say(`card-${id}-title`) })}</strong>{' '}
      {say.lines(`card-${id}-doing`).join(' ')}
      {(['needs', 'safe', 'watch'] as const).map((row) => (
        <Fragment key={row}>
          {' '}
          <b>{say(`row-${row}`)}</b> {say(`card-${id}-${row}`)}
        </Fragment>
      ))}
    </p>
  );
}

/** Four cards of A6 on a page, to cut. */
export function CardsSheet(): JSX.Element {
  return (
    <article class="teach-sheet teach-cards on-paper" data-sheet="cards">
      {DRILLS.map((id) => {
        const rows = (['needs', 'safe', 'watch', 'easier', 'harder'] as const).map(
          (row) => [say(`row-${row}`), say(`card-${id}-${row}`)] as const,
        );
        return (
          <section key={id} class="teach-card">
            <h2>{say(`card-${id}-title`)}</h2>
            <ol>
              {say.lines(`card-${id}-doing`).map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ol>
            <dl>
              {rows.map(([name, text]) => (
                <div key={name}>
                  <dt>{name}</dt> <dd>{text}</dd>
                </div>
              ))}
            </dl>
            <p class="teach-card-care">{careText()}</p>
          </section>
        );
      })}
    </article>
  );
}

/** For a child and the parents. */
export function HomeSheet(): JSX.Element {
  return (
    <article class="teach-sheet on-paper" data-sheet="home">
      <h2>{say('homeSheet-title')}</h2>
      <WriteLine label={say('homeSheet-name')} />
      <div class="teach-home">
        <section>
          <h3>{say('homeSheet-child')}</h3>
          <Lines lines={say.lines('homeSheet-childLines')} />
          <p>{say('homeSheet-draw')}</p>
          <div class="teach-draw" aria-hidden="true" />
        </section>
        <section>
          <h3>{say('homeSheet-parents')}</h3>
          <Lines lines={say.lines('homeSheet-parentLines')} />
        </section>
      </div>
      <Care />
    </article>
  );
}

/** Names what was learnt; the coach ticks by hand. */
export function CertificateSheet(): JSX.Element {
  return (
    <article class="teach-sheet teach-certificate on-paper" data-sheet="certificate">
      <h2>{say('certificateSheet-title')}</h2>
      <WriteLine label={say('homeSheet-name')} />
      <p class="teach-big">{say('certificateSheet-says')}</p>
      <ul class="teach-ticks">
        {say.lines('certificateSheet-learnt').map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <p>{say('certificateSheet-tick')}</p>
      <WriteLine label={say('certificateSheet-date')} />
      <WriteLine label={say('certificateSheet-coach')} />
      <Care />
    </article>
  );
}

/** A line to write on by hand. */
function WriteLine({ label }: { readonly label: ComponentChildren }): JSX.Element {
  return (
    <p class="teach-line">
      <span>{label}</span>
      <i aria-hidden="true" />
    </p>
  );
}
