/** What is said at the party at the end of a road for play; no sentence has more than twelve words. */
import { capital, count } from '../../words/counting.ts';

const apples = (n: number): string => (n === 1 ? 'one apple' : `${count(n)} apples`);

export const partyWords = {
  title: 'Party!',
  carried: (n: number): string => `You brought ${apples(n)}.`,
  all: 'You brought every single apple!',
  found: (n: number): string => `${capital(apples(n))} hopped out. The hedgehog brings them along.`,
  shared: 'Now everybody eats.',
  learnt: (lesson: string): string => `You have learnt: ${lesson}.`,
  tips: {
    jolts: 'Next time: click before it gets steep, with soft feet.',
    grinding: 'Next time: face puffing? Click easier, and sooner.',
    whirring: 'Next time: face whirring? Click harder.',
    none: 'So smooth! The hedgehog is a little sad.',
  },
  again: 'Once more',
  next: (title: string): string => `Next: ${title}`,
  takeOver: 'Change over: your friend rides',
  roads: 'All roads',
  grownUps: 'For grown-ups: the ride in detail',
  picture: 'A table with apples. Friend, dog and hedgehog are at the party.',
};
