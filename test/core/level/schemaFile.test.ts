/** The shape of a level as a file for editors: it is what the schema says, and agrees with the parser. */
import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { levelSchemaText, SCHEMA_FILE } from '../../figures/level-schema.ts';

describe('levels/level.schema.json', () => {
  it('is current; if not, run npx tsx test/figures/level-schema.ts', () => {
    expect(existsSync(SCHEMA_FILE)).toBe(true);
    expect(readFileSync(SCHEMA_FILE, 'utf8')).toBe(levelSchemaText());
  });

  it('asks only for what a level file must have', () => {
    const { required, additionalProperties } = JSON.parse(levelSchemaText()) as {
      required: string[];
      additionalProperties: boolean;
    };
    expect(required).toEqual(
      expect.arrayContaining(['schema', 'id', 'pieces', 'aids', 'weights', 'passMark']),
    );
    expect(required).not.toContain('joinM');
    expect(additionalProperties).toBe(false);
  });
});
