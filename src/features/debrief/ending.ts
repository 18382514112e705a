/** What became of a ride, as far as it can be said of its level. */
import type { RideReport } from '../../core/coach/types.ts';
import type { DebriefProps } from './types.ts';

export type Ending = 'passed' | 'not-yet' | 'ridden';

export function endingOf({ teaches }: DebriefProps['level'], { passed }: RideReport): Ending {
  if (teaches === 'check' || teaches === 'free') return 'ridden';
  return passed ? 'passed' : 'not-yet';
}
