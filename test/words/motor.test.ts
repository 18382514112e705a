/** What is said to who rides with a motor: on the way, and before something is tried outside. */
import { describe, expect, it } from 'vitest';
import { bikeById } from '../../src/core/model/presets.ts';
import { outsideLines } from '../../src/words/cautions.ts';
import { cueText } from '../../src/words/cues.ts';
import { stepDone } from '../../src/words/firstSteps.ts';

const bike = (id: string) => bikeById(id)!;

describe('a shift', () => {
  it('waits a breath wherever a motor pulls on the chain, in a hub with the pressure off', () => {
    const said = ['trekking-hub-8-crank', 'trekking-1x10-crank', 'town-hub-7-wheel', 'road-2x11'].map((id) =>
      cueText('ease-then-shift', bike(id)),
    );
    expect(said).toEqual([
      'Take the pressure off, wait a breath, then shift.',
      'Soft feet, wait a breath, then shift.',
      'Take the pressure off, then shift.',
      'Soft feet, then shift.',
    ]);
  });

  it('in a hub comes at once only where no motor pulls on the chain', () => {
    expect(stepDone('ease', bike('town-hub-7'))).toContain('at once');
    expect(stepDone('ease', bike('trekking-hub-8-crank'))).not.toContain('at once');
  });
});

describe('cautions', () => {
  it('name the motor where there is one, and the wheel it drives', () => {
    const [none, crank, wheel] = ['town-hub-7', 'trekking-1x10-crank', 'town-hub-7-wheel'].map((id) =>
      outsideLines(bike(id)),
    );
    expect(none?.some((line) => line.includes('motor'))).toBe(false);
    expect(crank?.slice(0, none?.length)).toEqual(none);
    expect(crank?.some((line) => line.includes('motor and the battery'))).toBe(true);
    expect(wheel?.slice(0, -1)).toEqual(crank);
    expect(wheel?.at(-1)).toContain('slips');
  });
});
