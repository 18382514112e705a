/**
 * The pages that carry plans and results as a document: codes and their buttons, the list for the evening before,
 * what is told in one sentence, and that texts from outside stay texts.
 */
import { render } from 'preact';
import { afterEach, describe, expect, it } from 'vitest';
import { EMPTY_SET, mergeSets } from '../../../src/core/group/records/merge.ts';
import { parsePlan } from '../../../src/core/group/plan.ts';
import { sealRecord } from '../../../src/core/group/records/record.ts';
import { type ReadFile, readRideFile, writeRideFile } from '../../../src/core/transfer/rideFile.ts';
import { createFormat } from '../../../src/words/format.ts';
import { Carry } from '../../../src/features/handover/carry.tsx';
import { CodeShow } from '../../../src/features/handover/carry.tsx';
import { SetApart } from '../../../src/features/handover/setApart.tsx';
import { Collect } from '../../../src/features/handover/collect.tsx';
import type { Collected } from '../../../src/features/handover/services.ts';
import { checkReadiness, type ReadinessHost } from '../../../src/features/handover/readiness.ts';
import { PlanCard } from '../../../src/features/handover/planCard.tsx';
import { messageOfPlan } from '../../../src/features/handover/message.ts';
import { Reader } from '../../../src/features/handover/reader.tsx';
import { tabletName } from '../../../src/features/handover/message.ts';
import { NOTHING_READ, readText } from '../../../src/features/handover/reading.ts';
import { StoreLine } from '../../../src/features/handover/storeLine.tsx';
import { isPlainHttp, StorePage } from '../../../src/features/handover/storePage.tsx';
import { storeSentence } from '../../../src/features/handover/storeLine.tsx';
import { carriedWords } from '../../../assets/words/carry.ts';
import { planTitle } from '../../../src/words/group.ts';
import { speak, take, words } from '../../../src/words/words.ts';
import { madeUpRecord, planWith } from '../../core/group/rides.ts';
import { ownLevel } from '../../core/group/rides.ts';
import { rootForTests } from '../../ui/rootForTests.ts';

const say = words('handover');
const format = createFormat('metric', 'en-GB');
const send = (): void => undefined;
const root = rootForTests();

afterEach(() => {
  delete document.documentElement.dataset['motion'];
});

const find = <Kind extends Element = HTMLElement>(selector: string): Kind => {
  const found = root.querySelector<Kind>(selector);
  if (found === null) throw new Error(`no ${selector}`);
  return found;
};
const redrawn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 40));

describe('codes', () => {
  const show = (frames: string[]): void => render(<CodeShow frames={frames} name="3 rides" />, root);

  it('stand still where less movement is wanted, go back and forth, and say which one is shown', async () => {
    document.documentElement.dataset['motion'] = 'reduced';
    show(['A1', 'B2', 'C3']);
    expect(find('[data-play]').textContent).toBe(say('code-play'));
    expect(find('svg.code').getAttribute('aria-label')).toBe('Code 1 of 3: 3 rides');
    find<HTMLButtonElement>(`[aria-label="${say('code-back')}"]`).click();
    await redrawn();
    expect(find('.code-number').textContent).toBe('3 of 3');
    find<HTMLButtonElement>(`[aria-label="${say('code-jump', { number: 2 })}"]`).click();
    await redrawn();
    expect(find('svg.code').getAttribute('aria-label')).toBe('Code 2 of 3: 3 rides');
  });

  it('follow one another by themselves until somebody says pause', async () => {
    show(['A1', 'B2', 'C3']);
    await redrawn();
    find<HTMLInputElement>('.choice-row label:nth-child(3) input').click();
    await new Promise((resolve) => setTimeout(resolve, 800));
    expect(find('.code-show').dataset['code']).not.toBe('1');
    find<HTMLButtonElement>('[data-play]').click();
    await redrawn();
    const stopped = find('.code-show').dataset['code'];
    await new Promise((resolve) => setTimeout(resolve, 800));
    expect(find('.code-show').dataset['code']).toBe(stopped);
  });

  it('are black on white with white round them, whatever the theme', () => {
    show(['A1']);
    expect(find('svg.code rect').getAttribute('fill')).toBe('#fff');
    expect(find('svg.code path').getAttribute('fill')).toBe('#000');
    expect(find('svg.code').getAttribute('viewBox')).toMatch(/^-4 -4 29 29$/);
  });
});

