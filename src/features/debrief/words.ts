/**
 * Every sentence of the debrief for grown-ups, and the type that other audiences and languages fill. Numbers
 * with units come in already written; plain counts come in as numbers, because words bend round them.
 */
import type { MarkName, Timing } from '../../core/coach/types.ts';
import { capital, count, type FootPlace, gears, near, pitch, seconds } from '../../words/counting.ts';
import { stripWords } from '../../charts/words.ts';

const aim = (place: FootPlace): string =>
  place.side === 'before'
    ? `about ${near(place)}`
    : place.side === 'at'
      ? near(place)
      : 'just as it gets steep';

const TIMINGS: Record<Timing, string> = {
  'too-early': 'too early',
  'about-right': 'about right',
  'too-late': 'too late',
};

const MARKS: Record<MarkName, string> = {
  cadence: 'Cadence',
  foresight: 'Foresight',
  easing: 'Soft feet',
  chainLine: 'Chain line',
  economy: 'Economy',
};

/** Gears easier in all, and how many of them before the foot. */
interface StepPlan {
  readonly all: number;
  readonly beforeFoot: number;
}

/** What the best ride did, as something to try. */
function advice({ all, beforeFoot }: StepPlan, at: FootPlace): string {
  if (beforeFoot <= 0 || beforeFoot >= all) return `Shift ${gears(Math.max(1, all))} easier ${aim(at)}.`;
  return `Shift ${gears(beforeFoot)} easier ${aim(at)}, the rest on the way up.`;
}

/** "Three of 25 gear changes were", "All four gear changes were". */
function someOf(some: number, all: number): string {
  if (some < all) return `${capital(count(some))} of ${changesOfGear(all)} ${some === 1 ? 'was' : 'were'}`;
  return all === 1 ? 'The one gear change was' : `All ${changesOfGear(all)} were`;
}

/** One sprocket or ring further is one gear change, however the lever was pushed. */
const changesOfGear = (n: number): string => (n === 1 ? 'one gear change' : `${count(n)} gear changes`);

/** "1.3 times as long as the best ride"; the number comes in written. */
const asLong = (ratio: string): string => `${ratio} times as long as the best ride`;

