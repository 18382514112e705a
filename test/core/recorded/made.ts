/**
 * Rides on a real road as a device would have written them: a ride of the core sampled once a second, on places that
 * wander like those of a receiver, with whole turns a minute, lost cadence and heights in steps of a decimetre. What is
 * true is handed along, so that what is read out of the file can be compared.
 */
import { buildCourse } from '../../../src/core/course/build.ts';
import type { Piece } from '../../../src/core/course/pieces.ts';
import type { Course } from '../../../src/core/course/types.ts';
import type { GpxFile } from '../../../src/core/gpx/types.ts';
import { readGpx } from '../../../src/core/gpx/file.ts';
import { importRoad, type Road } from '../../../src/core/gpx/road.ts';
import { rpmToRadPerS } from '../../../src/core/math/numbers.ts';
import { seededRandom } from '../../../src/core/math/random.ts';
import { bikeById, riderById } from '../../../src/core/model/presets.ts';
import { rideThrough } from '../../../src/core/ride/run.ts';
import type { TraceSample } from '../../../src/core/ride/trace.ts';
import { buildRideWorld } from '../../../src/core/ride/world.ts';
import { type Habits, virtualRider } from '../../../src/core/virtual/riders.ts';

/** Metres of one degree along a meridian, as far as a made file needs it. */
const DEGREE_M = 111_195;
/** The receiver wanders by so much from second to second, and is drawn back so strongly (m, share). */
const WANDER_M = 0.22;
const DRAWN_BACK = 0.03;
/** One reading of cadence in so many is lost. */
const LOST_ONE_IN = 40;

/** Roads of pitches with a way to each and a descent behind it; steepness and lengths by a seed. */
export function roadOfPitches(count: number, seed: number): Course {
  const random = seededRandom(seed);
  const pieces: Piece[] = [];
  for (let i = 0; i < count; i += 1) {
    const slopeRatio = 0.06 + 0.04 * random();
    const lengthM = 100 + Math.round(60 * random());
    pieces.push({ kind: 'flat', lengthM: 180 + Math.round(80 * random()) });
    pieces.push({ kind: 'pitch', lengthM, slopeRatio });
    pieces.push({ kind: 'flat', lengthM: 60 });
    pieces.push({ kind: 'descent', lengthM: Math.round((lengthM * slopeRatio) / 0.04), slopeRatio: 0.04 });
  }
  return buildCourse({ joinM: 14, seed, stopLinesM: [], winds: [], surfaces: [], hidden: [], pieces });
}

/** A ride and what was written of it. */
export interface MadeRide {
  readonly course: Course;
  readonly samples: readonly TraceSample[];
  readonly text: string;
  readonly file: GpxFile;
  readonly road: Road;
}

/** What a device writes besides: heights so many seconds late, and power at the pedals. */
interface Device {
  readonly lateS: number;
  readonly power: boolean;
}

/** Lets somebody ride and writes it down. */
export function madeRide(
  course: Course,
  bikeId: string,
  riderId: string,
  habits: Habits,
  seed: number,
  device: Device = { lateS: 0, power: false },
): MadeRide {
  const world = buildRideWorld(course, bikeById(bikeId)!, riderById(riderId)!);
  const { trace } = rideThrough(world, virtualRider(world, habits, seed));
  const text = written(course, trace.samples, seed, device, world.machine.referenceTorqueNm);
  const read = readGpx(new TextEncoder().encode(text), (label) => new TextDecoder(label));
  if (!read.ok) throw new Error(read.problems[0]?.code);
  const made = importRoad(read.file);
  if (!made.ok) throw new Error(made.problems[0]?.code);
  return { course, samples: trace.samples, text, file: read.file, road: made.road };
}

function written(
  course: Course,
  samples: readonly TraceSample[],
  seed: number,
  { lateS, power }: Device,
  referenceTorqueNm: number,
): string {
  const random = seededRandom(seed + 17);
  const spread = (): number => (random() + random() + random() - 1.5) * 2;
  let along = 0;
  let across = 0;
  const points: string[] = [];
  for (let i = 0; i < samples.length; i += 10) {
    const { distanceM, cadenceRpm, timeS, torqueRatio, pedalling } = samples[i]!;
    const passedM = samples[Math.max(0, i - 10 * lateS)]!.distanceM;
    const powerW = pedalling ? torqueRatio * referenceTorqueNm * rpmToRadPerS(cadenceRpm) : 0;
    along = along * (1 - DRAWN_BACK) + WANDER_M * spread();
    across = across * (1 - DRAWN_BACK) + WANDER_M * spread();
    const lat = 47 + (distanceM + along) / DEGREE_M;
    const lon = 8 + across / (DEGREE_M * 0.682);
    const height = 500 + (course.heightM[Math.round(passedM)] ?? 0) + 0.05 * spread();
    const lost = random() < 1 / LOST_ONE_IN;
    const time = new Date(Date.UTC(2026, 4, 17, 9, 30, 0) + Math.round(timeS) * 1000).toISOString();
    points.push(
      `<trkpt lat="${lat.toFixed(7)}" lon="${lon.toFixed(7)}"><ele>${height.toFixed(1)}</ele><time>${time}</time>${
        lost
          ? ''
          : `<extensions>${power ? `<power>${Math.round(powerW)}</power>` : ''}<sensor><cad>${Math.round(cadenceRpm)}</cad></sensor></extensions>`
      }</trkpt>`,
    );
  }
  return `<?xml version="1.0"?><gpx version="1.1" xmlns="http://www.topografix.com/GPX/1/1"><trk><name>Sunday at the lake</name><trkseg>${points.join('')}</trkseg></trk></gpx>`;
}
