/** The guide of the command line, done as it says: its level is written, its lines are run, its promise is kept. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { REPORT_COLUMNS } from '../../src/core/group/records/report.ts';
import { repository, run, workshop } from './workshop.ts';

const shop = workshop();
const guide = readFileSync(join(repository, 'src/cli/GUIDE.md'), 'utf8');
const blocks = (kind: string): string[] =>
  [...guide.matchAll(new RegExp(`\`\`\`${kind}\\n([\\s\\S]*?)\`\`\``, 'g'))].map(([, block = '']) => block);

describe('the guide', () => {
  it('has an example that works from its first line to its last', () => {
    shop.write('hill.json', blocks('json')[0] ?? '');
    const lines = blocks('sh').flatMap((block) => block.trim().split('\n'));
    expect(lines.map((line) => line.split(' ')[0])).toEqual(['levels', 'ride', 'batch']);
    for (const line of lines) {
      const words = line
        .split(' ')
        .map((word) => (/^(?:hill\.json|rides\.csv)$/.test(word) ? shop.path(word) : word));
      const { exitCode, err } = run(...words);
      expect([line, exitCode, err]).toEqual([line, 0, '']);
    }
    const [head = '', ...rows] = shop.read('rides.csv').trim().split('\n');
    for (const column of [
      'levelId',
      'bikeId',
      'riderId',
      'player',
      'seed',
      'finishedS',
      'footDowns',
      'shifts',
      'total',
      'passed',
    ])
      expect(head.split(',')).toContain(column);
    const total = (player: string): number => {
      const found = rows.filter((row) => row.includes(`,${player},`)).map((row) => Number(row.split(',')[8]));
      expect(found).toHaveLength(10);
      return found.reduce((a, b) => a + b, 0) / 10;
    };
    expect(total('skill:0.9')).toBeGreaterThan(total('skill:0.2') + 10);
  });

  it('tells every column of a group, in their order', () => {
    const told = [...guide.matchAll(/^\| `(\w+)` +\| \w.+ \|$/gm)].map(([, column]) => column);
    expect(told).toEqual(Object.keys(REPORT_COLUMNS));
  });

  it('says of every verb it names only what there is', () => {
    const help = run('help').out;
    for (const verb of ['levels', 'ride', 'clinic', 'batch', 'gpx', 'road'])
      expect(help).toContain(`  ${verb} --`.replace('levels --', 'levels '));
  });
});
