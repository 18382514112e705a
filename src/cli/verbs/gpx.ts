/** `gpx`: what an import at the level bench would make of a GPX file, without keeping anything of it. */
import { hardestStretch } from '../../core/gpx/hardest.ts';
import { levelFromRoad } from '../../core/gpx/level.ts';
import type { Road } from '../../core/gpx/road.ts';
import type { Problem } from '../../core/level/problems.ts';
import { sentenceOf } from '../../words/problems.ts';
import { type Args, needed, numberOf } from '../common/args.ts';
import { BadInput } from '../common/badInput.ts';
import { openLines } from '../common/files.ts';
import { roadFrom } from '../common/choose.ts';
import { fixed, spoken } from '../common/print.ts';
import type { VerbAnswer, Verb } from '../common/verb.ts';

export const gpx: Verb = {
  usage: '--file F [--heights metres|feet] [--out LEVEL.json [--from M] [--to M] [--title T]]',
  summary:
    'says what road a GPX file would make, and how far its elevations can be trusted; writes its hardest stretch, or the one asked for, as a level',
  flags: { file: 'text', heights: 'text', out: 'text', from: 'text', to: 'text', title: 'text' },
  takesFiles: false,
  run(args) {
    const path = needed(args, 'file', 'a GPX file');
    const made = roadFrom(args, path);
    if (!made.ok) return refuse(path, made.problems);
    const said = describe(made.road);
    const written = writeLevel(made.road, args);
    return written === null
      ? said
      : { json: { ...said.json, level: written }, text: `${said.text}\n${written.sentence}` };
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

/** Writes a stretch as a level where that is asked for. */
function writeLevel(road: Road, args: Args): { levelId: string; out: string; sentence: string } | null {
  const out = args.values.get('out');
  if (out === undefined) {
    const needless = ['from', 'to', 'title'].find((name) => args.values.has(name));
    if (needless !== undefined)
      throw new BadInput(`--${needless} is about a level; say where it goes with --out.`);
    return null;
  }
  const hardest = hardestStretch(road);
  const metres = (what: string) => ({ low: 0, high: road.lengthM, what });
  const fromM = numberOf(args, 'from', metres('where the level begins (m)'), hardest.fromM);
  const toM = numberOf(args, 'to', metres('where the level ends (m)'), hardest.toM);
  const title = args.values.get('title') ?? 'A recorded road';
  const made = levelFromRoad(road, { fromM, toM, title, sentence: 'A road from a recorded ride.' });
  if (!made.ok) throw new BadInput(made.problems.map(sentenceOf).join(' '));
  const file = openLines(out, '.json');
  file.line(JSON.stringify(made.level, null, 2));
  file.close();
  const sentence = `Wrote ${fixed(fromM, 0)} m to ${fixed(toM, 0)} m as the level "${made.level.id}" to "${out}".`;
  return { levelId: made.level.id, out, sentence };
}

function describe(road: Road) {
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
