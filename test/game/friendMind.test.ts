/** The friend on the children's roads waits until the rider has come, and is at the finish first. */
import { describe, expect, it } from 'vitest';
import { FriendMind } from '../../src/game/views/friendMind.ts';

const STEP_S = 1 / 30;

describe('the friend', () => {
  it('waits as long as it takes', () => {
    const friend = new FriendMind([60, 120]);
    for (let i = 0; i < 3000; i += 1) friend.update(20, 0, STEP_S);
    expect(friend.distanceM).toBe(60);
    expect(friend.waits).toBe(true);
  });

  it('rides on once the rider has come, faster than the rider, to the next place and no further', () => {
    const friend = new FriendMind([60, 120]);
    friend.update(57, 4, STEP_S);
    expect(friend.waits).toBe(false);
    let riderM = 57;
    for (let i = 0; i < 300; i += 1) {
      riderM += 4 * STEP_S;
      friend.update(riderM, 4, STEP_S);
      if (!friend.waits) expect(friend.distanceM).toBeGreaterThan(riderM);
    }
    expect(friend.distanceM).toBe(120);
    for (let i = 0; i < 300; i += 1) friend.update(130, 4, STEP_S);
    expect(friend.distanceM).toBe(120);
  });

  it('is ahead again after a jump of the ride', () => {
    const friend = new FriendMind([60, 120, 200]);
    friend.update(150, 4, STEP_S);
    expect(friend.distanceM).toBeGreaterThanOrEqual(150);
  });
});
