/**
 * Drills on the real bike, as a coach would lay them out. Common practice, no source, where nothing else is said: no
 * national standard was found that says which gear to start and to stop in.
 */
import type { DrillId } from '../../core/group/sessionPlan.ts';

/** One drill. Sentences are short enough to be called across a yard. */
export interface Drill {
  readonly title: string;
  readonly doing: readonly string[];
  readonly needs: string;
  readonly safe: string;
  readonly watch: string;
  readonly easier: string;
  readonly harder: string;
}

/** The drills. */
export const DRILL_WORDS: Readonly<Record<DrillId, Drill>> = {
  cone: {
    title: 'Click at the cone',
    doing: [
      'A cone stands ten metres before the slope, or before a chalk line.',
      'Ride up to it at an easy pace, eyes on the slope.',
      'At the cone: soft feet, one click easier, ride on.',
    ],
    needs: 'Two cones, chalk, 40 m of quiet flat ground with a gentle slope or a line.',
    safe: 'One rider at a time, all in one direction, six bike lengths apart. Nobody waits in the run-out.',
    watch: 'Is the click at the cone, and done before the slope? Do the heads stay up?',
    easier: 'No click at first: say “now” at the cone.',
    harder: 'Take the cone away. Each chooses the place and says “now”.',
  },
  'soft-feet': {
    title: 'Soft feet past the coach',
    doing: [
      'Ride past the coach at an easy pace.',
      'One click with soft feet, just before the coach.',
      'Listen: a quiet click is a good one.',
    ],
    needs: '40 m of quiet flat ground, and a bike whose gears were checked before.',
    safe: 'The coach stands to the side and never in the line. No fingers near a chain.',
    watch:
      'Do the legs stop? They should push softly and go on turning. With a hub gear they rest; with a motor at the crank they wait a breath.',
    easier: 'Only soft feet, no click.',
    harder: 'Two clicks, one after the other, with a turn of the cranks between.',
  },
  'starting-gear': {
    title: 'Stop in the starting gear',
    doing: [
      'Ride towards the stop line.',
      'Click easier before you brake, while the legs still turn (hub gear: stop, then click).',
      'Stop, one foot down, brakes on. Set off again in that gear.',
    ],
    needs: 'Chalk for a line, 30 m of quiet flat ground. Brakes tried first by each rider.',
    safe: 'One rider at a time. The next one sets off when the one before has gone. Motor: least help, gently.',
    watch: 'Is the gear in before the wheel stops? Is the first push easy, without a wobble?',
    easier: 'Stop anywhere; the coach calls the click.',
    harder: 'The coach lifts a hand: stop at the hand.',
  },
  talk: {
    title: 'Talk and ride',
    doing: [
      'Ride a round and say aloud what is coming: “flat”, “hill”, “stop”.',
      'Say “click” when you shift for it.',
      'The one behind only listens, and tells it afterwards.',
    ],
    needs: 'A quiet closed round with one rise or a line that stands for one.',
    safe: 'Three bike lengths between riders. Nobody overtakes. Nobody turns round to talk.',
    watch: 'Is the hill said before the click, and the click before the hill?',
    easier: 'The coach says what is coming.',
    harder: 'Say it without a click; click where it is right, in silence.',
  },
};