describe('the evening before', () => {
  const host = (navigator: ReadinessHost['navigator'], isSecureContext = true): ReadinessHost => ({
    isSecureContext,
    navigator,
  });
  const camera = (label: string): MediaDeviceInfo[] => [{ kind: 'videoinput', label } as MediaDeviceInfo];
  const media = (label: string) => ({
    getUserMedia: async () => new MediaStream(),
    enumerateDevices: async () => camera(label),
  });
  const kept = (yes: boolean) => ({ persisted: async () => yes, persist: async () => yes });

  it('over plain http camera and offline copy cannot work', async () => {
    expect(await checkReadiness(host({}, false))).toEqual({
      secure: 'wrong',
      offline: 'wrong',
      camera: 'wrong',
      keeping: 'unknown',
    });
  });

  it('all done is all done', async () => {
    const navigator = {
      serviceWorker: { getRegistration: async () => ({ active: {} }) as ServiceWorkerRegistration },
      permissions: { query: async () => ({ state: 'granted' }) },
      mediaDevices: media('Back camera'),
      storage: kept(true),
    };
    expect(Object.values(await checkReadiness(host(navigator)))).toEqual(['done', 'done', 'done', 'done']);
  });

  it.each([
    ['prompt', '', 'open'],
    ['denied', '', 'wrong'],
  ])('a camera whose permission is %s is %s%s', async (state, label, answer) => {
    const navigator = { permissions: { query: async () => ({ state }) }, mediaDevices: media(label) };
    expect((await checkReadiness(host(navigator))).camera).toBe(answer);
  });

  it('a browser that does not know the question is asked another way; one that throws says nothing', async () => {
    const permissions = {
      query: async (): Promise<never> => {
        throw new TypeError('camera is no name');
      },
    };
    expect((await checkReadiness(host({ permissions, mediaDevices: media('Cam') }))).camera).toBe('done');
    expect((await checkReadiness(host({ permissions, mediaDevices: media('') }))).camera).toBe('open');
    const storage = {
      ...kept(true),
      persisted: async (): Promise<never> => {
        throw new Error('no');
      },
    };
    expect((await checkReadiness(host({ storage }))).keeping).toBe('unknown');
  });
});

describe('a coach and a tablet of different languages', () => {
  const speaks = (language: string): void => {
    for (const file of ['group', 'handover', 'clinic', 'common'])
      take(language, file, carriedWords(language, file));
    speak(language);
  };
  afterEach(() => speak('en'));

  it('a plan made in German is told in French, and a ride made in French comes back without words', async () => {
    speaks('de');
    const title = 'adults-first-evening';
    const made = planWith({ title, rides: [{ kind: 'check', audience: 'everyone' }] });
    expect(planTitle(made)).toBe('Vorausschauen');
    const { link } = (await messageOfPlan(made, 'https://hill.example/'))!;
    const germanRides = writeRideFile(ridesOf('t1'));
    speaks('fr');
    const [arrival] = (await readText(NOTHING_READ, link)).arrivals;
    if (arrival?.kind !== 'plan') throw new Error('no plan');
    expect(arrival.plan).toEqual(made);
    render(<PlanCard {...{ plan: arrival.plan, format }} levels={[]} />, root);
    expect(find('h2').textContent).toBe(words('group')(`plan-${title}`));
    expect(root.textContent).toContain('Passage témoin');
    expect(root.textContent).not.toContain('Vorausschauen');
    // What is handed back is the same, to the last sign, whatever is spoken.
    expect(writeRideFile(ridesOf('t1'))).toBe(germanRides);
  });

  const ridesOf = (deviceId: string) => ({
    planId: planWith().id,
    deviceId,
    lastSeq: 1,
    withdrawn: [],
    records: [madeUpRecord({ deviceId, seq: 1 })],
  });
});

