/** Words round the session plans: titles, tools, what stands on every printed page, and where numbers come from. */
import type { SessionPart, SessionPlanCode, TeachAudience } from '../../core/group/sessionPlan.ts';
import { words as messages } from '../../words/words.ts';
import { common } from '../../words/common.ts';

const cautions = messages('cautions');

export const teachWords = {
  get title(): string {
    return common('nav-teach');
  },
  intro: 'What to say, what to ride, what to do outside on the real bike, and what to hand out.',
  back: 'All plans',
  audiences: {
    adults: 'New adults',
    mixed: 'Mixed groups',
    children: 'Children',
  } as Readonly<Record<TeachAudience, string>>,
  min: (n: number): string => `${n} min`,
  sheets: 'To hand out',
  cards: 'Drill cards',
  cardsHint: 'Four to a page, to cut',
  home: 'Sheet for home',
  homeHint: 'For a child and the parents',
  certificate: 'Certificate',
  certificateHint: 'What was learnt, no points',
  own: 'Your copies',
  open: 'Open a copy',
  openHint: 'A file that was saved here before',
  ownGone: 'A copy lives in its file. Open the file again.',
  print: 'Print',
  change: 'Change a copy',
  save: 'Save as a file',
  done: 'Show the sheet',
  changing: 'Your copy',
  changeHint: 'One sentence a line. Save it as a file before you close this page.',
  fields: { title: 'Title', minutes: 'Minutes', level: 'Road' },
  rideRoad: 'Ride this road',
  toClinic: 'Begin with a group',
  road: (title: string): string => `Road: ${title}`,
  noRoad: 'The road of this plan is not on this device.',
  parts: {
    warmUp: 'Warm up',
    say: 'Say',
    road: 'Ride in the game',
    question: 'Ask at the group picture',
    drill: 'Outside on the real bike',
    watch: 'Watch for',
    end: 'At the end',
  } as Readonly<Record<SessionPart, string>>,
  drill: {
    needs: 'Needs',
    safe: 'Kept safe',
    watch: 'Watch for',
    easier: 'Easier',
    harder: 'Harder',
  },
  problems: {
    'too-big': 'This file is too big for a session plan. Open one that was saved on this page.',
    'not-json': 'This file cannot be read. Open one that was saved on this page.',
    'not-a-session-plan': 'This file is no session plan. Open one that was saved on this page.',
    'newer-schema': 'A newer version of the game has saved this plan. Update this one, then open it again.',
    'dirty-text':
      'This plan has signs in it that cannot be shown. Take them out in an editor, then open it again.',
  } as Readonly<Record<SessionPlanCode, string>>,
  get cautions(): readonly string[] {
    return [
      cautions('title'),
      ...cautions.lines('short'),
      'Keep fingers away from a moving chain.',
      'Gears in the hub are shifted the other way round: pressure off, or standing; then push on. With a back-pedal brake, pedals do not turn back.',
      'Motors start strongly, brake later and are heavy; a driven front wheel slips on wet ground: gently, and only as local law allows. At the crank: soft feet (hub: pressure off), a breath, then shift.',
    ];
  },
  defers:
    'Follow what your federation, school or licensed instructor says; they and the law of your place come before this sheet.',
  practice: 'Everything else on this page is common practice, without a source.',
  sources: {
    adults: [
      'At most 12 riders to an instructor, two or three sessions of one to two hours; beginners one or two to an instructor (AustCycle, Australia, 2012).',
      'A course for adults has 9 hours, 5 of them riding (US adult course, docslib.org 11303719).',
      'With derailleurs, shift before it is needed and keep pedalling (Special Olympics, coaching guide, Shifting gears).',
    ],
    mixed: [
      'At most 12 riders to an instructor, two or three sessions of one to two hours (AustCycle, Australia, 2012).',
      'England, level 1, off road: 9 to 12 riders two hours, 5 to 8 an hour and a half, 2 to 4 one hour, to an instructor (delivery guide 8.3.1).',
      'With derailleurs, shift before it is needed and keep pedalling (Special Olympics, coaching guide, Shifting gears).',
    ],
    children: [
      '“Use their gears correctly (where the bike has gears)” is part of level 1, off road (UK cycle training standard, 2005).',
      'England, level 1: 9 to 12 riders two hours, 5 to 8 an hour and a half, 2 to 4 one hour, to an instructor (delivery guide 8.3.1).',
      'From 8 years, 15 to an instructor in practice, three hours (grade 1, New Zealand). About 9 years, with brakes and gears (level 1, Scotland, parents’ guide 2014).',
    ],
  } as Readonly<Record<TeachAudience, readonly string[]>>,
  homeSheet: {
    title: 'For home',
    child: 'For you',
    childLines: [
      'Today I practised clicking before the hill.',
      'Show your family which lever makes it easier.',
      'Find three hills near you. Where would you click?',
      'Listen: is your click quiet or loud?',
    ],
    draw: 'Draw a hill, and a cross where you click.',
    parents: 'For parents',
    parentLines: [
      'Before each ride look at brakes, tyres, saddle, helmet. A gear that jumps or grinds is for a mechanic.',
      'Ride together on a quiet, flat, closed place first. An adult in charge is always there.',
      'Ask “What is coming?” rather than “Shift now!”. The child finds the place.',
      'Ten minutes are enough. Stop while it is fun, and when something hurts.',
      'A chain that came off is put back by an adult, with the bike standing still.',
    ],
    name: 'Name, if you like:',
  },
  certificateSheet: {
    title: 'Certificate',
    says: 'has practised on a bicycle, and showed:',
    learnt: [
      'I look at the hill before it comes.',
      'I click before the hill, not on it.',
      'My feet are soft while the chain moves.',
      'I stop in the gear in which I start.',
      'I can say what is coming while I ride.',
    ],
    tick: 'The coach ticks what was seen. The rest comes next time.',
    date: 'Day and place:',
    coach: 'Coach:',
  },
};
