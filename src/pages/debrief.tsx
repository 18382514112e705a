/** After a ride: its time, its shifts, and where to go from here. */
import type { JSX } from 'preact';
import { HEAVY_LOAD } from '../core/model/shift.ts';
import type { RideTrace } from '../core/ride/trace.ts';
import { TICK_S } from '../core/ride/step.ts';
import { createFormat } from './format.ts';
import { levelForButton } from './nextRide.ts';
import type { Page } from './page.ts';
import { Sheet } from './parts.tsx';
import { words } from './words.ts';

/** What can be counted without judging. */
export interface RideCounts {
  readonly shiftCount: number;
  readonly heavyCount: number;
  readonly footDownCount: number;
}

/** Counts the events of a ride. */
export function countRide(trace: Pick<RideTrace, 'events'>): RideCounts {
  const shifts = trace.events.filter((event) => event.kind === 'shift-done');
  return {
    shiftCount: shifts.length,
    heavyCount: shifts.filter((event) => event.load >= HEAVY_LOAD).length,
    footDownCount: trace.events.filter((event) => event.kind === 'foot-down').length,
  };
}

export const debriefPage: Page = (state, send) => {
  const { last, settings } = state;
  const level = state.levels.find((one) => one.id === last?.levelId);
  if (last === null || level === undefined)
    return (
      <Sheet title={words.debrief.title} send={send}>
        {null}
      </Sheet>
    );
  const format = createFormat(settings.units);
  const { shiftCount, heavyCount, footDownCount } = countRide(last.trace);
  const next = levelForButton(state);
  const ride = (levelId: string): void => send({ kind: 'ask-ride', levelId });
  return (
    <Sheet title={words.debrief.title} intro={level.title} send={send}>
      <section class="paper debrief">
        <dl class="numbers">
          <Number name="time" term={words.debrief.time} value={format.time(last.recording.ticks * TICK_S)} />
          <Number name="shifts" term={words.debrief.shifts} value={format.number(shiftCount)} />
          <Number name="heavy" term={words.debrief.heavy} value={format.number(heavyCount)} />
          <Number name="feet" term={words.debrief.footDowns} value={format.number(footDownCount)} />
        </dl>
        {shiftCount > 0 && <p>{words.debrief.heavyHint(heavyCount)}</p>}
        <div class="buttons">
          <button type="button" class="button strong" data-ride-again onClick={() => ride(last.levelId)}>
            {words.debrief.again}
          </button>
          {next !== null && next.id !== last.levelId && (
            <button type="button" class="button" onClick={() => ride(next.id)}>
              {words.debrief.next(next.title)}
            </button>
          )}
          <a class="button" href="#levels">
            {words.debrief.levels}
          </a>
        </div>
      </section>
    </Sheet>
  );
};

function Number(props: {
  readonly name: string;
  readonly term: string;
  readonly value: string;
}): JSX.Element {
  return (
    <div>
      <dt>{props.term}</dt>
      <dd data-debrief={props.name}>{props.value}</dd>
    </div>
  );
}
