/**
 * The children's own page: their roads as big pictures, how it goes in four lines, and what was learnt so far. Whoever
 * finds it finds the way to all other roads as well.
 */
import type { JSX } from 'preact';
import { earnedPatches } from '../../core/coach/patches.ts';
import type { Level, Place } from '../../core/level/schema.ts';
import { playRoads } from '../../core/coach/ladder.ts';
import { hashOf } from '../../state/address.ts';
import type { Send, State } from '../../state/store.ts';
import { Tick } from '../../ui/controls.tsx';
import { type Page, PageLink, Sheet } from '../../ui/parts.tsx';
import { PatchList } from '../../ui/pictures/patch.tsx';
import { words } from '../../words/words.ts';
import '../../ui/pictures/patches.css';
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
        <PatchList lessons={lessons} look="wrap play-patches" />
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

interface Sheet {
  readonly d: string;
  readonly fill: string;
}

const round = (x: number, y: number, size: number): string =>
  `M${x - size} ${y}a${size} ${size} 0 1 1 ${size * 2} 0a${size} ${size} 0 1 1 ${-size * 2} 0Z`;
const fir = (x: number, y: number, size: number): string =>
  `M${x - size * 0.3} ${y}L${x} ${y - size}l${size * 0.3} ${size}Z`;
const house = (x: number, y: number, wide: number, tall: number): string =>
  `M${x} ${y}v${-tall}l${wide / 2} ${-wide / 2}l${wide / 2} ${wide / 2}v${tall}Z`;

const PICTURES: Readonly<Record<Place, { readonly sky: string; readonly sheets: readonly Sheet[] }>> = {
  valley: {
    sky: '#f1e9d6',
    sheets: [
      { d: round(236, 34, 15), fill: '#fbd98a' },
      { d: 'M0 76C60 40 110 52 170 66S260 48 300 60V130H0Z', fill: '#aec2b3' },
      { d: `M0 96C70 70 140 98 200 86S270 84 300 92V130H0Z`, fill: '#86a698' },
      { d: `${round(60, 84, 13)}M57 84h6v22h-6Z${round(250, 82, 10)}M248 84h4v16h-4Z`, fill: '#5d8479' },
      { d: 'M0 112C90 102 200 118 300 104V130H0Z', fill: '#5d8479' },
    ],
  },
  forest: {
    sky: '#f0e8b8',
    sheets: [
      {
        d: [14, 40, 66, 92, 118, 144, 170, 196, 222, 248, 274]
          .map((x, i) => fir(x, 104, 54 + ((i * 7) % 4) * 9))
          .join(''),
        fill: '#84a384',
      },
      { d: [30, 88, 152, 206, 268].map((x) => `M${x - 4} 130V20h8v110Z`).join(''), fill: '#54402f' },
      { d: [30, 88, 152, 206, 268].map((x, i) => fir(x, 44 + (i % 2) * 12, 52)).join(''), fill: '#2c5546' },
      { d: 'M0 108C80 98 220 116 300 102V130H0Z', fill: '#4d7a62' },
    ],
  },
  coast: {
    sky: '#d8edf4',
    sheets: [
      { d: round(62, 30, 13), fill: '#fff0b8' },
      { d: 'M190 62V22h12v40Z', fill: '#fff8ec' },
      { d: 'M190 46h12v-8h-12ZM188 22h16l-8-9Z', fill: '#b8472e' },
      { d: 'M160 66C190 50 240 54 300 62V76H160Z', fill: '#a8c2bf' },
      { d: 'M0 66H300V130H0Z', fill: '#6fb0c6' },
      { d: 'M82 82V52l-20 30ZM86 82V56l15 26ZM60 85h44l-7 8H66Z', fill: '#fff8ec' },
      { d: 'M0 110C60 90 130 104 190 100S270 98 300 92V130H0Z', fill: '#d8c695' },
    ],
  },
  moor: {
    sky: '#e6e2dc',
    sheets: [
      { d: 'M0 72C80 64 180 74 300 66V130H0Z', fill: '#a493ae' },
      { d: 'M118 84l4-30 10-2 2 32ZM146 84l3-24 9-3 3 27ZM176 84l2-34 11 2 3 32Z', fill: '#6f6b72' },
      { d: 'M0 88C90 76 200 94 300 80V130H0Z', fill: '#8a6c92' },
      { d: 'M0 110C90 100 210 116 300 104V130H0Z', fill: '#705478' },
    ],
  },
  pass: {
    sky: '#cfe3f0',
    sheets: [
      { d: 'M0 96L58 34 92 66 142 16 196 72 236 42 300 96V130H0Z', fill: '#8299b3' },
      {
        d: 'M58 34L38 56l14-2 8 8 8-9 12 3ZM142 16L116 42l17-4 8 12 10-11 16 5ZM236 42L216 57l14-1 8 7 16-3Z',
        fill: '#ffffff',
      },
      { d: [40, 66, 210, 240, 262].map((x) => fir(x, 106, 34)).join(''), fill: '#3f5f5c' },
      { d: 'M0 106C90 92 210 112 300 98V130H0Z', fill: '#eef4f7' },
    ],
  },
  town: {
    sky: '#6a5a82',
    sheets: [
      { d: round(242, 28, 11), fill: '#fbe9bf' },
      {
        d: [0, 44, 86, 132, 176, 222, 266].map((x, i) => house(x, 108, 38, 30 + ((i * 5) % 4) * 9)).join(''),
        fill: '#484568',
      },
      {
        d: [10, 54, 98, 142, 188, 232, 276]
          .map((x, i) => `M${x} ${92 - (i % 3) * 8}h8v10h-8ZM${x + 13} ${92 - (i % 2) * 9}h8v10h-8Z`)
          .join(''),
        fill: '#ffd98a',
      },
      { d: 'M0 108H300V130H0Z', fill: '#2c2e42' },
    ],
  },
};

/** A small cut-paper picture of a land. Says nothing: the words stand beside it. */
function PlacePicture({ place }: { readonly place: Place }): JSX.Element {
  const { sky, sheets } = PICTURES[place];
  return (
    <svg class="place-picture" viewBox="0 0 300 130" preserveAspectRatio="xMidYMid slice" aria-hidden="true">
      <rect width="300" height="130" fill={sky} />
      {sheets.map(({ d, fill }) => (
        <path key={d} d={d} fill={fill} />
      ))}
    </svg>
  );
}
