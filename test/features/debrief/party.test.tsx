/** The party after a road for play, as a child finds it: the patch is true, and the last word is never a sad one. */
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { describe, expect, it } from 'vitest';
import { groundOfJob } from '../../../src/core/coach/ground.ts';
import { playRoads } from '../../../src/core/coach/ladder.ts';
import { bikeById, riderById } from '../../../src/core/model/presets.ts';
import { rideThrough } from '../../../src/core/ride/run.ts';
import type { RideTrace } from '../../../src/core/ride/trace.ts';
import { DEFAULT_KEYS } from '../../../src/core/settings/settings.ts';
import { Party } from '../../../src/features/debrief/party.tsx';
import { justFinished } from '../../../src/state/afterRide.ts';
import { initialState } from '../../../src/state/reduce.ts';
import { lessonName, patchName } from '../../../src/words/common.ts';
import { words } from '../../../src/words/words.ts';
import { BUNDLED } from '../../core/ride/worlds.ts';
import { rootForTests } from '../../ui/rootForTests.ts';

const say = words('party');
const roads = playRoads(BUNDLED.map(({ level }) => level));
const level = roads.find(({ teaches }) => teaches === 'cadence')!;
const setup = {
  level,
  seed: level.seed,
  bike: bikeById('kids-20-1x7')!,
  rider: riderById('child-9')!,
  autoEase: true,
};
const { world, reference } = groundOfJob(setup);
const root = rootForTests();

async function partyAfter(trace: RideTrace): Promise<string> {
  const last = justFinished({ level, rest: level.id, recording: {} as never, trace });
  const state = initialState(roads, DEFAULT_KEYS, '');
  await act(() => render(<Party {...{ state, last, send: () => {} }}>{() => null}</Party>, root));
  return root.querySelector('.party-learnt')?.textContent ?? '';
}

describe('the party', () => {
  it('sews on a patch, in a child’s words, for a ride with a change of gear', async () => {
    const told = await partyAfter(reference);
    expect(root.querySelector('[data-patch]')).not.toBeNull();
    expect(told).toContain(say('learnt', { lesson: patchName('cadence') }));
    expect(patchName('cadence')).not.toBe(lessonName('cadence'));
    expect(patchName('easing')).toBe(lessonName('easing'));
  });

  it('says to whoever pressed nothing that nothing was learnt yet, and why the apples hopped', async () => {
    const told = await partyAfter(rideThrough(world, () => []).trace);
    expect(root.querySelector('[data-patch]')).toBeNull();
    expect(told).toContain(say('noClick'));
    expect(told).toContain(say('tip-grinding'));
  });

  it('has the hedgehog at its table when every apple came along', async () => {
    const told = await partyAfter({
      ...reference,
      samples: [],
      events: reference.events
        .filter(({ kind }) => kind === 'shift-done')
        .map((event) => ({ ...event, load: 0 })),
    });
    expect(told).toContain(say('tip-none'));
    expect(root.querySelector('.party')?.getAttribute('data-carried')).toBe('8');
    expect(root.querySelectorAll('[data-who="hedgehog"]')).toHaveLength(1);
  });
});
