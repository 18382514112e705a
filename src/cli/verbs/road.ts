/** `road`: what the page "On the road" would say of a recorded ride, without keeping anything of it. */
import type { Road } from '../../core/gpx/road.ts';
import { readChainrings, type Reading, readSprockets, readTyre } from '../../core/model/bikeInput.ts';
import type { Bike } from '../../core/model/types.ts';
import { meansOf, keptRide } from '../../core/recorded/kept.ts';
import {
  type RoadPitch,
  type RoadRideFigures,
  type RoadRideProblem,
  type RoadRider,
  riderOf,
  roadRide,
  withBest,
} from '../../core/recorded/rideFigures.ts';
import { sentenceOf } from '../../words/problems.ts';
import { type Args, needed } from '../common/args.ts';
import { BadInput } from '../common/badInput.ts';
import { bikeFrom, riderFrom, roadFrom } from '../common/choose.ts';
import { fixed, table } from '../common/print.ts';
import type { Verb, VerbAnswer } from '../common/verb.ts';

const PROBLEMS: Readonly<Record<RoadRideProblem, string>> = {
  'no-times': 'The file does not say when it was ridden, or its times run backwards.',
  'too-sparse':
    'Most of the ride has no point a second: its points lie more than 3 s apart, too far for telling gears.',
  'no-cadence': 'There is no cadence in the file, so gears cannot be told.',
  'cadence-stuck': 'The cadence in the file is one number all along, so it was not measured.',
};

export const road: Verb = {
  usage:
    '--file F --bike ID --rider ID [--rings 50/34] [--sprockets 11-28] [--tyre 25-622] [--teeth-unknown] [--heights metres|feet] [--quick]',
  summary: 'says of a recorded ride where the easier gears came, pitch by pitch, beside the best ride',
  flags: {
    file: 'text',
    bike: 'text',
    rider: 'text',
    rings: 'text',
    sprockets: 'text',
    tyre: 'text',
    heights: 'text',
    'teeth-unknown': 'switch',
    quick: 'switch',
  },
  takesFiles: false,
  run(args) {
    const path = needed(args, 'file', 'a GPX file with cadence');
    const who: RoadRider = {
      bike: riddenBike(args),
      rider: riderFrom(args),
      teethKnown: !args.switches.has('teeth-unknown'),
    };
    const made = roadFrom(args, path);
    if (!made.ok)
      throw new BadInput(`"${path}" cannot be looked at: ${made.problems.map(sentenceOf).join(' ')}`);
    const ridden = roadRide(made.road, made.month, who);
    if (!ridden.ok) throw new BadInput(`"${path}": ${PROBLEMS[ridden.why]}`);
    const figures = args.switches.has('quick') ? ridden.figures : judged(ridden.road, ridden.figures, who);
    return answer(figures, who);
  },
};

/** The bike of the ride: a bundled one with the teeth and the tyre it really had. */
function riddenBike(args: Args): Bike {
  const bike = bikeFrom(args);
  const own = <T>(flag: string, read: (text: string) => Reading<T>, what: string): T | undefined => {
    const text = args.values.get(flag);
    if (text === undefined) return undefined;
    const reading = read(text);
    if (!reading.ok) throw new BadInput(`"${text}" after --${flag} is no ${what}.`);
    return reading.value;
  };
  const count = bike.sprocketsTeeth.length;
  const cassette = 'cassette, like 11-28 or all teeth with commas';
  return {
    ...bike,
    chainringsTeeth: own('rings', readChainrings, 'set of rings, like 50/34') ?? bike.chainringsTeeth,
    sprocketsTeeth: own('sprockets', (text) => readSprockets(text, count), cassette) ?? bike.sprocketsTeeth,
    ...own('tyre', readTyre, 'mark of a tyre, like 25-622'),
  };
}

function judged(of: Road, figures: RoadRideFigures, { bike, rider }: RoadRider): RoadRideFigures {
  const own = riderOf(figures, rider);
  return { ...figures, pitches: figures.pitches.map((pitch) => withBest(of, pitch, bike, own)) };
}

/** Whether hills stand where the legs met them. */
function heightsText(lateS: number | null): string {
  if (lateS === null) return 'No power tells whether heights came late; ± allows for it.';
  return lateS === 0 ? 'Heights came in time.' : `Heights came about ${lateS} s late; corrected.`;
}

function answer(figures: RoadRideFigures, who: RoadRider): VerbAnswer {
  const means = meansOf([keptRide(figures, who.bike, who.teethKnown)]);
  const metres = (value: number | null): string => (value === null ? '-' : fixed(value, 0));
  const percent = (value: number | null): string => (value === null ? '-' : fixed(100 * value, 0));
  const rows = figures.pitches.map((pitch: RoadPitch) => [
    fixed(pitch.footM, 0),
    fixed(pitch.endM - pitch.footM, 0),
    percent(pitch.slopeRatio),
    metres(pitch.firstEasierM),
    metres(pitch.plusMinusM),
    percent(pitch.shareAtFoot),
    metres(pitch.beforeRpm),
    metres(pitch.footRpm),
    metres(pitch.lowestRpm),
    pitch.best === null ? '-' : metres(pitch.best.firstEasierM),
  ]);
  const head = [
    'foot m',
    'long m',
    '%',
    'first easier m',
    '± m',
    'done %',
    'rpm before',
    'at foot',
    'lowest',
    'best m',
  ];
  const lines = [
    `${fixed(figures.lengthM / 1000, 1)} km, gear read on ${percent(figures.readableShare)} % of the moving time, ${figures.pitches.length} pitches.`,
    heightsText(figures.heightsLateS),
    ...(figures.cadenceHalved ? ['The sensor had counted every foot; cadences are halved.'] : []),
    ...(rows.length === 0 ? [] : [table(head, rows)]),
  ];
  return { json: { ...figures, means }, text: lines.join('\n') };
}
