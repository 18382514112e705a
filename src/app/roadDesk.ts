/**
 * The page of recorded rides joined to the reader of files and to keeping. Fetched with the page. Files are read one at
 * a time; of a ride only the numbers somebody asked to keep are kept.
 */
import { KEPT_RIDE_SCHEMA, type KeptRoadRide, readKeptRide } from '../core/recorded/kept.ts';
import type { RoadPitch, RoadRider } from '../core/recorded/rideFigures.ts';
import type { BroughtRide, RideFile, RoadDesk, RoadTold } from '../features/road/services.ts';
import { createGpxImporter } from '../worker/gpxClient.ts';
import type { Keeping } from './device/persistence.ts';
import { workplace } from './device/workplace.ts';
import { inTurn } from '../storage/inTurn.ts';
import { type RecordKind, recordOf } from '../storage/ladder.ts';

const ROAD_RIDES: RecordKind<KeptRoadRide> = {
  kind: 'road-ride',
  schema: KEPT_RIDE_SCHEMA,
  read: readKeptRide,
};

export function openRoadDesk(keeping: Keeping): RoadDesk {
  const importer = createGpxImporter(workplace);
  importer.prepare();
  /** One file after the other: the reader holds one at a time. */
  const oneByOne = inTurn();
  const look = async (ride: RideFile, who: RoadRider, told: Partial<RoadTold>): Promise<BroughtRide> => {
    const { file, heights } = ride;
    const read = await importer.read(file, told.onShare ?? (() => undefined)).outcome;
    const outcome = read.kind === 'road' && heights !== null ? await importer.answer({ heights }) : read;
    const feet = outcome.kind === 'road' && outcome.road.questions.find(({ path }) => path === 'heights');
    if (feet) told.onFeet?.(feet);
    if (outcome.kind === 'refused') return { kind: 'refused', problems: outcome.problems };
    if (outcome.kind === 'cancelled') return { kind: 'useless', why: 'no-road' };
    const ridden = await importer.ridden(who);
    return ridden.ok ? { kind: 'ride', figures: ridden.figures } : { kind: 'useless', why: ridden.why };
  };
  const read = async (ride: RideFile, who: RoadRider, told: RoadTold): Promise<BroughtRide> => {
    const brought = await look(ride, who, told);
    if (brought.kind !== 'ride') return brought;
    let { figures } = brought;
    told.onFigures(figures);
    for (const [i, pitch] of figures.pitches.entries()) {
      const judged: RoadPitch = await importer.best(who, pitch);
      figures = { ...figures, pitches: figures.pitches.with(i, judged) };
      told.onFigures(figures);
    }
    return { kind: 'ride', figures };
  };
  return {
    read: (ride, who, told) => oneByOne(() => read(ride, who, told)),
    again: (ride, who, pitch, words) =>
      oneByOne(async () => {
        await look(ride, who, {});
        return importer.again(pitch, words);
      }),
    async keepLevel(level) {
      const { saved } = await (await keeping.storage).saveLevel(level);
      await keeping.refresh();
      return saved;
    },
    ...keptRides(keeping),
  };
}

function keptRides(keeping: Keeping): Pick<RoadDesk, 'rides' | 'keep' | 'forget'> {
  return {
    async rides() {
      return (await (await keeping.storage).listRecords(ROAD_RIDES)).map(({ data }) => data);
    },
    async keep(ride) {
      const record = recordOf(ROAD_RIDES, ride.id, ride);
      return (await (await keeping.storage).putRecord(record)).saved;
    },
    async forget(id) {
      await (await keeping.storage).deleteRecords(ROAD_RIDES.kind, [id]);
    },
  };
}
