/**
 * The end of a road for play: a party. Nothing is lost, for the hedgehog brings what hopped out; what was learnt is a patch;
 * and the next child may take over. Everything a coach wants to know lies folded below.
 */
import type { ComponentChildren, JSX } from 'preact';
import { useState } from 'preact/hooks';
import { APPLES, applesOf } from '../../core/coach/apples.ts';
import { changedGear } from '../../core/coach/patches.ts';
import { playRoads } from '../../core/coach/ladder.ts';
import type { AfterRide } from '../../state/afterRide.ts';
import type { Send, State } from '../../state/store.ts';
import { Button } from '../../ui/controls.tsx';
import { PageLink } from '../../ui/parts.tsx';
import { Patch } from '../../ui/pictures/patch.tsx';
import { patchName } from '../../words/common.ts';
import { words } from '../../words/words.ts';
import { PartyPicture } from './partyPicture.tsx';
import './party.css';

const say = words('party');

export function Party(props: {
  readonly state: State;
  readonly last: AfterRide;
  readonly send: Send;
  /** What grown-ups look at; drawn when they ask. */
  readonly children: () => ComponentChildren;
}): JSX.Element {
  const { state, last, send, children } = props;
  const [unfolded, setUnfolded] = useState(false);
  const { carried, spilled, most } = applesOf(last.trace);
  const { teaches, id } = last.level;
  const learnt = changedGear(last.trace);
  const roads = playRoads(state.levels);
  const next = roads[(roads.findIndex((one) => one.id === id) + 1) % Math.max(1, roads.length)];
  const ride = (levelId: string) => () => send({ kind: 'ask-ride', rest: levelId });
  return (
    <div class="party" data-carried={carried} data-of={APPLES}>
      <section class="paper party-card">
        <PartyPicture carried={carried} spilled={spilled} />
        <div class="party-words">
          <h2>{say('title')}</h2>
          <p aria-live="polite">
            {spilled === 0
              ? say('all')
              : `${say('carried', { apples: carried })} ${say('found', { apples: spilled })}`}{' '}
            {say('shared')}
          </p>
          <div class="party-learnt">
            {learnt && <Patch lesson={teaches} name={patchName(teaches)} index={0} />}
            <p>
              {learnt ? say('learnt', { lesson: patchName(teaches) }) : say('noClick')} {say(`tip-${most}`)}
            </p>
          </div>
          <div class="doing-row">
            {next !== undefined && (
              <Button strong data-next-level onClick={ride(next.id)}>
                {say('next', { level: next.title })}
              </Button>
            )}
            <Button data-ride-again onClick={ride(id)}>
              {say('again')}
            </Button>
            <Button data-take-over onClick={() => send({ kind: 'take-over', rest: id })}>
              {say('takeOver')}
            </Button>
            <PageLink to="children" class="button">
              {say('roads')}
            </PageLink>
          </div>
        </div>
      </section>
      <details class="explain" onToggle={(event) => setUnfolded(event.currentTarget.open)}>
        <summary>{say('grownUps')}</summary>
        {unfolded && children()}
      </details>
    </div>
  );
}
