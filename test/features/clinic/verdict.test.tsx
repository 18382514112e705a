/**
 * One finding for a road: over sixty made groups the headline, the frame, the bars, the dots, "When", the table on
 * paper and the children's sentences say the same, and the same as the rides counted by hand here.
 */
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { describe, expect, it } from 'vitest';
import { groupPicture } from '../../../src/core/group/picture/group.ts';
import type { RideRecord } from '../../../src/core/group/records/record.ts';
import { levelHash } from '../../../src/core/level/build.ts';
import { GroupPicturePage } from '../../../src/features/clinic/picture.tsx';
import { Report } from '../../../src/features/clinic/report.tsx';
import type { ClinicProps } from '../../../src/features/clinic/services.ts';
import { words } from '../../../src/words/words.ts';
import { memoryShelf, openDesk, PLAN, propsOf, sessionOfThree } from '../../app/clinicGiven.ts';
import { type MadeGroup, madeGroup, TENDENCIES } from './madeGroups.ts';

const say = words('clinic');

type Kind = 'early' | 'late' | 'mixed' | 'right';
type Bars = Readonly<Record<string, number>>;

/** What a person reads off one road, all in plain numbers. */
interface Seen {
  readonly where: string;
  readonly frame: number | null;
  /** Pitches that show where the group had its gear. */
  readonly ready: number;
  /** Riders too early, about right, too late at every pitch. */
  readonly bars: readonly Bars[];
  readonly caught: string;
  readonly card: number | null;
  readonly dots: readonly number[];
  readonly timing: string;
  readonly marked: readonly string[];
  readonly times: Bars;
  readonly who: string;
  readonly paper: readonly string[];
  readonly row: number | null;
  readonly table: readonly (readonly number[])[];
  readonly answers: Readonly<Record<'where' | 'caught' | 'timing', string>>;
}

const KINDS = ['tooEarly', 'aboutRight', 'tooLate'] as const;

/** Counted here once more, in the plainest way there is. */
function counted(records: readonly RideRecord[]) {
  const riders = (index: number, timings: readonly string[]): number =>
    new Set(records.filter((r) => timings.includes(r.pitches[index]?.timing ?? '')).map((r) => r.nickname))
      .size;
  const all = new Set(records.map((r) => r.nickname)).size;
  const pitches = [0, 1, 2].map((index) => ({
    tooEarly: riders(index, ['too-early']),
    aboutRight: all - riders(index, ['too-early', 'too-late']),
    tooLate: riders(index, ['too-late']),
    either: riders(index, ['too-early', 'too-late']),
    rides: ['too-early', 'about-right', 'too-late'].map(
      (timing) => records.filter((r) => r.pitches[index]?.timing === timing).length,
    ),
  }));
  const times = [0, 1, 2].map((i) => pitches.reduce((sum, { rides }) => sum + (rides[i] ?? 0), 0));
  return { all, pitches, times, rides: records.length };
}

