/** Commands that come out of the hub: each change once, sweeps of a held lever, everything up after a loss of focus. */
import { describe, expect, it } from 'vitest';
import type { HoldMode } from '../../src/input/held.ts';
import { createInputHub, type InputCommand } from '../../src/input/hub.ts';

function recorded(mode: HoldMode = 'hold') {
  const sent: InputCommand[] = [];
  return { hub: createInputHub(mode, (command) => sent.push(command)), sent };
}

const easier = { kind: 'shift', derailleur: 'rear', direction: 'easier', steps: 1 };

describe('levers', () => {
  it.each([
    ['rear-easier', 'rear', 'easier'],
    ['rear-harder', 'rear', 'harder'],
    ['front-smaller', 'front', 'easier'],
    ['front-bigger', 'front', 'harder'],
  ] as const)('%s pushes the %s derailleur %s by one', (action, derailleur, direction) => {
    const { hub, sent } = recorded();
    hub.down(action, 'x', 0);
    expect(sent).toEqual([{ kind: 'shift', derailleur, direction, steps: 1 }]);
  });

  it('a held easier lever gives a step at 0.35 s, a last one at 0.7 s, and no more', () => {
    const { hub, sent } = recorded();
    hub.down('rear-easier', 'x', 1000);
    let nowMs = 1000;
    const counts = [1349, 1351, 1690, 1701, 2500, 9000].map((timeMs) => {
      for (; nowMs < timeMs; nowMs = Math.min(timeMs, nowMs + 16)) hub.poll(nowMs);
      hub.poll(timeMs);
      return sent.length;
    });
    expect(counts).toEqual([1, 2, 2, 3, 3, 3]);
    expect(sent).toEqual([easier, easier, easier]);
  });

  it('a tap in a moment in which the page stands still stays a tap', () => {
    const { hub, sent } = recorded();
    hub.down('rear-easier', 'x', 0);
    // The finger was gone after 60 ms; the page hears of it after the picture.
    hub.poll(1200);
    hub.up('x');
    for (let ms = 1216; ms < 3000; ms += 16) hub.poll(ms);
    expect(sent).toEqual([easier]);
  });

  it('letting go ends the sweep; another key coming up does not', () => {
    const { hub, sent } = recorded();
    hub.down('rear-easier', 'x', 0);
    hub.up('y');
    for (let ms = 0; ms <= 360; ms += 10) hub.poll(ms);
    expect(sent).toHaveLength(2);
    hub.up('x');
    hub.poll(2000);
    expect(sent).toHaveLength(2);
  });

  it('a held harder lever gives one step', () => {
    const { hub, sent } = recorded();
    hub.down('rear-harder', 'x', 0);
    hub.poll(3000);
    expect(sent).toHaveLength(1);
  });
});

describe('legs and brake', () => {
  it('each change comes out once', () => {
    const { hub, sent } = recorded();
    hub.down('ease', 'key', 0);
    hub.down('ease', 'pad', 1);
    hub.up('key');
    hub.up('pad');
    hub.up('pad');
    expect(sent).toEqual([
      { kind: 'pressure', pressure: 'ease' },
      { kind: 'pressure', pressure: 'steady' },
    ]);
  });

  it('losing the keyboard lets everything go, also a sweep', () => {
    const { hub, sent } = recorded();
    hub.down('press', 'a', 0);
    hub.down('brake', 'b', 0);
    hub.down('rear-easier', 'c', 0);
    sent.length = 0;
    hub.releaseAll();
    hub.poll(4000);
    expect(sent).toEqual([
      { kind: 'pressure', pressure: 'steady' },
      { kind: 'brake', on: false },
    ]);
  });

  it('changing from holding to switching starts from nothing', () => {
    const { hub } = recorded();
    hub.down('ease', 'a', 0);
    hub.setMode('switch');
    expect(hub.now()).toEqual({ pressure: 'steady', braking: false });
    hub.up('a');
    hub.down('ease', 'a', 5);
    hub.up('a');
    expect(hub.now().pressure).toBe('ease');
  });

  it('a switched-on brake ends when the bike stands', () => {
    const { hub, sent } = recorded('switch');
    hub.down('brake', 'a', 0);
    hub.up('a');
    hub.letGoBrake();
    expect(sent).toEqual([
      { kind: 'brake', on: true },
      { kind: 'brake', on: false },
    ]);
  });

  it('pause comes out as it is', () => {
    const { hub, sent } = recorded();
    hub.down('pause', 'a', 0);
    expect(sent).toEqual([{ kind: 'pause' }]);
  });
});
