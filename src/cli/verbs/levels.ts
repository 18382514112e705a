/**
 * `levels`: reads level files, lists what is wrong with them, and never changes them. Without files it
 * walks those that come with the game.
 */
import { courseOfLevel } from '../../core/level/build.ts';
import { parseLevelText } from '../../core/level/parse.ts';
import { bundledLevelFiles, readTextFile } from '../common/files.ts';
import { countedOrNo, fixed, spoken, table } from '../common/print.ts';
import { BadInput } from '../common/badInput.ts';
import type { Verb } from '../common/verb.ts';

/** A problem as it is printed; those of files and of twins are found here, the others by the core. */
interface LevelProblem {
  readonly path: string;
  readonly code: string;
  readonly sentence: string;
}

interface LevelLine {
  readonly file: string;
  readonly ok: boolean;
  readonly id: string | null;
  readonly title: string | null;
  readonly teaches: string | null;
  readonly lengthM: number | null;
  readonly pitchCount: number | null;
  readonly problems: readonly LevelProblem[];
}

export const levels: Verb = {
  usage: '[FILE …]',
  summary: 'checks levels and says what is wrong with them, and where',
  flags: {},
  takesFiles: true,
  run(args) {
    const paths = args.files.length > 0 ? args.files : bundledLevelFiles();
    const lines = markTwins(paths.map(lineFor));
    const problems = lines.flatMap((line) =>
      line.problems.map((problem) => ({ file: line.file, ...problem })),
    );
    const bad = lines.filter((line) => !line.ok);
    const listed = problems.map(
      ({ file, path, sentence }) => `${file}${path === '' ? '' : ` ${path}`}: ${sentence}`,
    );
    const answer = {
      json: { ok: bad.length === 0, levels: lines, problems },
      text: [overview(lines.filter((line) => line.ok)), ...listed].filter((part) => part !== '').join('\n'),
    };
    if (bad.length === 0) return answer;
    const complaint = `${countedOrNo(problems.length, 'problem')} in ${countedOrNo(bad.length, 'level file')}: ${bad.map((line) => line.file).join(', ')}.`;
    return { ...answer, complaint };
  },
};

function lineFor(file: string): LevelLine {
  const nothing = { file, ok: false, id: null, title: null, teaches: null, lengthM: null, pitchCount: null };
  let text: string;
  try {
    text = readTextFile(file);
  } catch (error) {
    if (!(error instanceof BadInput)) throw error;
    return { ...nothing, problems: [{ path: '', code: 'unreadable', sentence: error.message }] };
  }
  const parsed = parseLevelText(text);
  if (!parsed.ok) return { ...nothing, problems: parsed.problems.map(spoken) };
  const { id, title, teaches } = parsed.level;
  const course = courseOfLevel(parsed.level);
  return {
    file,
    ok: true,
    id,
    title,
    teaches,
    lengthM: course.lengthM,
    pitchCount: course.pitches.length,
    problems: [],
  };
}

/** Two levels of one name could not be told apart in saved rides. */
function markTwins(lines: readonly LevelLine[]): LevelLine[] {
  return lines.map((line, i) => {
    const twin = lines.find((other, j) => j < i && other.id !== null && other.id === line.id);
    if (twin === undefined) return line;
    const sentence = `The id "${line.id}" is already taken by ${twin.file}. Give this level another one.`;
    return { ...line, ok: false, problems: [...line.problems, { path: 'id', code: 'taken', sentence }] };
  });
}

function overview(lines: readonly LevelLine[]): string {
  if (lines.length === 0) return '';
  return table(
    ['level', 'length m', 'pitches', 'teaches'],
    lines.map((line) => [
      line.id ?? '',
      fixed(line.lengthM ?? 0, 0),
      String(line.pitchCount ?? 0),
      line.teaches ?? '',
    ]),
  );
}