/** Whether what is seen is one thing, and what the rides say; a sentence for everything that is not. */
function quarrels(seen: Seen, records: readonly RideRecord[]): string[] {
  const { all, pitches, times, rides } = counted(records);
  const [early = 0, right = 0, late = 0] = times;
  const found: string[] = [];
  const agree = (what: string, a: unknown, b: unknown): void => {
    if (JSON.stringify(a) !== JSON.stringify(b)) found.push(`${what}: ${String(a)} is not ${String(b)}`);
  };
  const said = kindSaid(seen.where);
  if (early + late === 0) agree('nothing wrong', said, 'right');
  else agree('something wrong', said === 'right', false);
  // The side that is named is the greater one, everywhere.
  if (said === 'late') agree('late rides', late > early, true);
  if (said === 'early') agree('early rides', early > late, true);
  const marks = {
    late: ['tooLate'],
    early: ['tooEarly'],
    mixed: ['tooEarly', 'tooLate'],
    right: ['aboutRight'],
  };
  agree('When marks', seen.marked, marks[said]);
  agree('When says', kindSaid(seen.timing), said);
  agree(
    'When counts',
    KINDS.map((kind) => seen.times[kind]),
    [early, right, late],
  );
  agree('who', seen.who, say('picture-rides', { rides, riders: all }));
  agree(
    'bars',
    seen.bars,
    pitches.map(({ tooEarly, aboutRight, tooLate }) => ({ tooEarly, aboutRight, tooLate })),
  );
  agree(
    'table',
    seen.table.map((row) => row.slice(2)),
    pitches.map((pitch) => pitch.rides),
  );
  agree(
    'table of all',
    seen.table.map((row) => row[1]),
    pitches.map(() => all),
  );
  agree('paper', seen.paper, [seen.where, seen.caught, seen.timing]);
  const count = pitches.map((p) => (said === 'late' ? p.tooLate : said === 'early' ? p.tooEarly : p.either));
  agree('dots', seen.dots, count);
  agree(
    'table of caught',
    seen.table.map((row) => row[0]),
    count,
  );
  const named = said === 'right' ? null : Number(/[Pp]itch (\d+)/.exec(seen.where)?.[1]) - 1;
  agree('frame', seen.frame, named);
  agree('card', seen.card, named);
  agree('row', seen.row, named);
  if (named === null) agree('children', seen.answers.where, say('picture-answer-nobody'));
  else {
    const bar = pitches[named];
    if (said === 'late') agree('taller bar', (bar?.tooLate ?? 0) > (bar?.tooEarly ?? 0), true);
    if (said === 'early') agree('taller bar', (bar?.tooEarly ?? 0) > (bar?.tooLate ?? 0), true);
    agree('caught', seen.caught, say('picture-caught', { pitch: named + 1, count: count[named] ?? 0, all }));
    agree('children where', kindSaid(seen.answers.where), said);
    agree('children pitch', seen.answers.where.includes(`Hill ${named + 1}:`), true);
    if (said !== 'mixed') agree('number', seen.where.includes(`${count[named]} of ${all}`), true);
    agree(
      'children caught',
      seen.answers.caught,
      say('picture-answer-caught', { hill: named + 1, count: count[named] ?? 0, all }),
    );
  }
  agree('children when', kindSaid(seen.answers.timing), said);
  return found;
}

function kindSaid(sentence: string): Kind {
  if (/No pitch was|No hill caught|every time/.test(sentence)) return 'right';
  const [early, late] = [/early/.test(sentence), /late/.test(sentence)];
  return early && late ? 'mixed' : early ? 'early' : 'late';
}

/** Looks at everything that is shown of one road. */
async function look(
  props: ClinicProps,
  session: ReturnType<typeof sessionOfThree>,
  road: number,
): Promise<Seen> {
  const root = document.createElement('div');
  document.body.append(root);
  const find = <Kind extends Element = HTMLElement>(selector: string): Kind[] => [
    ...root.querySelectorAll<Kind>(selector),
  ];
  const text = (selector: string): string => find(selector)[0]?.textContent ?? '';
  const number = (element: Element | undefined, name: string): number | null => {
    const value = element?.getAttribute(name) ?? null;
    return value === null ? null : Number(value);
  };
  const tap = (selector: string) => act(() => find(selector)[0]?.click());
  void act(() => render(<GroupPicturePage props={props} session={session} />, root));
  const select = find<HTMLSelectElement>('.road-select select')[0];
  if (select !== undefined)
    await act(() => {
      select.value = String(road);
      select.dispatchEvent(new Event('change', { bubbles: true }));
    });
  const headline = (): string => text('.board-head h2');
  const where = headline();
  const who = text('.board-who');
  const frame = number(find('.strip-worst')[0], 'data-pitch');
  const ready = find('.group-strip-box .strip-middle-mark').length;
  const bars = [0, 1, 2].map((i) =>
    Object.fromEntries(
      KINDS.map((kind) => [
        kind,
        number(find(`[data-bar=${kind}][data-pitch="${i}"]`)[0], 'data-riders') ?? -1,
      ]),
    ),
  );
  await tap('[data-choose=caught]');
  const caught = headline();
  const card = number(find('.caught-list .worst')[0], 'data-pitch');
  const dots = find('.caught-list li').map((li) => li.querySelectorAll('.full').length);
  await tap('[data-choose=timing]');
  const timing = headline();
  const marked = find('.timing-list .worst').map((li) => li.getAttribute('data-kind') ?? '');
  const times = Object.fromEntries(
    KINDS.map((kind) => [kind, number(find(`[data-kind=${kind}]`)[0], 'data-times') ?? -1]),
  );
  await tap('.board-bar input[type=checkbox]');
  const answers = { where: '', caught: '', timing: '' };
  for (const board of ['where', 'caught', 'timing'] as const) {
    await tap(`[data-choose=${board}]`);
    expect(headline()).toBe(say(`picture-question-${board}`));
    await tap('[data-show]');
    answers[board] = headline();
  }
  void act(() => render(<Report props={props} session={session} />, root));
  const page = find('.report-road')[road];
  const paper = ['where', 'caught', 'timing'].map(
    (board) => (page?.querySelector(`[data-says=${board}]`)?.textContent ?? '').split('.')[0] ?? '',
  );
  const rows = [...(page?.querySelectorAll('.report-pitches tbody tr') ?? [])];
  const table = rows.map((row) =>
    [...row.querySelectorAll('td')]
      .slice(0, 2)
      .flatMap((td) => (td.textContent ?? '').split('/').map(Number)),
  );
  const row = number(
    rows.find((one) => one.classList.contains('worst')),
    'data-pitch',
  );
  render(null, root);
  root.remove();
  return {
    where,
    frame,
    ready,
    bars,
    caught,
    card,
    dots,
    timing,
    marked,
    times,
    who,
    paper,
    row,
    table,
    answers,
  };
}