/** Signs that are not seen or turn the direction of reading round. */
const UNSEEN = /[\p{Cc}\u200B-\u200F\u202A-\u202E\u2066-\u2069]/u;

const HOSTILE = [
  '<img src=x onerror=alert(1)>',
  '<script>alert(1)</script>',
  '"><b>bold</b>',
  '=HYPERLINK("http://x")',
  '&lt;i&gt;',
];

describe('texts from outside', () => {
  it('a plan with a title of code shows the code', () => {
    for (const title of HOSTILE) {
      const level = { ...ownLevel(), title };
      const plan = planWith({ title, rides: [{ kind: 'own', level }] });
      expect(parsePlan(plan).ok).toBe(true);
      render(<PlanCard {...{ plan, format }} levels={[]} />, root);
      expect(find('h2').textContent).toBe(title);
      expect(root.querySelectorAll('img, script, b, i')).toHaveLength(0);
    }
  });

  it('titles with turning signs, control characters or 10,000 characters are refused at the door, or made plain', async () => {
    for (const title of ['\u202Eevil', 'a\u0000b', 'x'.repeat(10_000), 'a\u200Bb', '\u2066x']) {
      expect(parsePlan(planWith({ title })).ok).toBe(false);
      const plan = planWith({ rides: [{ kind: 'own', level: { ...ownLevel(), title, sentence: title } }] });
      const [arrival] = (await readText(NOTHING_READ, JSON.stringify(plan))).arrivals;
      if (arrival?.kind !== 'plan') {
        expect([title.length, arrival?.kind]).toEqual([10_000, 'plan-problems']);
        continue;
      }
      render(<PlanCard {...{ plan: arrival.plan, format }} levels={[]} />, root);
      expect(root.textContent).not.toMatch(UNSEEN);
      expect(JSON.stringify(arrival.plan)).not.toMatch(UNSEEN);
    }
  });

  it('nicknames and names of damaged pieces are shown as what they are, short and without turning signs', () => {
    const record = madeUpRecord({ deviceId: 't1', seq: 1, nickname: '~<b>x</b>' });
    const other = sealRecord({ ...record, total: 1 });
    const damaged = [...HOSTILE, '\u202E'.repeat(50), 'y'.repeat(10_000), '\u0007']
      .map((text) => JSON.stringify({ id: text, deviceId: text, seq: 3, recordingHash: text }))
      .join('\n');
    const collected: Collected = {
      set: mergeSets({ ...EMPTY_SET, records: [record, other] }, readRideFile(damaged).set),
      heard: [],
      remarks: [{ kind: 'apart', record, code: 'other-marks', tick: null, total: 2 }],
      toCheck: 0,
    };
    render(
      <Collect
        readRides={async (text) => readRideFile(text)}
        {...{ format, send, collected }}
        plan={planWith()}
        arrived=""
        nameOf={(nickname) => nickname.slice(1)}
        now={() => 0}
        onTake={async () => true}
        store={null}
      />,
      root,
    );
    expect(root.querySelectorAll('[data-damaged]').length).toBeGreaterThanOrEqual(5);
    expect(root.querySelectorAll('img, script, b')).toHaveLength(0);
    expect(find('[data-apart]').textContent).toContain('<b>x</b>');
    expect(root.textContent).not.toMatch(UNSEEN);
    for (const line of root.querySelectorAll('[data-damaged]'))
      expect(line.textContent?.length ?? 0).toBeLessThan(160);
  });
});

