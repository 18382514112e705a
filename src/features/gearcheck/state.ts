/** What the gear check has heard so far, and the one reducer that changes it. */
import type { GearCandidate, GearOutcome } from '../../core/coach/gearCheck.ts';

export interface CheckState {
  readonly own: GearOutcome | null;
  /** In the order they came. */
  readonly candidates: readonly GearCandidate[];
  readonly status: 'working' | 'done' | 'failed';
  /** Grows when the same question is to be asked again. */
  readonly attempt: number;
}

export type CheckAction =
  | { readonly kind: 'start' | 'again' | 'done' | 'failed' }
  | { readonly kind: 'own'; readonly outcome: GearOutcome }
  | { readonly kind: 'candidate'; readonly candidate: GearCandidate };

export const NOTHING_HEARD: CheckState = { own: null, candidates: [], status: 'working', attempt: 0 };

/** The next state. The own bike comes first, and whenever it comes, everything before it is forgotten. */
export function reduceCheck(state: CheckState, action: CheckAction): CheckState {
  const { attempt } = state;
  switch (action.kind) {
    case 'start':
      return { ...NOTHING_HEARD, attempt };
    case 'again':
      return { ...NOTHING_HEARD, attempt: attempt + 1 };
    case 'own':
      return { own: action.outcome, candidates: [], status: 'working', attempt };
    case 'candidate':
      return { ...state, candidates: [...state.candidates, action.candidate] };
    case 'done':
      return { ...state, status: 'done' };
    case 'failed':
      return { ...state, status: 'failed' };
  }
}