async function lookAt(group: MadeGroup): Promise<{ seen: Seen; records: RideRecord[] }[]> {
  const plan = {
    ...PLAN,
    id: 'session-1',
    rides: group.levels.map((level) => ({ kind: 'own' as const, level })),
  };
  const session = sessionOfThree(plan);
  const desk = await openDesk(memoryShelf());
  const picture = groupPicture(group.rides);
  const props = propsOf(desk, 's/session-1/picture', { picture });
  return Promise.all(
    picture.roads.map(async ({ levelHash: hash }, road) => ({
      seen: await look(props, session, road),
      records: group.rides.map(({ record }) => record).filter((record) => record.levelHash === hash),
    })),
  );
}

const GROUPS = TENDENCIES.flatMap((tendency) =>
  ([1, 2] as const).flatMap((roads) => [1, 2, 3, 4, 5, 6].map((seed) => madeGroup(tendency, roads, seed))),
);

describe('what is said of a group', () => {
  it('is one thing on every board, on paper and for children, in sixty groups', async () => {
    expect(GROUPS).toHaveLength(60);
    const kinds = new Set<Kind>();
    for (const group of GROUPS)
      for (const { seen, records } of await lookAt(group)) {
        expect(quarrels(seen, records), group.name).toEqual([]);
        kinds.add(kindSaid(seen.where));
      }
    expect([...kinds].toSorted()).toEqual(['early', 'late', 'mixed', 'right']);
  });

  it('names no place where the group was ready, where most never were', async () => {
    const group = madeGroup('right', 1, 1);
    const [timely] = await lookAt(group);
    const rides = group.rides.map((ride) => ({
      ...ride,
      line: ride.line && {
        ...ride.line,
        development: ride.line.development.map((gear) => Math.max(80, gear)),
      },
    }));
    const [never] = await lookAt({ ...group, rides });
    expect([timely?.seen.ready, never?.seen.ready]).toEqual([3, 0]);
    expect(never?.seen.where).toBe(timely?.seen.where);
  });

  it('is found out when one of them is turned round', async () => {
    const group = madeGroup('late', 1, 1);
    const [{ seen, records } = { seen: null, records: [] }] = await lookAt(group);
    if (seen === null) throw new Error('there is no road');
    expect(kindSaid(seen.where)).toBe('late');
    const swap = ({ tooEarly = 0, aboutRight = 0, tooLate = 0 }: Bars): Bars => ({
      tooEarly: tooLate,
      aboutRight,
      tooLate: tooEarly,
    });
    const turned: readonly Partial<Seen>[] = [
      { where: seen.where.replace('late', 'early') },
      { frame: ((seen.frame ?? 0) + 1) % 3 },
      { bars: seen.bars.map(swap) },
      { caught: seen.caught.replace(/Pitch \d/, 'Pitch 9') },
      { card: ((seen.card ?? 0) + 1) % 3 },
      { timing: seen.timing.replace('late', 'early') },
      { marked: ['tooEarly'] },
      { times: swap(seen.times) },
      { table: seen.table.map(([caught = 0, all = 0, ...rides]) => [caught, all, ...rides.toReversed()]) },
      { answers: { ...seen.answers, where: seen.answers.where.replace('late', 'early') } },
      { answers: { ...seen.answers, timing: seen.answers.timing.replace('late', 'early') } },
    ];
    for (const change of turned)
      expect(quarrels({ ...seen, ...change }, records), Object.keys(change).join()).not.toEqual([]);
    expect(levelHash(group.levels[0]!)).toBe(records[0]?.levelHash);
  });
});