describe('a link', () => {
  const carried = async (linked: boolean, onCopy: (text: string) => Promise<boolean>): Promise<string> => {
    const message = (await messageOfPlan(planWith(), 'http://192.168.1.5/'))!;
    render(<Carry {...{ message, linked, onCopy }} name="x" onSaveFile={send} />, root);
    return message.link;
  };

  it('that cannot be copied is marked, so that one more key copies it', async () => {
    const link = await carried(true, async () => false);
    find<HTMLButtonElement>('[data-copy-link]').click();
    await expect.poll(() => find('.carry-others output').textContent).toBe(say('carry-notCopied'));
    const field = find<HTMLInputElement>('[data-link]');
    expect([field.selectionStart, field.selectionEnd]).toEqual([0, link.length]);
  });

  it('is not there where no other device could open it, and why is said', async () => {
    await carried(false, async () => true);
    expect(root.querySelector('[data-link], [data-copy-link]')).toBeNull();
    expect(find('[data-only-here]').textContent).toBe(say('carry-onlyHere'));
    expect(find('[data-save-file]').textContent).toContain(say('carry-file'));
  });
});

describe('what belongs to another plan', () => {
  it('a file of another group takes in neither its rides nor its tablet', async () => {
    const theirs = [1, 2].map((seq) => ({
      ...madeUpRecord({ deviceId: 'their-tablet', seq }),
      planId: 'friday',
    }));
    const text = writeRideFile({
      planId: 'friday',
      deviceId: 'their-tablet',
      lastSeq: 2,
      withdrawn: [],
      records: theirs.map((record) => sealRecord(record)),
    });
    const taken: ReadFile[] = [];
    render(
      <Collect
        plan={planWith()}
        collected={{ set: EMPTY_SET, heard: [], remarks: [], toCheck: 0 }}
        arrived=""
        nameOf={(name) => name}
        format={format}
        readRides={async (rides) => readRideFile(rides)}
        now={() => 0}
        onTake={async (read) => {
          taken.push(read);
          return true;
        }}
        store={null}
      />,
      root,
    );
    find<HTMLInputElement>('.choice-row label:nth-child(3) input').click();
    await redrawn();
    const box = find<HTMLTextAreaElement>('[data-read-text]');
    box.value = text;
    box.dispatchEvent(new Event('input', { bubbles: true }));
    await redrawn();
    find<HTMLButtonElement>('[data-take-text]').click();
    await expect.poll(() => taken.length).toBe(1);
    expect([taken[0]?.set.records, taken[0]?.heard]).toEqual([[], []]);
    expect(root.textContent).toContain(say('took-otherPlan', { rides: 2 }));
  });

  it('a link that was cut says so', async () => {
    const { link } = (await messageOfPlan(planWith(), 'https://hill.example/'))!;
    const arrived = link.split('#join/')[1]?.slice(0, -12) ?? '';
    render(<Reader arrived={arrived} onArrival={() => null} readRides={async () => null} />, root);
    await expect.poll(() => root.querySelector('[data-damaged-frame]')?.textContent).toBe(say('reader-cut'));
  });

  it('tablets are called differently, whatever their ids begin with', () => {
    const names = Array.from({ length: 40 }, (_, i) => tabletName(`tablet-of-the-club-${i}`));
    expect(new Set(names).size).toBe(40);
    for (const name of names) expect(name).toMatch(/^[A-HJ-NP-Z2-9]{4}$/);
    expect(tabletName('tablet-3')).toBe('tablet-3');
  });
});

describe('rides of an earlier version of the game', () => {
  it('are said in one sentence and not set apart', () => {
    const now = madeUpRecord({ deviceId: 't1', seq: 1 });
    const older = sealRecord({ ...madeUpRecord({ deviceId: 't2', seq: 1 }), version: '1' });
    const collected: Collected = {
      set: mergeSets({ ...EMPTY_SET, records: [now, older] }),
      heard: [],
      remarks: [{ kind: 'apart', record: older, code: 'other-version', tick: null, total: null }],
      toCheck: 0,
    };
    render(<SetApart {...{ collected, format }} nameOf={(nickname) => nickname} />, root);
    expect(find('[data-other-version="1"]').textContent).toContain(
      '1 ride came from another version of the game',
    );
    expect(root.querySelectorAll('[data-apart]')).toHaveLength(0);
  });
});

