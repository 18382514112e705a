/** A late ride that was really ridden and really judged, and the page that shows it, for the debrief's tests. */
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type MarkingGround, groundOfJob } from '../../../src/core/coach/ground.ts';
import type { RideReport } from '../../../src/core/coach/types.ts';
import { parseLevelText } from '../../../src/core/level/parse.ts';
import type { Level } from '../../../src/core/level/schema.ts';
import { bikeById, riderById } from '../../../src/core/model/presets.ts';
import type { Bike, Rider } from '../../../src/core/model/types.ts';
import { NAMED_HABITS, virtualRider } from '../../../src/core/virtual/riders.ts';
import { rideThrough } from '../../../src/core/ride/run.ts';
import type { RideTrace } from '../../../src/core/ride/trace.ts';
import { DebriefPage } from '../../../src/features/debrief/debrief.tsx';
import type { DebriefProps } from '../../../src/features/debrief/types.ts';

export interface LateRide {
  readonly level: Level;
  readonly bike: Bike;
  readonly rider: Rider;
  readonly trace: RideTrace;
  readonly reference: RideTrace;
  readonly report: RideReport;
  readonly judge: MarkingGround['judge'];
}

/** The late virtual rider on the road bike, judged. */
export function lateRide(): LateRide {
  const parsed = parseLevelText(
    readFileSync(join(process.cwd(), 'levels/stops-wind-and-a-secret.json'), 'utf8'),
  );
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  const { level } = parsed;
  const bike = bikeById('road-2x11') as Bike;
  const rider = riderById('adult-weekly') as Rider;
  const { world, reference, judge } = groundOfJob({ level, seed: level.seed, bike, rider, autoEase: false });
  const { trace } = rideThrough(world, virtualRider(world, NAMED_HABITS.late, 3));
  return { level, bike, rider, trace, reference, report: judge(trace), judge };
}

/** Props of the page for a ride; callbacks only remember. */
export function propsFor(
  ride: LateRide,
  change: Partial<DebriefProps> = {},
): DebriefProps & { calls: unknown[] } {
  const calls: unknown[] = [];
  return {
    ...ride,
    levelTitle: ride.level.title,
    seed: ride.level.seed,
    share: null,
    same: true,
    units: 'metric',
    bikeName: 'Road',
    riderName: 'Weekly',
    cautions: ['A game teaches timing, not traffic.'],
    saved: { state: 'saved' },
    guess: null,
    unfolded: false,
    outside: null,
    nextLevelTitle: 'Another road',
    onGuess: (guess) => calls.push(['guess', guess]),
    onUnfold: (unfolded) => calls.push(['unfold', unfolded]),
    onWatch: (distanceM) => calls.push(['watch', distanceM]),
    onRideAgain: () => calls.push(['again']),
    onNextLevel: () => calls.push(['next']),
    onPrint: () => calls.push(['print']),
    onSaveRide: () => calls.push(['save']),
    onSavePicture: () => calls.push(['picture']),
    ...change,
    calls,
  };
}

/** Draws the page into the document. */
export async function show(props: DebriefProps): Promise<HTMLElement> {
  document.body.innerHTML = '<div id="app"></div>';
  const app = document.getElementById('app') as HTMLElement;
  await act(() => render(<DebriefPage {...props} />, app));
  return app;
}

/** Pushes a key on the strip. */
export async function push(app: HTMLElement, key: string, times = 1): Promise<void> {
  const paper = app.querySelector('.strip-scrubber') as HTMLElement;
  for (let i = 0; i < times; i += 1)
    await act(() => void paper.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true })));
}