/** English, for grown-ups. */
export const debriefWords = {
  guess: {
    title: 'Guess first',
    question: (name: string): string => `On ${name}, your shifting was …`,
    openQuestion: 'On the pitch that cost your legs most, your shifting was …',
    why: 'Then the ride is explained.',
    timings: TIMINGS,
    skip: 'Just tell me',
    working: 'The best ride on your bike is being worked out …',
    notMarked:
      'The marks could not be worked out now. A ride that is kept gets them later, when the game is opened again.',
    share: (percent: string): string => `${percent} done`,
    matched: (timing: string): string => `You felt it: ${timing}.`,
    differed: (guess: string, timing: string): string => `You felt “${guess}”; it was ${timing}.`,
    told: (timing: string): string => `It was ${timing}.`,
    matchedKind: 'Noticing it yourself is how it gets better.',
    differedKind: 'Hard to feel while riding. The strip shows where.',
    noPitch: 'No pitch on this road was steep enough to need a shift.',
    youFirst: (place: FootPlace): string => `Your first easier gear came ${near(place)}`,
    youNever: 'You stayed in your gear',
    bestFirst: (place: FootPlace): string => `the best ride shifted ${near(place)}.`,
    bestNever: 'the best ride did not shift at all.',
    join: (you: string, best: string): string => `${you}; ${best}`,
    stepsBefore: (own: number, best: number): string =>
      `Before the foot you had made ${own === 0 ? 'no shift' : `${gears(own)} easier`}; the best ride ${best === 1 ? 'one' : count(best)}.`,
    slowest: (own: string, best: string): string =>
      `Your legs slowed to ${own} rpm; the best ride kept ${best}.`,
  },
  pitchTitle: (index: number, all: number): string =>
    all === 1 ? 'The pitch' : capital(pitch(index, all).replace(/^the /, '')),
  end: {
    passed: 'You made it.',
    'not-yet': 'The hill waits for you.',
    ridden: 'The road is done.',
    stamps: { early: 'early', soft: 'soft', smooth: 'smooth' },
    stampStates: { earned: 'done', 'not-yet': 'not yet', 'not-asked': 'not asked here' },
    explain: 'What happened, why and where',
  },
  well: {
    title: 'Went well',
    finished: 'You rode it to the end.',
    cadence: 'Your legs kept a good rhythm nearly all the way.',
    foresight: 'You were in the right gear before the road asked for it.',
    easing: 'You let the pedals go light for every shift.',
    chainLine: 'You kept the chain running straight.',
    economy: 'You shifted when it was needed and left it alone otherwise.',
  } satisfies Record<MarkName | 'finished' | 'title', string>,
  change: {
    title: 'Change one thing',
    late: (name: string, steps: StepPlan, at: FootPlace, slightly: boolean): string =>
      `On ${name} your easier gears came ${slightly ? 'a little' : 'too'} late for your legs. ${advice(steps, at)}`,
    stayed: (name: string, steps: StepPlan, at: FootPlace): string =>
      `On ${name} you stayed in a gear that was too hard. ${advice(steps, at)}`,
    early: (name: string, at: FootPlace, slightly: boolean): string =>
      `On ${name} you got ready ${slightly ? 'a little' : 'too'} soon. Hold your gear, and shift easier ${aim(at)}.`,
    fewSteps: (name: string, made: number, needed: number): string =>
      made < needed
        ? `On ${name} you went only ${gears(made)} easier. Go ${gears(needed)} easier there.`
        : `On ${name} your gear was still too hard. Go one gear easier there.`,
    pushed: (name: string, steps: StepPlan, at: FootPlace): string =>
      `On ${name} you pushed hard instead of shifting. ${advice(steps, at)}`,
    footDown: (name: string, steps: StepPlan, at: FootPlace): string =>
      `On ${name} the gear was too hard and a foot went down. ${advice(steps, at)}`,
    ease: (heavy: number, all: number): string =>
      heavy === 0
        ? 'Push the pedals more lightly while the chain moves, just for a moment.'
        : `${someOf(heavy, all)} made while pushing hard. Go light on the pedals for a moment, then shift.`,
    pushedHub: (heavy: number, all: number): string =>
      heavy === 0
        ? 'Take the pressure off while the hub changes, just for a moment.'
        : `${someOf(heavy, all)} made while you pedalled on: the hub knocked. Take the pressure off, shift, then push again.`,
    motorPulled: (heavy: number, all: number): string =>
      heavy === 0
        ? 'Give the motor a moment to let go: soft feet, wait a breath, then shift.'
        : `${someOf(heavy, all)} made while the motor still pulled on the chain. Soft feet, wait a breath until it lets go, then shift.`,
    motorPulledHub: (heavy: number, all: number): string =>
      heavy === 0
        ? 'Give the motor a moment to let go: take the pressure off, wait a breath, then shift.'
        : `${someOf(heavy, all)} made while the motor still pulled. Take the pressure right off, wait a breath until it lets go, then shift.`,
    stoodStill: (waited: number, all: number): string =>
      `${someOf(waited, all)} asked for while your legs rested. A hub likes that, a chain must run: keep turning the pedals, softly.`,
    restedHub: (n: number, place: string): string =>
      `Your legs rested where the road wants them, longest from ${place}: ${seconds(n)}. A hub needs only a moment; then push on.`,
    slowLegs: (n: number, place: string): string =>
      `Your legs turned slowly, longest from ${place}: ${seconds(n)}. One gear easier keeps them going round.`,
    fastLegs: (n: number, place: string): string =>
      `Your legs spun fast, longest from ${place}: ${seconds(n)}. One gear harder calms them.`,
    coasted: (n: number, place: string): string =>
      `Your legs rested where the road wants them, longest from ${place}: ${seconds(n)}. Keep the pedals going round.`,
    crossed: (n: number, place: string): string =>
      `The chain ran at a slant for ${seconds(n)} from ${place}. Change the chainring, and a gear at the back to match.`,
    fidget: (made: number, needed: number): string =>
      `You made ${changesOfGear(made)}; the best ride ${needed === 1 ? 'needed one' : `needed ${count(needed)}`}. Wait a breath before the next one.`,
    dawdle: (ratio: string): string =>
      `You took ${asLong(ratio)}. Ride in the gear you can push at a good rhythm, and keep going.`,
    nothing: 'Nothing. Do it again just like that.',
  },
  next: {
    title: 'Ride next',
    again: 'This road again: one more try, with only that in mind.',
    onwards: (level: string): string => `On to “${level}”.`,
    onwardsNone: 'Any level you like: this one is yours.',
    easier: 'A gentler road first, then come back to this one.',
  },
  ...stripWords,
  cards: {
    title: 'Pitch by pitch',
    steep: (percent: string, length: string): string => `${percent} for ${length}`,
    needed: 'Easier gears needed',
    before: 'Yours before the foot',
    ofMade: (before: number, made: number): string =>
      made === 0 ? 'none made' : `${before} of ${made} made`,
    worst: 'Slowest legs',
    worstPair: (own: string, best: string): string => `${own} rpm (best ${best})`,
    bestDoes: (steps: number, before: number, place: FootPlace): string =>
      `From your gear, the best ride goes ${gears(steps)} easier, ${before === steps ? 'all' : before === 0 ? 'none' : count(before)} before the foot, the first ${near(place)}.`,
    bestStays: 'From your gear and speed, the best ride would not shift here.',
    asksNothing: 'At your speed it goes without a shift, too.',
    footDown: 'A foot went down here.',
    timing: (timing: Timing): string => capital(TIMINGS[timing]),
    tendency: (timing: Timing): string =>
      capital({ ...TIMINGS, 'too-early': 'a little early', 'too-late': 'a little late' }[timing]),
    watch: 'Watch this pitch',
    picture: (name: string): string => `Where both rides shifted on ${name}`,
    pictureDesc: 'The road from the side. Above it your shifts, below it those of the best ride.',
    table: 'Shifts on this pitch',
    who: 'Who',
    you: 'you',
    best: 'best',
    where: 'Where',
    nearFoot: near,
  },
  marks: {
    title: 'Marks',
    total: 'All together',
    passed: (pass: string): string => `Passed (from ${pass})`,
    notYet: (pass: string): string => `Not yet (passed from ${pass})`,
    names: MARKS,
    asks: {
      cadence: 'Legs inside your band',
      foresight: 'The gear ready before the hill',
      easing: 'Light pedals while shifting',
      chainLine: 'A straight chain',
      economy: 'No needless shifts',
    } satisfies Record<MarkName, string>,
    none: 'no mark',
    noMark: {
      cadence: 'You did not pedal long enough to judge.',
      foresight: 'No pitch asked for a shift at your speed.',
      easing: 'You did not shift, so there was nothing to be soft for.',
      chainLine: 'Nothing to judge: one chainring, or no shift at all.',
      economy: 'There was nothing to count.',
    } satisfies Record<MarkName, string>,
    holds: {
      weakest: (mark: string, most: string): string =>
        `${mark} keeps the total down: with this mark it is at most ${most}.`,
      pace: (ratio: string, share: string): string =>
        `You took ${asLong(ratio)}. That leaves ${share} of the total.`,
      tooSlow: (ratio: string): string => `You took ${asLong(ratio)}. At that pace there is no total.`,
      lessonMissing: (mark: string, atLeast: string): string =>
        `This road is about ${mark.toLowerCase()}: to pass it, get at least ${atLeast} there.`,
      markMissing: (mark: string, atLeast: string): string =>
        `To pass, get at least ${atLeast} in ${mark.toLowerCase()}, too.`,
    },
    levels: (value: number): string =>
      value >= 85 ? 'strong' : value >= 70 ? 'good' : value >= 45 ? 'on the way' : 'start here',
    perfect: 'Nothing was lost here.',
    small: 'Only little things were lost here.',
    leftAlone: 'No lever was pushed where the road asked for it.',
    more: (n: number): string => `${capital(count(n))} more`,
    better: 'Better:',
  },
  reasons: {
    belowBand: {
      why: (from: string, n: number, rpm: string): string =>
        `Slow legs for ${seconds(n)} from ${from}, down to ${rpm} rpm.`,
      better: 'shift easier as soon as the legs begin to slow.',
    },
    aboveBand: {
      why: (from: string, n: number, rpm: string): string =>
        `Fast legs for ${seconds(n)} from ${from}, up to ${rpm} rpm.`,
      better: 'shift harder when the road lets you go.',
    },
    coasted: {
      why: (from: string, n: number): string =>
        `Your legs rested for ${seconds(n)} from ${from}, where the best ride pedals.`,
      better: 'keep the pedals going round on the flat and uphill.',
      betterHub: 'push on as soon as the hub has its gear.',
    },
    late: {
      why: (name: string, percent: string): string =>
        `${capital(name)} leaned on your legs: ${percent} of what good timing saves was lost.`,
      better: 'begin to shift before the foot.',
    },
    early: {
      why: (name: string, percent: string): string =>
        `You got ready for ${name} too soon: ${percent} of what good timing saves was lost.`,
      better: 'hold your gear a little longer.',
    },
    footDown: {
      why: (name: string): string => `A foot went down on ${name}.`,
      better: 'have an easy gear before it gets steep.',
    },
    heavy: {
      why: (from: string, percent: string, front: boolean): string =>
        `Heavy ${front ? 'ring change' : 'shift'} at ${from}, at ${percent} of steady pressure.`,
      better: 'soft feet for half a turn, then shift.',
      betterHub: 'take the pressure off, then the hub takes its gear.',
      betterMotor: 'let go a breath sooner, until the motor has let go, too.',
    },
    waited: {
      why: (from: string): string => `At ${from} the chain waited: your legs rested.`,
      better: 'keep turning the pedals, softly, while it moves.',
    },
    crossed: {
      why: (from: string, n: number): string => `The chain ran at a slant for ${seconds(n)} from ${from}.`,
      better: 'change the chainring sooner.',
    },
    many: {
      why: (made: number, needed: number): string =>
        `You made ${changesOfGear(made)}; the best ride ${count(needed)}.`,
      better: 'let short rises roll by.',
    },
    undone: {
      why: (from: string): string => `A shift at ${from} was taken back at once.`,
      better: 'give a new gear three turns of the pedals.',
    },
  },
  doing: {
    title: 'And now',
    again: 'Ride again',
    next: (level: string): string => `Next: ${level}`,
    watch: 'Watch from the start',
    print: 'Print',
    saveRide: 'Save the ride',
    savePicture: 'Save a picture',
    saved: {
      saving: 'Keeping the ride …',
      saved: 'This ride is kept on this device.',
      'not-saved': 'This ride was not kept.',
    },
    pictureFailed: 'This browser could not draw the picture. Printing works too.',
  },
  differs: 'Ridden again, this recording came out a little differently. The picture may be off.',
  closed: 'The rest opens when you have guessed.',
  print: {
    title: 'Before the Hill: a ride',
    subtitle: (level: string, bike: string, rider: string): string => `${level} · ${bike} · ${rider}`,
    legend:
      'Black: you. Grey: the best ride found for this bike and rider. Dot: clean shift; half: a bit heavy; triangle: heavy. Cross: a foot went down.',
  },
};

