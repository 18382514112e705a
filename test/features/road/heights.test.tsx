/** A ride whose heights may be in feet: nothing is kept of it before somebody has said what they are. */
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { expect, it } from 'vitest';
import { roadNote } from '../../../src/core/gpx/types.ts';
import { bikeById, riderById } from '../../../src/core/model/presets.ts';
import { RoadPage } from '../../../src/features/road/page.tsx';
import type { RideFile, RoadDesk } from '../../../src/features/road/services.ts';
import { createFormat } from '../../../src/words/format.ts';

const bike = bikeById('road-2x11');
const rider = riderById('adult-weekly');
if (bike === undefined || rider === undefined) throw new Error('a bundled bike or rider is missing');
const figures = {
  lengthM: 20_000,
  movingS: 3_000,
  heightsLateS: null,
  cadenceHalved: false,
  month: null,
  readableShare: 0.6,
  changesPerKm: null,
  shareInBand: null,
  steadyPowerW: 150,
  powerMeasured: true,
  pitches: [],
};

it('asks, keeps nothing meanwhile, and reads the file again with what was said', async () => {
  const read: RideFile['heights'][] = [];
  const desk: RoadDesk = {
    read: async ({ heights }, _who, told) => {
      read.push(heights);
      if (heights === null)
        told.onFeet({
          ...roadNote('heights', 'perhaps-feet', { climbMph: 4_000 }),
          options: ['feet'],
          taken: 'metres',
        });
      return { kind: 'ride', figures };
    },
    again: () => Promise.reject(new Error('nobody asked for it')),
    keepLevel: async () => true,
    rides: async () => [],
    keep: async () => true,
    forget: async () => undefined,
  };
  const page = document.createElement('main');
  await act(() =>
    render(
      <RoadPage
        {...{ desk, format: createFormat('metric', 'en-GB') }}
        who={{ bike, rider, teethKnown: true }}
        results={[]}
        onRide={() => undefined}
      />,
      page,
    ),
  );
  const input = page.querySelector<HTMLInputElement>('input[type="file"]');
  Object.defineProperty(input, 'files', { value: [new File(['<gpx/>'], 'ride.gpx')] });
  await act(() => void input?.dispatchEvent(new Event('change', { bubbles: true })));
  const keep = (): HTMLButtonElement | null => page.querySelector('[data-keep-ride]');
  const asked = (): Element | null => page.querySelector('[data-heights]');
  await expect.poll(() => asked()?.textContent).toContain('4,000 m an hour');
  expect(keep()?.disabled).toBe(true);
  await act(() => [...(asked()?.querySelectorAll('button') ?? [])].at(-1)?.click());
  await expect.poll(() => keep()?.disabled).toBe(false);
  expect([asked(), read]).toEqual([null, [null, 'feet']]);
});
