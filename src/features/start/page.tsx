/** The first page: the picture, one big button that begins the next sensible ride, and the ways to everything else. */
import type { JSX } from 'preact';
import { hashOf } from '../../state/address.ts';
import { levelForButton } from '../../state/nextRide.ts';
import { Icon, type Page, PageLink, SettingsButton, WayWords } from '../../ui/parts.tsx';
import { Button } from '../../ui/controls.tsx';
import { BikePicture } from '../../ui/pictures/bike.tsx';
import { Hero } from './hero.tsx';
import type { StartServices } from './services.ts';
import type { State } from '../../state/store.ts';
import { UnfinishedOffer } from './unfinishedRide.tsx';
import { bikeGears, bikeName, common, keepingNotice } from '../../words/common.ts';
import { words } from '../../words/words.ts';
import { Stroke } from '../../ui/pictures/stroke.tsx';

const say = words('start');

/** A bar end with its lever, as a thumb finds it. */
const LEVER = 'M8 14H50q12 0 14 8';

/** Ways to further pages; a page that joins the game gets its name here. */
const MORE_WAYS = ['clinic', 'teach', 'two', 'bench', 'gearcheck', 'progress'] as const;

export const startPage: Page<StartServices> = (state, send, services) => {
  const next = levelForButton(state);
  const { byEar } = state.settings;
  return (
    <main class="start">
      <Hero kit={state.settings.kit} />
      <div class="start-tools">
        <SettingsButton />
      </div>
      <div class="start-words">
        <h1 class="name">{common('name')}</h1>
        <p class="promise">{common('promise')}</p>
        {state.keeping !== null && (
          <p class="start-notice" role="note">
            {keepingNotice(state.keeping)}
          </p>
        )}
        <Newer state={state} services={services} />
        <UnfinishedOffer rides={state.unfinished} levels={state.levels} services={services} send={send} />
      </div>
      {next !== null && (
        <Button look="big-button" data-ride-next onClick={() => send({ kind: 'ask-ride', rest: next.id })}>
          <Icon name="go" />
          <span>
            <strong>{say(state.doneIds.length === 0 ? 'ride' : 'rideAgain')}</strong>
            <span class="big-button-level">{next.title}</span>
          </span>
        </Button>
      )}
      {next !== null && (
        <a
          class="round with-word ear-way"
          data-ride-by-ear
          href={hashOf({ view: 'ride', rest: next.id })}
          onClick={() => send({ kind: 'set', settings: { byEar: !byEar } })}
        >
          <Icon name="ear" />
          <span>{say(byEar ? 'byEye' : 'byEar')}</span>
        </a>
      )}
      <nav class="start-ways" aria-label={common('name')}>
        <LevelsWay state={state} />
        <ChildrenWay />
        <BikeWay state={state} />
        <PageLink to="about" class="cut way">
          <WayWords title={common('nav-about')} hint={say('hint-about')} />
          <svg class="way-steps" viewBox="0 0 96 48" aria-hidden="true">
            <Stroke d={LEVER} width={7} round />
            <path
              d="M62 16 84 36M58 24 66 42"
              stroke="var(--rider)"
              stroke-width="7"
              stroke-linecap="round"
            />
          </svg>
        </PageLink>
        <div class="more-ways">
          {MORE_WAYS.map((view) => (
            <PageLink key={view} to={view} class="cut way">
              <WayWords title={common(`nav-${view}`)} hint={say(`hint-${view}`)} />
            </PageLink>
          ))}
        </div>
      </nav>
    </main>
  );
};

/** Says that a newer version waits. Not while a ride is still being kept: it would be lost. */
function Newer(props: { readonly state: State; readonly services: StartServices }): JSX.Element | null {
  const { newer, last } = props.state;
  if (!newer || last?.kept.state === 'saving') return null;
  return (
    <output class="row start-newer">
      {say('newer')}{' '}
      <Button data-load-newer onClick={() => props.services.loadNewer()}>
        {say('loadNewer')}
      </Button>
    </output>
  );
}

function LevelsWay({ state }: { readonly state: State }): JSX.Element {
  const hint = say('hint-levels', { done: state.doneIds.length, all: state.levels.length });
  return (
    <PageLink to="levels" class="cut way">
      <WayWords title={say('levels')} hint={hint} />
      <svg class="way-steps" viewBox="0 0 96 48" aria-hidden="true">
        <path d="M2 46V36H24V26H46V16H68V6H94V46Z" fill="var(--leaf-pale)" />
        <Stroke d="M2 36H24V26H46V16H68V6H94" width={4} />
      </svg>
    </PageLink>
  );
}

function ChildrenWay(): JSX.Element {
  return (
    <PageLink to="children" class="cut way">
      <WayWords title={common('nav-children')} hint={say('hint-children')} />
      {/* A basket with apples. */}
      <svg class="way-steps" viewBox="8 0 80 48" aria-hidden="true">
        <path d="M30 24a8 8 0 1 1 .1 0ZM48 19a8 8 0 1 1 .1 0ZM66 24a8 8 0 1 1 .1 0Z" fill="var(--rider)" />
        <path d="M16 20H80L72 46H24Z" fill="var(--sand)" />
        <Stroke d="M16 20H80L72 46H24ZM28 30h10M44 30h10M60 30h8M32 38h10M48 38h10" width={4} />
      </svg>
    </PageLink>
  );
}

function BikeWay({ state }: { readonly state: State }): JSX.Element {
  const { bike } = state.settings;
  const hint = say('hint-bike', { name: bikeName(bike.id), gears: bikeGears(bike) });
  return (
    <PageLink to="bike" class="cut way">
      <WayWords title={say('bike')} hint={hint} />
      <BikePicture bike={bike} />
    </PageLink>
  );
}