/** What the debrief needs of a language or an audience. */
export type DebriefWords = typeof debriefWords;

/** What stands round a debrief: where it leads, and whether the ride has been kept. */
export const debriefPageWords = {
  backToGroup: 'Back to the group',
  backToBench: 'Back to the level bench',
  freshPatch: (lesson: string): string => `A new patch is yours: ${lesson}.`,
  notSaved: {
    'private-window':
      'This ride is not kept: the browser keeps nothing in this window. Save it as a file, or open a normal window.',
    'disk-full':
      'This ride is not kept: the device has no room left. Save it as a file, or make room; the game will try again.',
    'connection-lost':
      'This ride is not kept yet: the browser lost its store. Save it as a file; the game will try again.',
    'newer-version':
      'This ride is not kept: a newer version of the game has been here. Load the page anew to update.',
    blocked:
      'This ride is not kept: another tab of the game is in the way. Close it; the game will try again.',
    hangs: 'This ride is not kept yet: the browser does not answer. Save it as a file to be safe.',
    corrupt: 'This ride is not kept: something stored here cannot be read. Save it as a file.',
    'somebody-else': 'This ride was ridden together with others and is not kept here. Save it as a file.',
    trial: 'A test ride is not kept.',
    'not-judged': 'This ride could not be worked out, so it is not kept. Save it as a file.',
    'not-fetched':
      'This ride is not kept yet: a part of the game could not be fetched. Check the connection; the game will try again. Save it as a file to be safe.',
  } as Readonly<Record<string, string>>,
  localBackup: 'Its marks are kept, the ride itself is not.',
};
