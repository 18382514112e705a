/**
 * The debrief for children of about ten: the same page with short sentences and short words. Labels that a
 * child can read already stay as they are.
 */
import { capital, count, type FootPlace, gears, seconds } from '../../words/counting.ts';
import { type DebriefWords, debriefWords } from './words.ts';

const hill = (index: number, all: number): string => (all === 1 ? 'the hill' : `hill ${index + 1}`);
const near = ({ metres, side }: FootPlace): string =>
  side === 'at' ? 'right where the hill starts' : `${metres} ${side} the hill starts`;
const aim = (place: FootPlace): string =>
  place.side === 'before' ? `about ${near(place)}` : 'right where it starts';

/** English, for children. */
export const childrenDebriefWords: DebriefWords = {
  ...debriefWords,
  guess: {
    ...debriefWords.guess,
    title: 'Have a guess',
    question: (name) => `On ${name}, did you shift …`,
    openQuestion: 'On your hardest hill, did you shift …',
    why: 'Then we look at your ride.',
    timings: { 'too-early': 'too soon', 'about-right': 'just right', 'too-late': 'too late' },
    skip: 'Just show me',
    working: 'We are looking for the best ride …',
    notMarked:
      'We could not work out your marks now. If your ride is kept, they come when you open the game again.',
    matched: (timing) => `Yes! It was ${timing}.`,
    differed: (guess, timing) => `You said “${guess}”. It was ${timing}.`,
    matchedKind: 'Good eyes!',
    differedKind: 'It is hard to tell while you ride.',
    noPitch: 'This road had no steep hill.',
    youFirst: (place) => `You shifted ${near(place)}.`,
    youNever: 'You did not shift.',
    bestFirst: (place) => `The best ride did it ${near(place)}.`,
    bestNever: 'The best ride did not shift.',
    join: (you, best) => `${you} ${best}`,
    stepsBefore: (own, best) =>
      `${own === 0 ? 'You did not shift in time.' : `You went ${gears(own)} easier in time.`} The best ride shifted ${gears(best)}.`,
    slowest: () => 'Your legs got too slow on the hill.',
  },
  pitch: hill,
  pitchTitle: (index, all) => capital(hill(index, all)),
  end: {
    ...debriefWords.end,
    passed: 'You did it!',
    'not-yet': 'Good try. The hill waits for you.',
    ridden: 'You rode all of it.',
    explain: 'Look at your ride',
  },
  well: {
    title: 'You did well',
    finished: 'You rode all the way.',
    cadence: 'Your legs went round at a good speed.',
    foresight: 'You had the right gear before the hill.',
    easing: 'You pushed softly while you shifted.',
    chainLine: 'Your chain ran nice and straight.',
    economy: 'You only shifted when you had to.',
  },
  change: {
    title: 'Try this',
    late: (name, steps, at, slightly) =>
      `You waited ${slightly ? 'a bit' : 'too'} long on ${name}. Go ${gears(Math.max(1, steps.beforeFoot))} easier, ${aim(at)}.`,
    early: (name, at, slightly) =>
      `You shifted ${slightly ? 'a bit' : 'too'} soon on ${name}. Wait, and shift ${aim(at)}.`,
    footDown: (name, steps, at) =>
      `The gear was too hard on ${name}. Go ${gears(Math.max(1, steps.beforeFoot))} easier, ${aim(at)}.`,
    stayed: (name, steps, at) =>
      `You stayed in a hard gear on ${name}. Go ${gears(Math.max(1, steps.beforeFoot))} easier, ${aim(at)}.`,
    fewSteps: (name, made, needed) =>
      made < needed
        ? `You went ${gears(made)} easier on ${name}. You need ${count(needed)}.`
        : `Your gear was too hard on ${name}. Go one gear easier.`,
    pushed: (name, steps, at) =>
      `You pushed very hard on ${name}. Go ${gears(Math.max(1, steps.beforeFoot))} easier, ${aim(at)}.`,
    ease: (heavy) =>
      heavy === 0
        ? 'Push a bit softer while you shift.'
        : `You pushed hard in ${count(heavy)} ${heavy === 1 ? 'shift' : 'shifts'}. Push softly, then shift.`,
    pushedHub: (heavy) =>
      heavy === 0
        ? 'Stop pushing for a moment when you shift.'
        : `You pushed in ${count(heavy)} ${heavy === 1 ? 'shift' : 'shifts'}. Stop pushing, shift, push again.`,
    motorPulled: (heavy) =>
      heavy === 0
        ? 'Wait a bit until the motor stops, then shift.'
        : `The motor pulled in ${count(heavy)} ${heavy === 1 ? 'shift' : 'shifts'}. Soft feet, wait, shift.`,
    motorPulledHub: (heavy) =>
      heavy === 0
        ? 'Wait a bit until the motor stops, then shift.'
        : `The motor pulled in ${count(heavy)} ${heavy === 1 ? 'shift' : 'shifts'}. Stop pushing, wait, shift.`,
    stoodStill: () => 'Your legs stood still when you shifted. Turn them softly.',
    restedHub: (n, place) =>
      `Your legs did nothing for ${seconds(n)} from ${place}. Push on after your shift.`,
    slowLegs: (n, place) =>
      `Your legs were slow, most of all from ${place} (${seconds(n)}). Pick an easier gear.`,
    fastLegs: (n, place) =>
      `Your legs were fast, most of all from ${place} (${seconds(n)}). Pick a harder gear.`,
    coasted: (n, place) => `Your legs did nothing for ${seconds(n)} from ${place}. Keep them going round.`,
    crossed: (n, place) =>
      `The chain was not straight for ${seconds(n)} from ${place}. Use the other front ring.`,
    fidget: (made, needed) => `You went through ${made} gears. You need only ${needed}. Wait a bit more.`,
    dawdle: () => 'You rode very slowly. Keep your legs going and ride on.',
    nothing: 'Nothing at all. Do it just like that again!',
  },
  next: {
    title: 'Next ride',
    again: 'Ride this road again. Think of just that one thing.',
    onwards: (level) => `Go on to “${level}”.`,
    onwardsNone: 'Pick any road you like.',
    easier: 'Ride an easier road first. Then come back.',
  },
  strip: { ...debriefWords.strip, zoomTo: (index) => `Hill ${index + 1}` },
  cards: {
    ...debriefWords.cards,
    title: 'Hill by hill',
    needed: 'Gears you need',
    before: 'Yours before the hill',
    asksNothing: 'It goes without a shift, too.',
    footDown: 'You had to put a foot down here.',
    timing: (timing) =>
      ({ 'too-early': 'Too soon', 'about-right': 'Just right', 'too-late': 'Too late' })[timing],
    tendency: (timing) =>
      ({ 'too-early': 'A bit soon', 'about-right': 'Just right', 'too-late': 'A bit late' })[timing],
    bestDoes: (steps, _before, place) =>
      `From your gear, the best ride goes ${gears(steps)} easier. It begins ${near(place)}.`,
    bestStays: 'In your gear, the best ride would not shift here.',
    watch: 'Watch this hill',
    nearFoot: near,
  },
  marks: {
    ...debriefWords.marks,
    names: {
      cadence: 'Leg speed',
      foresight: 'Ready in time',
      easing: 'Soft shifts',
      chainLine: 'Straight chain',
      economy: 'Calm hands',
    },
    asks: {
      cadence: 'Your legs go round at a good speed.',
      foresight: 'The gear is right before the hill.',
      easing: 'You push softly while you shift.',
      chainLine: 'The chain runs straight.',
      economy: 'You shift only when you have to.',
    },
    noMark: {
      cadence: 'You did not pedal long enough.',
      foresight: 'There was no steep hill for you.',
      easing: 'You did not shift at all.',
      chainLine: 'There was nothing to look at here.',
      economy: 'There was nothing to count.',
    },
    holds: {
      weakest: (mark, most) => `You get at most ${most} while “${mark}” is so low.`,
      pace: (_ratio, share) => `You rode slowly. So you keep only ${share}.`,
      tooSlow: () => 'You rode so slowly that it does not count.',
      lessonMissing: (mark, atLeast) => `You need ${atLeast} in “${mark}” to pass.`,
      markMissing: (mark, atLeast) => `You need ${atLeast} in “${mark}”, too.`,
    },
    levels: (value) =>
      value >= 85 ? 'great' : value >= 70 ? 'good' : value >= 45 ? 'getting there' : 'start here',
    perfect: 'All good here.',
    small: 'Nearly all good here.',
    leftAlone: 'You pushed no lever. This road needs it.',
  },
  reasons: {
    belowBand: {
      why: (from, n) => `Your legs were slow for ${seconds(n)} from ${from}.`,
      better: 'shift easier when your legs get slow.',
    },
    aboveBand: {
      why: (from, n) => `Your legs were fast for ${seconds(n)} from ${from}.`,
      better: 'shift harder when it goes down.',
    },
    coasted: {
      why: (from, n) => `Your legs did nothing for ${seconds(n)} from ${from}.`,
      better: 'keep your legs going round.',
      betterHub: 'push on after your shift.',
    },
    late: {
      why: (name) => `${capital(name)} was hard on your legs.`,
      better: 'shift before the hill starts.',
    },
    early: {
      why: (name) => `You were ready for ${name} too soon.`,
      better: 'wait a bit with your shift.',
    },
    footDown: {
      why: (name) => `You put a foot down on ${name}.`,
      better: 'shift easier before it gets steep.',
    },
    heavy: {
      why: (from) => `You pushed hard in the shift at ${from}.`,
      better: 'push softly, then shift.',
      betterHub: 'stop pushing, shift, push again.',
      betterMotor: 'wait a bit longer until the motor stops, too.',
    },
    waited: {
      why: (from) => `The chain had to wait at ${from}. Your legs stood still.`,
      better: 'turn your legs softly when you shift.',
    },
    crossed: {
      why: (from, n) => `The chain was not straight for ${seconds(n)} from ${from}.`,
      better: 'use the other front ring.',
    },
    many: {
      why: (made, needed) => `You went through ${made} gears. You need only ${needed}.`,
      better: 'just roll over small bumps.',
    },
    undone: {
      why: (from) => `You shifted at ${from} and then back again.`,
      better: 'wait a bit with each new gear.',
    },
  },
  closed: 'Guess first. Then you see the rest.',
};
