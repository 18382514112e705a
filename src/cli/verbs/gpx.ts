/** `gpx`: what an import at the level bench would make of a GPX file, without keeping anything of it. */
import { readGpx } from '../../core/gpx/file.ts';
import { hardestStretch } from '../../core/gpx/hardest.ts';
import { importRoad, type Road } from '../../core/gpx/road.ts';
import type { Problem } from '../../core/level/problems.ts';
import { sentenceOf } from '../../words/problems.ts';
import { needed } from '../common/args.ts';
import { readBytes } from '../common/files.ts';
import { fixed } from '../common/print.ts';
import { spoken } from '../common/spoken.ts';
import type { VerbAnswer, Verb } from '../common/verb.ts';

export const gpx: Verb = {
  usage: '--file F',
  summary: 'says what road a GPX file would make, and how far its elevations can be trusted',
  flags: { file: 'text' },
  takesFiles: false,
  run(args) {
    const path = needed(args, 'file', 'a GPX file');
    const read = readGpx(readBytes(path), (label) => new TextDecoder(label));
    const made = read.ok ? importRoad(read.file) : read;
    return made.ok ? describe(made.road) : refuse(path, made.problems);
  },
};

function refuse(path: string, problems: readonly Problem[]): VerbAnswer {
  const nothing = { lengthM: null, ascentM: null, steepestPercent: null, quality: null, qualityReasons: [] };
  return {
    json: { ...nothing, problems: problems.map(spoken), questions: [] },
    text: `No road can be made of "${path}".`,
    complaint: problems.map(sentenceOf).join(' '),
  };
}

function describe(road: Road): VerbAnswer {
  const { lengthM, ascentM, quality, problems, questions, points, cappedM, halfWidthM } = road;
  const hardest = hardestStretch(road);
  const steepestPercent = road.steepestRatio * 100;
  const lines = [
    `${fixed(lengthM / 1000, 2)} km with ${fixed(ascentM, 0)} m of ascent, up to ${fixed(steepestPercent, 1)} %, from ${points} points.`,
    `Its elevations are ${quality.grade}; slopes are averaged over ${2 * halfWidthM} m.`,
    `It climbs hardest from ${hardest.fromM} m to ${hardest.toM} m.`,
    ...[...quality.reasons, ...problems, ...questions].map(sentenceOf),
  ];
  return {
    json: {
      lengthM,
      ascentM,
      steepestPercent,
      steepestDescentPercent: road.steepestDescentRatio * 100,
      quality: quality.grade,
      qualityReasons: quality.reasons.map(spoken),
      problems: problems.map(spoken),
      questions: questions.map(spoken),
      points,
      cappedM,
      halfWidthM,
      hardest,
    },
    text: lines.join('\n'),
  };
}
