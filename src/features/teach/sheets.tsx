/** Sheets of A4 in black and white, the same on the screen as on paper: a plan, drill cards, a sheet for home, a certificate. */
import type { ComponentChildren, JSX } from 'preact';
import { DRILLS, type DrillId, SESSION_PARTS, type SessionPlan } from '../../core/group/sessionPlan.ts';
import { courseOfLevel } from '../../core/level/build.ts';
import type { Level } from '../../core/level/schema.ts';
import { Profile } from '../../ui/pictures/profile.tsx';
import { DRILL_WORDS } from './drills.ts';
import { teachWords as words } from './words.ts';

/** Cautions stand on every page. */
function Care(): JSX.Element {
  return (
    <footer class="teach-care">
      <p>
        {words.cautions.join(' ')} {words.defers}
      </p>
    </footer>
  );
}

function Lines({ lines }: { readonly lines: readonly string[] }): JSX.Element {
  return (
    <ul>
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
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
            {words.parts[name]}
            {plan.parts[name].minutes > 0 && <small>{words.min(plan.parts[name].minutes)}</small>}
          </h3>
          <div>
            {name === 'road' && <Road level={level} />}
            <Lines lines={plan.parts[name].lines} />
            {name === 'drill' && plan.drills.map((id) => <DrillInPlan key={id} id={id} />)}
          </div>
        </section>
      ))}
      <section class="teach-sources">
        <Lines lines={words.sources[plan.audience]} />
        <p>{words.practice}</p>
      </section>
      <Care />
    </article>
  );
}

function Road({ level }: { readonly level: Level | null }): JSX.Element {
  if (level === null) return <p>{words.noRoad}</p>;
  return (
    <>
      <p>
        <strong>{words.road(level.title)}</strong>
      </p>
      <div class="teach-road">
        <Profile course={courseOfLevel(level)} label={level.title} />
      </div>
    </>
  );
}

function DrillInPlan({ id }: { readonly id: DrillId }): JSX.Element {
  const drill = DRILL_WORDS[id];
  return (
    <p class="teach-drill">
      <strong>{drill.title}.</strong> {drill.doing.join(' ')} <b>{words.drill.needs}:</b> {drill.needs}{' '}
      <b>{words.drill.safe}:</b> {drill.safe} <b>{words.drill.watch}:</b> {drill.watch}
    </p>
  );
}

/** Four cards of A6 on a page, to cut. */
export function CardsSheet(): JSX.Element {
  return (
    <article class="teach-sheet teach-cards on-paper" data-sheet="cards">
      {DRILLS.map((id) => {
        const drill = DRILL_WORDS[id];
        const rows = (['needs', 'safe', 'watch', 'easier', 'harder'] as const).map(
          (key) => [words.drill[key], drill[key]] as const,
        );
        return (
          <section key={id} class="teach-card">
            <h2>{drill.title}</h2>
            <ol>
              {drill.doing.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ol>
            <dl>
              {rows.map(([name, text]) => (
                <div key={name}>
                  <dt>{name}</dt>
                  <dd>{text}</dd>
                </div>
              ))}
            </dl>
            <p class="teach-card-care">
              {words.cautions.join(' ')} {words.defers}
            </p>
          </section>
        );
      })}
    </article>
  );
}

/** For a child and the parents. */
export function HomeSheet(): JSX.Element {
  const { homeSheet } = words;
  return (
    <article class="teach-sheet on-paper" data-sheet="home">
      <h2>{homeSheet.title}</h2>
      <WriteLine label={homeSheet.name} />
      <div class="teach-home">
        <section>
          <h3>{homeSheet.child}</h3>
          <Lines lines={homeSheet.childLines} />
          <p>{homeSheet.draw}</p>
          <div class="teach-draw" aria-hidden="true" />
        </section>
        <section>
          <h3>{homeSheet.parents}</h3>
          <Lines lines={homeSheet.parentLines} />
        </section>
      </div>
      <Care />
    </article>
  );
}

/** Names what was learnt; the coach ticks by hand. */
export function CertificateSheet(): JSX.Element {
  const { certificateSheet } = words;
  return (
    <article class="teach-sheet teach-certificate on-paper" data-sheet="certificate">
      <h2>{certificateSheet.title}</h2>
      <WriteLine label={words.homeSheet.name} />
      <p class="teach-big">{certificateSheet.says}</p>
      <ul class="teach-ticks">
        {certificateSheet.learnt.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <p>{certificateSheet.tick}</p>
      <WriteLine label={certificateSheet.date} />
      <WriteLine label={certificateSheet.coach} />
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