describe('rides on a level that is not here', () => {
  it('count as they came, so they are said in one sentence and not set apart', () => {
    const record = madeUpRecord({ deviceId: 't1', seq: 1 });
    const collected: Collected = {
      set: mergeSets({ ...EMPTY_SET, records: [record] }),
      heard: [],
      remarks: [{ kind: 'apart', record, code: 'unknown-level', tick: null, total: null }],
      toCheck: 0,
    };
    render(<SetApart {...{ collected, format }} nameOf={(nickname) => nickname} />, root);
    expect(find('[data-unknown-level]').textContent).toContain('1 ride is on a level that is not here');
    expect(root.querySelectorAll('[data-apart]')).toHaveLength(0);
  });
});

describe('a store of the club', () => {
  const PROBLEMS = [
    'unreachable',
    'busy',
    'disk-full',
    'wrong-password',
    'not-allowed',
    'no-database',
    'bad-address',
    'not-a-store',
    'endless',
    'some-refused',
  ] as const;

  it('every problem is one line that says that nothing is lost', () => {
    for (const problem of PROBLEMS) {
      const text = storeSentence({
        phase: 'waiting',
        there: 3,
        left: 2,
        problem,
        nextTryMs: 4_000,
      });
      expect(text).toContain(say(`store-${problem}`));
      expect(text).toContain('safe on this device');
    }
    expect(storeSentence(null)).toBe(say('store-notAsked'));
    // Nothing waits here, though the store is away: no count of nothing.
    const away = { phase: 'done', there: 3, left: 0, problem: 'unreachable', nextTryMs: null } as const;
    expect(storeSentence(away)).not.toContain('to go');
  });

  it('plain http to another computer is warned of, to this one not', () => {
    expect(['http://club.example', 'http://192.168.1.4:5984', ' HTTP://x '].map(isPlainHttp)).toEqual([
      true,
      true,
      true,
    ]);
    expect(
      ['https://club.example', 'http://localhost:5984', 'http://127.0.0.1', 'http://[::1]:1', 'club'].map(
        isPlainHttp,
      ),
    ).toEqual([false, false, false, false, false]);
  });

  const ADDRESS = { url: 'https://club.example', database: 'rides', name: 'coach', password: 'right' };
  const NOTHING_SENT = { rides: 0, atMs: null };
  const page = (more: Partial<Parameters<typeof StorePage>[0]['store']> = {}): void =>
    render(
      <StorePage
        store={{
          agreed: () => null,
          offered: () => null,
          sent: () => NOTHING_SENT,
          state: () => null,
          subscribe: () => () => undefined,
          offer: () => undefined,
          turnDown: async () => undefined,
          agree: async () => 'kept',
          stop: async () => undefined,
          test: async () => null,
          ...more,
        }}
        here="http://hall.example:4173/#clinic/store"
        site="http://hall.example:4173/"
        onFetch={() => undefined}
      />,
      root,
    );
  const type = async (name: string, text: string): Promise<void> => {
    const field = find<HTMLInputElement>(`[name="${name}"]`);
    field.value = text;
    field.dispatchEvent(new Event('input', { bubbles: true }));
    await redrawn();
  };
  const submit = async (): Promise<void> => {
    find('form.store-form').dispatchEvent(new Event('submit', { bubbles: true, cancelable: true }));
    await redrawn();
  };

  it('says what would go to whom before anybody agrees, and asks the store only then', async () => {
    const done: unknown[] = [];
    page({
      agree: async (address) => {
        done.push(address);
        return 'kept';
      },
      test: async () => {
        done.push('asked');
        return 'wrong-password';
      },
    });
    await type('url', ' http://club.example ');
    expect(find('[role="alert"]').textContent).toBe(say('store-plainHttp'));
    await type('database', 'rides');
    await type('password', 'wrong');
    const consent = find('[data-store-consent]').textContent;
    for (const told of ['club.example', 'nicknames', 'number of this tablet', 'rides', 'stop at any time'])
      expect(consent).toContain(told);
    expect(find('[data-agree-store]').textContent).toBe(
      say('store-agree', { typed: 'yes', host: 'club.example' }),
    );
    expect(find('[data-store]').textContent).toBe(say('store-off'));
    expect(root.querySelector('[data-test-store]')).toBeNull();
    expect(done).toEqual([]);
    await submit();
    expect(done).toEqual([
      { url: 'http://club.example', database: 'rides', name: '', password: 'wrong' },
      'asked',
    ]);
    expect(find('[data-store-told]').textContent).toBe(say('store-wrong-password'));
  });

  it('does not agree to what cannot be an address', async () => {
    page({ agree: async () => 'bad-address', test: async () => expect.unreachable() });
    await submit();
    expect(find('[data-store-told]').textContent).toBe(say('store-badAddress'));
  });

  it.each(['file', 'before'] as const)(
    'an address from %s is only asked about, with a way to forget it',
    (from) => {
      let forgotten = 0;
      page({
        offered: () => ({ from, address: { ...ADDRESS, url: 'https://раypal.example', password: '' } }),
        turnDown: async () => {
          forgotten += 1;
        },
      });
      // Look-alike letters are written as what they are.
      expect(find('[data-store-offered]').textContent).toBe(
        say(`store-offered-${from}`, { host: 'xn--ypal-43d9g.example' }),
      );
      expect(find<HTMLInputElement>('[name="url"]').value).toBe('https://раypal.example');
      find<HTMLButtonElement>('[data-forget-store]').click();
      expect(forgotten).toBe(1);
    },
  );

  it('says what has gone where, when, and stops; the address is there to be changed', async () => {
    let stopped = 0;
    const atMs = Date.UTC(2026, 10, 26, 18, 4);
    const agreed = { address: ADDRESS, atMs };
    page({
      agreed: () => agreed,
      sent: () => ({ rides: 12, atMs }),
      stop: async () => {
        stopped += 1;
      },
    });
    expect(find('h2').textContent).toBe(say('store-goesTo', { host: 'club.example' }));
    expect(find('[data-store-sent]').textContent).toMatch(/^12 rides went there, last on .*26/);
    expect(root.textContent).toContain('Nicknames');
    expect(root.textContent).not.toContain('right');
    find<HTMLButtonElement>('[data-stop-store]').click();
    expect(stopped).toBe(1);
    page();
    expect(find<HTMLInputElement>('[name="password"]').value).toBe('right');
  });

  it('stands in one line on the pages of a session, and nowhere where nothing is sent', () => {
    let stopped = 0;
    let fetched = 0;
    const line = (agreed: boolean): void =>
      render(
        <StoreLine
          standing={{ phase: 'waiting', there: 3, left: 1, problem: 'unreachable', nextTryMs: 4_000 }}
          onFetch={() => {
            fetched += 1;
          }}
          store={{
            agreed: () => (agreed ? { address: ADDRESS, atMs: 1 } : null),
            offered: () => null,
            sent: () => ({ rides: 3, atMs: 1 }),
            stop: async () => {
              stopped += 1;
            },
          }}
        />,
        root,
      );
    line(true);
    expect(find('[data-store-line]').textContent).toContain(say('store-line', { host: 'club.example' }));
    expect(find('[data-store-line]').textContent).toContain('3 rides went there');
    expect(find('[data-store]').textContent).toContain(say('store-unreachable'));
    find<HTMLButtonElement>('[data-fetch-store]').click();
    find<HTMLButtonElement>('[data-stop-store]').click();
    expect([fetched, stopped]).toEqual([1, 1]);
    line(false);
    expect(root.textContent).toBe('');
  });
});
