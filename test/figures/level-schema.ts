/**
 * Writes the shape of a level as JSON Schema, so that editors can check and complete level files. Run it with
 * `npx tsx test/figures/level-schema.ts` after a change of the schema; a test says when it was forgotten.
 */
import { realpathSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as z from 'zod/mini';
import { levelSchema } from '../../src/core/level/schema.ts';

/** Where it lies. */
export const SCHEMA_FILE = fileURLToPath(new URL('../../levels/level.schema.json', import.meta.url));

/** Its text. Parts with a usual value may be left out of a file, as the input of the parser. */
export function levelSchemaText(): string {
  const schema = z.toJSONSchema(levelSchema, { io: 'input', target: 'draft-2020-12' });
  return `${JSON.stringify({ title: 'A level of Before the Hill', ...schema }, null, 2)}\n`;
}

const started = process.argv[1];
if (started !== undefined && realpathSync(started) === fileURLToPath(import.meta.url))
  writeFileSync(SCHEMA_FILE, levelSchemaText());
