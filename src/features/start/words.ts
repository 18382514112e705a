/** Sentences of the start page. */
import { commonWords } from '../../words/common.ts';

export const startWords = {
  ride: 'Ride',
  rideAgain: 'Ride on',
  byEar: 'Ride by ear',
  byEye: 'Ride by eye',
  children: commonWords.nav.children,
  childrenHint: 'Short hills and a basket of apples',
  levels: 'All levels',
  levelsHint: (done: number, all: number): string => `${done} of ${all} ridden`,
  bike: 'My bike',
  about: 'How to play',
  aboutHint: 'and care, and privacy',
  progress: commonWords.nav.progress,
  progressHint: 'Check rides, your marks, and what is kept',
  gearCheck: commonWords.nav.gearCheck,
  gearCheckHint: 'Would other sprockets get me up this hill?',
  two: commonWords.nav.two,
  twoHint: 'Side by side on the same road',
  clinic: commonWords.nav.clinic,
  clinicHint: 'A group on one device or many, no names',
  teachHint: 'An hour with a group, with drills for outside',
  newer: 'A newer version is here.',
  loadNewer: 'Use it',
  picture: 'A rider on a bicycle comes to the foot of a hill.',
  benchHint: 'Build a road, or bring one you rode',
};
