/** A level from a file that somebody chose or dropped. */
import { type ParseResult, parseLevelText } from '../../core/level/parse.ts';
import { LIMITS } from '../../core/math/limits.ts';

/** Reads a file as a level; one that is far too big to be one is not read at all. */
export async function levelOfFile(file: Blob): Promise<ParseResult> {
  if (file.size > LIMITS.level.bytes.most)
    return { ok: false, problems: [{ about: 'level', path: '', code: 'too-big', values: {} }] };
  return parseLevelText(await file.text());
}
