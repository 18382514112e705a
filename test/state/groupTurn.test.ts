/** A turn of a group in the reducer of the pages: begun once, led back to its session, never begun by an address. */
import type { RideResult } from '../../src/core/coach/results.ts';
import { describe, expect, it } from 'vitest';
import { BIKES, riderById } from '../../src/core/model/presets.ts';
import { hashOf } from '../../src/state/address.ts';
import { type GroupTurn, sessionOfPlace, sessionPlace } from '../../src/state/groupTurn.ts';
import { KEY_ACTIONS, type Keys } from '../../src/core/settings/settings.ts';
import { initialState, reduce } from '../../src/state/reduce.ts';
import type { Action, State } from '../../src/state/store.ts';
import { levelById } from '../core/ride/worlds.ts';

const keys = Object.fromEntries(KEY_ACTIONS.map((action, i) => [action, [`Key${i}`]])) as unknown as Keys;
const levels = [levelById('one-pitch-announced')];
const after = (state: State, ...actions: Action[]): State => actions.reduce(reduce, state);
const start = initialState(levels, keys, '');
const recording = { checkpoints: ['0'] } as unknown as RideResult['recording'];
const trace = { samples: [], events: [], beforePitch: [] };

describe('a turn of a group', () => {
  const turn: GroupTurn = {
    planId: 'session-1',
    nickname: 'red-fox',
    rideIndex: 0,
    attempt: 1,
    level: levels[0]!,
    bike: BIKES[0]!,
    rider: riderById('child-9')!,
  };
  const seen = after(start, { kind: 'accept-cautions' }, { kind: 'ride-turn', turn });

  it.each(['', 'picture'])('is found at the place of its session, tab "%s"', (tab) => {
    expect(sessionOfPlace(sessionPlace('session-1', tab))).toEqual({ planId: 'session-1', tab });
    expect(sessionOfPlace('plan/session-1')).toBeNull();
  });

  it('is ridden after the cautions, on the road, bike and rider of the plan', () => {
    const early = after(start, { kind: 'ride-turn', turn });
    expect(early).toMatchObject({ dialog: 'cautions', view: 'start', ride: null });
    expect(after(early, { kind: 'accept-cautions' })).toMatchObject({ view: 'start', ride: null });
    expect(seen).toMatchObject({
      view: 'ride',
      rest: 'clinic/s/session-1',
      ride: { level: { id: 'one-pitch-announced' } },
    });
    expect(seen.ride?.group).toBe(turn);
  });

  it('leads back to its session when it is over, and counts for nobody', () => {
    const over = after(seen, {
      kind: 'ride-finished',
      result: { level: turn.level, rest: seen.rest, recording, trace },
    });
    expect(over).toMatchObject({ view: 'clinic', rest: 's/session-1', doneIds: [] });
    expect(over.last?.recording).toBe(recording);
    expect(after(over, { kind: 'ask-ride', rest: over.last?.rest ?? '' })).toMatchObject({
      view: 'clinic',
      rest: 's/session-1',
    });
  });

  it('is not begun by its address after a reload; the session is shown, which knows whose turn it was', () => {
    expect(initialState(levels, keys, hashOf({ view: 'ride', rest: seen.rest }))).toMatchObject({
      view: 'clinic',
      rest: 's/session-1',
      ride: null,
    });
  });

  it('begins once however often the button is tapped, and anew after a pause', () => {
    expect(after(seen, { kind: 'ride-turn', turn })).toBe(seen);
    const paused = after(seen, { kind: 'ride', shows: { phase: 'paused', countdownS: null } });
    expect(after(paused, { kind: 'ride-turn', turn }).ride?.attempt).toBe(2);
  });
});
