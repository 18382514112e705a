/**
 * The children's own page: their roads as big pictures, how it goes in four lines, and what was learnt so far. Whoever
 * finds it finds the way to all other roads as well.
 */
import type { JSX } from 'preact';
import { earnedPatches } from '../../core/coach/patches.ts';
import type { Level } from '../../core/level/schema.ts';
import { playRoads } from '../../core/coach/ladder.ts';
import { hashOf } from '../../state/address.ts';
import type { Send, State } from '../../state/store.ts';
import { Tick } from '../../ui/controls.tsx';
import type { Page } from '../../ui/page.ts';
import { PageLink, Sheet } from '../../ui/parts.tsx';
import { PatchList } from '../../ui/pictures/patch.tsx';
import '../../ui/pictures/patches.css';
import { PlacePicture } from './placePicture.tsx';
import { words } from '../../words/words.ts';
import './children.css';

const say = words('children');

export const childrenPage: Page = (state, send) => (
  <Sheet title={say('title')} intro={say('intro')}>
    <section aria-label={say('roads')}>
      <ol class="level-list play-roads">
        {playRoads(state.levels).map((level) => (
          <li key={level.id}>
            <RoadCard level={level} done={state.doneIds.includes(level.id)} />
          </li>
        ))}
      </ol>
    </section>
    <div class="play-below">
      <section class="paper">
        <h2>{say('howTitle')}</h2>
        <ul class="play-how">
          {say.lines('how').map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
          <li>
            <a href={hashOf({ view: 'two', rest: 'relay' })}>{say('together')}</a>
          </li>
        </ul>
        <p>{say('beside')}</p>
      </section>
      <Learnt state={state} />
      <Wishes state={state} send={send} />
    </div>
    <p>
      <PageLink to="levels" class="button">
        {say('more')}
      </PageLink>
    </p>
  </Sheet>
);

function RoadCard({ level, done }: { readonly level: Level; readonly done: boolean }): JSX.Element {
  return (
    <a class="cut play-road" href={hashOf({ view: 'ride', rest: level.id })} data-level={level.id}>
      <PlacePicture place={level.place ?? 'valley'} />
      <span class="play-road-words">
        <strong lang={level.lang}>{level.title}</strong>
        <span lang={level.lang}>{level.sentence}</span>
        {done && <span class="play-done">{say('done')}</span>}
      </span>
    </a>
  );
}

function Learnt({ state }: { readonly state: State }): JSX.Element {
  const lessons = earnedPatches(state.levels, state.results);
  return (
    <section class="paper">
      <h2>{say('learnt')}</h2>
      {lessons.length === 0 ? (
        <p>{say('nothingYet')}</p>
      ) : (
        <PatchList lessons={lessons} look="play-patches" />
      )}
    </section>
  );
}

function Wishes({ state, send }: { readonly state: State; readonly send: Send }): JSX.Element {
  const { childVoice, childNumbers } = state.settings;
  return (
    <section class="paper">
      <h2>{say('wishes')}</h2>
      <Tick
        label={say('voice')}
        checked={childVoice}
        onChange={(on) => send({ kind: 'set', settings: { childVoice: on } })}
      />
      <Tick
        label={say('numbers')}
        checked={childNumbers}
        onChange={(on) => send({ kind: 'set', settings: { childNumbers: on } })}
      />
    </section>
  );
}
