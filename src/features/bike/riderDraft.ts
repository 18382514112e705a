/** What a person has typed about a rider, as typed, and what it means. */
import type { Rider } from '../../core/model/types.ts';
import { words } from '../../words/words.ts';
import { readNumber } from './draft.ts';

const say = words('bike');

export interface RiderDraft {
  readonly mass: string;
  readonly power: string;
  readonly low: string;
  readonly high: string;
}

export type RiderField = keyof RiderDraft;

interface RiderReading {
  readonly rider: Rider | null;
  readonly problems: Readonly<Partial<Record<RiderField, string>>>;
}

/** Id of a rider that is not one of the bundled ones. */
const OWN_RIDER_ID = 'own';

const MASS_KG = [15, 200] as const;
const POWER_W = [20, 450] as const;
const LOW_RPM = [40, 120] as const;
const HIGH_RPM = [45, 130] as const;
/** A band narrower than this cannot be held (rpm). */
const NARROWEST_RPM = 5;
/** The bundled riders stand at about these multiples of their steady power. */
const CRITICAL_PER_STEADY = 1.16;
const RESERVE_J_PER_W = 77;

/** The draft of a rider. */
export function riderDraftOf(rider: Rider): RiderDraft {
  return {
    mass: String(rider.massKg),
    power: String(rider.steadyPowerW),
    low: String(rider.cadenceLowRpm),
    high: String(rider.cadenceHighRpm),
  };
}

/** Reads a draft. */
export function readRiderDraft(draft: RiderDraft): RiderReading {
  const massKg = readNumber(draft.mass, MASS_KG);
  const steadyPowerW = readNumber(draft.power, POWER_W);
  const cadenceLowRpm = readNumber(draft.low, LOW_RPM);
  const cadenceHighRpm = readNumber(draft.high, HIGH_RPM);
  const narrow =
    cadenceLowRpm !== null && cadenceHighRpm !== null && cadenceHighRpm - cadenceLowRpm < NARROWEST_RPM;
  const problems = {
    ...(massKg === null ? { mass: say('rider-mass-wrong') } : {}),
    ...(steadyPowerW === null ? { power: say('rider-power-wrong') } : {}),
    ...(cadenceLowRpm === null ? { low: say('rider-low-wrong') } : {}),
    ...(cadenceHighRpm === null
      ? { high: say('rider-high-wrong') }
      : narrow
        ? { high: say('rider-narrow') }
        : {}),
  };
  if (massKg === null || steadyPowerW === null || cadenceLowRpm === null || cadenceHighRpm === null || narrow)
    return { rider: null, problems };
  return { rider: riderFromForm({ massKg, steadyPowerW, cadenceLowRpm, cadenceHighRpm }), problems };
}

/** A rider from what a person knows; what lies above steady power follows from it. */
export function riderFromForm(
  told: Pick<Rider, 'massKg' | 'steadyPowerW' | 'cadenceLowRpm' | 'cadenceHighRpm'>,
): Rider {
  return {
    ...told,
    id: OWN_RIDER_ID,
    criticalPowerW: Math.round(told.steadyPowerW * CRITICAL_PER_STEADY),
    reserveJ: Math.round(told.steadyPowerW * RESERVE_J_PER_W),
  };
}
