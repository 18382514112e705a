/** Every sentence of the progress page. Marks and numbers come in as numbers, dates come in written. */
import type { MarkName } from '../../core/coach/types.ts';
import type { ProgressFinding } from '../../core/coach/progress.ts';
import type { CheckRole } from './checks.ts';

const days = (n: number): string => (n === 1 ? 'a day' : `${n} days`);
const shift = (change: number): string =>
  change > 0 ? `${change} up` : change < 0 ? `${-change} down` : 'the same';

/** English. */
export const progressWords = {
  unmarked: {
    title: 'Kept without marks',
    standing: {
      'to-mark': 'not marked yet; the game tries again when it is opened',
      unfinished: 'broke off before the finish, so it gets no marks',
      older: 'ridden before the legs of the game changed, so it can no longer be ridden again and marked',
    },
  },
  older: (n: number): string =>
    n === 1
      ? 'One ride is older than the legs of the game. It keeps the marks it got; it cannot be ridden again or compared with newer ones.'
      : `${n} rides are older than the legs of the game. They keep the marks they got; they cannot be ridden again or compared with newer ones.`,
  title: 'Progress',
  intro: 'Check rides tell whether something was learned. Practice rides tell where to practise.',
  road: 'On the road: what recorded rides show',
  empty: 'No ride is kept here yet. Ride first; your marks will be here afterwards.',
  check: {
    title: 'Check rides',
    what: 'A check ride is a road you have not seen, without any help. Ride one before you practise and one on another day. Up to three on each day are taken together: the more, the smaller the change that shows.',
    ride: { everyone: 'Ride a check ride', children: 'Check ride for children' },
    group: 'Bike and road',
    groupOf: (bike: string, children: boolean): string =>
      children ? `${bike}, children’s check ride` : bike,
    /** Totals and change come in rounded. */
    finding: (finding: ProgressFinding): string => {
      switch (finding.code) {
        case 'need-first':
          return 'No check ride yet.';
        case 'need-second':
          return `Your first check ride came to ${finding.first} of 100. Practise, then ride another one, best on another day.`;
        case 'same-day':
          return finding.certain
            ? `From ${finding.first} to ${finding.latest} on one day: ${shift(finding.change)}, more than chance alone usually makes. Whether it stays shows on another day.`
            : `From ${finding.first} to ${finding.latest} on one day: ${shift(finding.change)}. Chance alone makes such a difference. Ride another one on another day.`;
        case 'retest': {
          const { first, latest, change, chance } = finding;
          const found = `From ${first} to ${latest}, ${days(finding.days)} later, without help: ${shift(change)}, give or take ${chance}.`;
          if (!finding.certain) return `${found} That cannot be told from chance.`;
          return change > 0
            ? `${found} That is learning, inside this game.`
            : `${found} Tired, or out of practice? Ride another one.`;
        }
      }
    },
    roles: {
      first: 'first',
      'same-day': 'same day',
      retest: 'another day',
    } satisfies Record<CheckRole, string>,
    chance: (points: number): string =>
      `Less than ${points} points from the first: chance alone can make that.`,
    sides: (before: number, after: number, most: number): string =>
      before >= most && after >= most
        ? `Taken together: ${before} rides of the first day and ${after} of the latest.`
        : `Taken together: ${before} of the first day and ${after} of the latest. ${most} each would show a smaller change.`,
    desc: (count: number, first: number, latest: number): string =>
      count === 1
        ? `One check ride: ${first} of 100.`
        : `${count} check rides in the order they were ridden. The first came to ${first} of 100, the latest to ${latest}.`,
    table: 'Check rides in numbers',
  },
  limits: {
    title: 'What this can show, and what it cannot',
    lines: [
      'Practice rides have help, and roads you get to know. Their marks can rise without learning, and fall while you practise something hard. So they are not compared here.',
      'Check rides are equally hard and always new. One by itself says little: compare the first with one on another day, on the same bike.',
      'All of it is about this game. Nobody has shown that better marks here make better shifting on a road.',
    ],
  },
  marks: {
    title: 'Marks of all rides',
    hint: 'Oldest on the left. For finding what to practise, not for proving progress.',
    which: 'Rides of',
    all: 'all levels',
    names: {
      cadence: 'Cadence',
      foresight: 'Foresight',
      easing: 'Soft feet',
      chainLine: 'Chain line',
      economy: 'Economy',
    } satisfies Record<MarkName, string>,
    total: 'All together',
    latest: 'latest',
    none: 'nothing to judge yet',
    kinds: { ride: 'practice', check: 'check ride', clinic: 'in a clinic' },
    desc: (name: string, count: number, first: number, latest: number): string =>
      count === 1
        ? `${name}: one ride, ${first} of 100.`
        : `${name}: ${count} rides, from ${first} to ${latest} of 100.`,
    shown: (shown: number, all: number): string => `The latest ${shown} of ${all} rides.`,
    table: 'The same in numbers',
  },
  table: {
    date: 'Date',
    level: 'Level',
    kind: 'Kind',
    role: 'Which',
    total: 'Total',
    passed: 'Passed',
    yes: 'yes',
    no: 'no',
  },
};

export type ProgressWords = typeof progressWords;
