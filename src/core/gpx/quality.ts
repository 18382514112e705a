/**
 * How far the elevations of an imported road can be trusted: a grade and its reasons, each with its number. The
 * limits are ours; they say how much of a road, or how much of its slope, may be made up or noise.
 */
import type { JudgedHeights } from './heights.ts';
import type { Trail } from './trail.ts';
import { type QualityCode, type RoadNote, roadNote } from './types.ts';

type QualityGrade = 'good' | 'fair' | 'poor';

/** The grade is that of the worst reason. */
interface Quality {
  readonly grade: QualityGrade;
  readonly reasons: readonly (RoadNote & { readonly grade: QualityGrade })[];
}

interface QualityFacts extends JudgedHeights, Pick<Trail, 'medianStepM' | 'placeStepM'> {
  /** `placeStepM` over the usual distance of points. */
  readonly placeStepRatio: number;
  /** Shares of the road's length (0 to 1). */
  readonly holeShare: number;
  readonly bridgedShare: number;
  readonly jumpCount: number;
  readonly halfWidthM: number;
  /** Standard deviation of the fitted slopes through the noise (rise over run). */
  readonly slopeNoiseRatio: number;
  readonly pointCount: number;
}

interface Rule {
  readonly code: QualityCode;
  /** The number that is judged, and from where on it makes a road fair or poor. */
  readonly of: (facts: QualityFacts) => number;
  readonly fairFrom: number;
  readonly poorFrom: number;
  /** Name of the number in the values of the reason. */
  readonly unit: string | null;
}

const RULES: readonly Rule[] = [
  { code: 'sparse', of: (facts) => facts.medianStepM, fairFrom: 30, poorFrom: 90, unit: 'stepM' },
  // Steps to and fro lengthen a road by some 10 m² over the square of the distance of its points: 1 % and 5 %.
  { code: 'rounded-places', of: (facts) => facts.placeStepRatio, fairFrom: 0.35, poorFrom: 0.75, unit: null },
  {
    code: 'elevation-missing',
    of: (facts) => facts.missingShare,
    fairFrom: 0.01,
    poorFrom: 0.5,
    unit: 'share',
  },
  { code: 'holes', of: (facts) => facts.holeShare, fairFrom: 1e-9, poorFrom: 0.15, unit: 'share' },
  { code: 'bridged', of: (facts) => facts.bridgedShare, fairFrom: 1e-9, poorFrom: 0.02, unit: 'share' },
  { code: 'jumps', of: (facts) => facts.jumpCount, fairFrom: 1, poorFrom: 1, unit: 'jumpCount' },
  {
    code: 'noisy',
    of: (facts) => facts.slopeNoiseRatio,
    fairFrom: 0.004,
    poorFrom: 0.009,
    unit: 'slopeNoiseRatio',
  },
  {
    code: 'spikes',
    of: (facts) => facts.spikeCount / Math.max(1, facts.pointCount),
    fairFrom: 0.01,
    poorFrom: 0.1,
    unit: 'share',
  },
  {
    code: 'whole-metres',
    of: (facts) => (facts.wholeMetres ? 1 : 0),
    fairFrom: 1,
    poorFrom: 2,
    unit: 'heightStepM',
  },
  { code: 'all-equal', of: (facts) => (facts.allEqual ? 1 : 0), fairFrom: 1, poorFrom: 1, unit: null },
];

export function qualityOf(facts: QualityFacts): Quality {
  const reasons = RULES.flatMap((rule) => {
    const value = rule.of(facts);
    if (value < rule.fairFrom) return [];
    const grade: QualityGrade = value >= rule.poorFrom ? 'poor' : 'fair';
    const { noiseM, halfWidthM } = facts;
    const values = {
      ...(rule.unit === null ? {} : { [rule.unit]: value }),
      ...(rule.code === 'rounded-places' ? { stepM: facts.placeStepM } : {}),
      ...(rule.code === 'noisy' ? { noiseM, halfWidthM } : {}),
    };
    return [{ ...roadNote('elevation', rule.code, values), grade }];
  });
  const worst = (['poor', 'fair'] as const).find((grade) => reasons.some((reason) => reason.grade === grade));
  return { grade: worst ?? 'good', reasons };
}
