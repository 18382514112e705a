/** What the dog of the children's levels does about the rider's rhythm. */
import { describe, expect, it } from 'vitest';
import { DogMind } from '../../src/game/views/dogMind.ts';

type DogSees = Parameters<DogMind['update']>[0];

const PLACES = { besideM: 8, waitingM: 24 };
const GOOD: DogSees = {
  distanceM: 0,
  speedMps: 4,
  cadenceRpm: 75,
  bandLowRpm: 65,
  bandHighRpm: 85,
  phase: 'riding',
  pressure: 'steady',
};

/** Rides on for some seconds and returns where the rider is then. */
function ride(dog: DogMind, from: DogSees, forS: number, seen?: (dog: DogMind) => void): DogSees {
  let sees = from;
  for (let t = 0; t < forS; t += 1 / 60) {
    sees = { ...sees, distanceM: sees.distanceM + sees.speedMps / 60 };
    dog.update(sees, 1 / 60);
    seen?.(dog);
  }
  return sees;
}

describe('the dog', () => {
  it('runs beside a rider whose rhythm is good', () => {
    const dog = new DogMind(PLACES);
    const sees = ride(dog, GOOD, 20);
    expect(dog.distanceM - sees.distanceM).toBeCloseTo(PLACES.besideM, 0);
    expect(dog.sitting).toBeLessThan(0.01);
  });

  it('runs ahead, sits down and waits when the rhythm is lost, and always ahead of the rider', () => {
    const dog = new DogMind(PLACES);
    let sat = 0;
    let sees = ride(dog, GOOD, 5);
    for (let second = 0; second < 30; second += 1) {
      sees = ride(dog, { ...sees, speedMps: 2, cadenceRpm: 40 }, 1, (now) => {
        sat = Math.max(sat, now.sitting);
      });
      expect(dog.distanceM).toBeGreaterThan(sees.distanceM);
    }
    expect(sat).toBeGreaterThan(0.95);
  });

  it('comes back when the rhythm does', () => {
    const dog = new DogMind(PLACES);
    const lost = ride(dog, { ...GOOD, cadenceRpm: 40 }, 10);
    expect(dog.happy).toBe(false);
    const sees = ride(dog, { ...lost, cadenceRpm: 75 }, 15);
    expect(dog.happy).toBe(true);
    expect(dog.distanceM - sees.distanceM).toBeCloseTo(PLACES.besideM, 0);
  });

  it('does not mind coasting, a stop, or a slip of a second', () => {
    const dog = new DogMind(PLACES);
    let sees = ride(dog, { ...GOOD, cadenceRpm: 0, pressure: 'coast' }, 10);
    sees = ride(dog, { ...sees, speedMps: 0, cadenceRpm: 0, phase: 'standing', pressure: 'steady' }, 5);
    expect(dog.sitting).toBeGreaterThan(0.9);
    sees = ride(dog, { ...sees, speedMps: 4, cadenceRpm: 40, phase: 'riding' }, 1);
    expect(dog.happy).toBe(true);
  });

  it('jumps for joy at the finish, and not before, whatever the rhythm was', () => {
    for (const cadenceRpm of [75, 30]) {
      const dog = new DogMind(PLACES);
      const sees = ride(dog, { ...GOOD, cadenceRpm }, 10);
      expect(dog.jumps).toBe(0);
      ride(dog, { ...sees, speedMps: 0, phase: 'finished' }, 1.5);
      expect(dog.jumps).toBeGreaterThan(2);
      expect(dog.sitting).toBeLessThan(0.1);
    }
  });
});
