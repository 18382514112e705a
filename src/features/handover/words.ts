/**
 * Words for carrying a plan to tablets and results back: codes, links, files, the camera, what is missing. Words
 * about a club's own store are in `shared.ts`.
 */
import type { ApartCode } from '../../core/group/records/remark.ts';
import type { DamageCode } from '../../core/group/records/recordFile.ts';
import type { DamagedFrame } from '../../core/transfer/frames.ts';

const rides = (n: number): string => (n === 1 ? '1 ride' : `${n} rides`);
const list = (numbers: readonly number[]): string => numbers.join(', ');

/** English. */
export const handoverWords = {
  size: (bytes: number): string => (bytes < 1_000 ? `${bytes} bytes` : `${(bytes / 1_000).toFixed(1)} kB`),
  codes: {
    number: (n: number, all: number): string => `${n} of ${all}`,
    picture: (what: string, n: number, all: number): string =>
      all === 1 ? `Code: ${what}` : `Code ${n} of ${all}: ${what}`,
    pause: 'Pause',
    play: 'Go on',
    back: 'Code before',
    next: 'Next code',
    speed: 'Speed',
    speeds: { slow: 'slow', usual: 'usual', fast: 'fast' },
    big: 'Big',
    close: 'Close',
    jump: (n: number): string => `Show code ${n}`,
    hint: 'The codes follow one another. Where the camera begins does not matter; it says what is missing.',
  },
  carry: {
    making: 'Packing …',
    tooBig: 'This is too much for codes. Use the file.',
    link: 'Link',
    copy: 'Copy the link',
    copied: 'Copied.',
    notCopied: 'This browser does not copy over plain http. The link is marked: copy it by key or finger.',
    onlyHere:
      'This page was opened at localhost, which no tablet can open, so there is no link. Start the game with “npm start -- --host”, then hand out here again. Codes and file work as they are.',
    file: 'Save as a file',
    longLink: 'Some messengers cut links this long. The file is safer.',
    site: 'The link leads to this address; the other device must be able to open it.',
  },
  handOut: {
    title: 'Hand out the plan',
    intro: 'Every tablet scans this once. After that it needs no network and nothing from this screen.',
    what: (title: string): string => `the plan “${title}”`,
    size: (bytes: string, codes: number): string =>
      `${bytes} · ${codes === 1 ? 'one code' : `${codes} codes`}`,
    own: 'Your own levels are in it.',
    scan: 'Scan on the tablet',
    scanOne:
      'Point the tablet’s own camera at the code and open the link, or scan it on the game’s page “Join a session”.',
    scanMany: 'On the tablet open the game’s page “Join a session” and hold the camera at the codes.',
    others: 'Without a camera',
  },
  readiness: {
    title: 'At home, the evening before',
    intro: 'On every tablet, while there is a network. This list checks the device you are looking at.',
    done: 'done',
    open: 'to do',
    wrong: 'does not work here',
    unknown: 'this browser does not say',
    again: 'Check again',
    checks: {
      secure: {
        title: 'Opened over https or at localhost',
        done: 'This page was opened in a way that allows camera and offline use.',
        todo: 'This page was opened over plain http: no camera here, no copy for offline, and the screen goes dark by itself. Open the game at an address that begins with https, once, at home; or on the computer that serves it, at localhost.',
        wrong:
          'This page was opened over plain http: no camera here, no copy for offline, and the screen goes dark by itself. Open the game at an address that begins with https, once, at home; or on the computer that serves it, at localhost.',
      },
      offline: {
        title: 'A copy for offline',
        done: 'The game is on this device and opens without a network.',
        todo: 'Load this page once more and wait a moment. Best put it on the home screen with the browser’s menu.',
        wrong: 'Without https this browser keeps no copy. Open the game over https at home.',
      },
      camera: {
        title: 'Camera allowed',
        done: 'The camera can be used.',
        todo: 'Allow the camera now, so that nobody is asked in the field.',
        wrong:
          'There is no camera this page may use. If there is one, allow it in the browser’s settings for this page; else use the link or the file.',
      },
      keeping: {
        title: 'Kept for good',
        done: 'The browser will not clear rides by itself.',
        todo: 'The browser may clear rides when it needs room. Ask it not to; putting the game on the home screen helps. Hand results back the same day.',
        wrong: 'This browser keeps nothing for good. Hand results back the same day.',
      },
    },
    allowCamera: 'Allow the camera',
    keep: 'Ask the browser to keep rides',
  },
  reader: {
    ways: 'Read with',
    camera: 'Camera',
    picture: 'Picture or file',
    text: 'Link or text',
    start: 'Turn the camera on',
    stop: 'Turn the camera off',
    loading: 'The reader is being loaded …',
    looking: 'Hold the code so that it fills most of the picture.',
    noReader: 'The reader could not be loaded. Is the network gone? Use the link or the file.',
    video: 'What the camera sees',
    problems: {
      'not-secure':
        'The camera works only where this page was opened over https or at localhost. Take a picture with the tablet’s own camera and choose it here, or use the link or the file.',
      refused:
        'The camera was not allowed. Allow it in the browser’s settings for this page, or use a picture, the link or the file.',
      none: 'There is no camera here. Use a picture, the link or the file.',
      'in-use': 'Another program holds the camera. Close it, then try again.',
    },
    choose: 'Choose pictures or files',
    chooseHint: 'Pictures of codes, or a file saved by this game. Several at once are fine.',
    noCode: (name: string): string =>
      `No code could be read in ${name}. Take the picture from closer, straight on, without a reflection.`,
    paste: 'Paste the link, or the text of a code or file',
    take: 'Read it',
    reading: 'Reading the rides …',
    stopReading: 'Stop reading',
    stopped: 'Stopped. Nothing of it was taken.',
    failed: 'That could not be read here. Close other programs, then choose it once more.',
    read: (n: number, count: number): string => `${n} of ${count} codes read.`,
    missing: (numbers: readonly number[]): string =>
      numbers.length === 1 ? `Code ${list(numbers)} is missing.` : `Codes ${list(numbers)} are missing.`,
    cut: 'The link was cut on its way. Copy all of it, or use the code or the file.',
    damaged: ({ code, number }: DamagedFrame): string => {
      const which = number === null ? 'A code' : `Code ${number}`;
      switch (code) {
        case 'checksum':
          return `${which} arrived damaged. Read it once more.`;
        case 'newer-version':
          return `${which} was made by a newer version of the game. Load this page anew to update.`;
        case 'contradicts':
          return `${which} says something else than before. Show the codes from the beginning.`;
        case 'too-many-messages':
          return 'Too many different things were read at once. Open this page anew.';
        case 'not-a-frame':
          return 'Something was read that is no code of this game.';
      }
    },
    unreadable: {
      'not-a-packet': 'This is nothing of this game.',
      'newer-version': 'This was made by a newer version of the game. Load this page anew to update.',
      damaged: 'All codes are here, but together they are not what was sent. Show them once more.',
      nothing: 'There is nothing in it.',
      'too-big':
        'This is too big to be rides or a plan. Save it again on the tablet it comes from, then choose it here.',
    },
    wrongPlan: 'This plan cannot be used:',
    isPlan: 'This is a plan, not results. Open it on “Join a session”.',
    isRides: 'These are results, not a plan. Open them on the coach’s device, on “Collect results”.',
  },
  join: {
    title: 'Join a session',
    intro: 'Scan the coach’s code, or open the link. No typing, no names.',
    found: 'This is what the coach has planned',
    rides: 'What is ridden',
    check: 'Check ride',
    unknownLevel: (id: string): string => `${id}: not on this device`,
    ownLevel: 'level of the coach’s own',
    attempts: (n: number): string => (n === 1 ? 'one attempt each' : `${n} attempts each`),
    bike: (name: string): string => `Bike: ${name}`,
    ownBike: 'the one set on this device',
    missing:
      'A level of this plan does not come with the game on this device. Update the game first: load this page anew while there is a network.',
    join: 'Join',
    no: 'Not this one',
    here: 'This device has joined already. Its rides stay as they are.',
    other: 'This device has joined with an older copy of this plan. Rides made so far stay with that copy.',
    go: 'Go to the group',
  },
  handBack: {
    title: 'Hand back results',
    intro: 'Show the codes to the coach’s camera. Twice is the same as once; nothing is deleted here.',
    tablet: (name: string): string => `This tablet: ${name}`,
    what: (n: number): string => rides(n),
    size: (n: number, bytes: string, codes: number): string =>
      `${rides(n)} · ${bytes} · ${codes === 1 ? 'one code' : `${codes} codes`}`,
    none: 'No ride has been ridden here in this group yet.',
    marksOnly:
      'Codes and link carry the marks. The file carries the whole rides, so that the coach can watch them and mark them again.',
  },
  collect: {
    title: 'Collect results',
    intro:
      'Hold the camera at each tablet’s codes, or take its link or file. Order and repeats do not matter.',
    tablets: 'What has come from whom',
    nobody: 'Nothing has come yet.',
    noSession:
      'There is no session on this device that these rides belong to. Open them on the coach’s device.',
    columns: {
      tablet: 'Tablet',
      here: 'Here',
      missing: 'Missing',
      since: 'Missing since',
      heard: 'Last heard of',
    },
    complete: 'nothing',
    ranges: (ranges: readonly (readonly [number, number])[], count: number): string => {
      const shown = ranges.slice(0, 12).map(([a, b]) => (a === b ? `${a}` : `${a}–${b}`));
      return `ride ${shown.join(', ')}${ranges.length > 12 ? ' …' : ''} (${count} missing)`;
    },
    since: (minutes: number): string =>
      minutes < 1 ? 'just now' : minutes < 120 ? `${minutes} min` : `${Math.floor(minutes / 60)} h`,
    neverSaid: 'a gap in its count',
    never: 'never',
    took: (fresh: number, known: number): string =>
      fresh === 0
        ? `Nothing new: ${rides(known)} were here already.`
        : `${rides(fresh)} taken${known > 0 ? `, ${known} were here already` : ''}.`,
    tookDamaged: (n: number): string => (n === 1 ? '1 piece was damaged.' : `${n} pieces were damaged.`),
    otherPlan: (n: number): string => `${rides(n)} of another plan were left out.`,
    notKept: 'What came could not be kept on this device. Save it as a file before you close this page.',
    damaged: 'Damaged pieces',
    damagedHint:
      'They are not counted. Ask the tablet to show its results once more; a good copy takes their place.',
    damagedPiece: (tablet: string | null, seq: number | null): string =>
      `${tablet === null ? 'From an unknown tablet' : `Tablet ${tablet}`}${seq === null ? '' : `, ride ${seq}`}`,
    damageCodes: {
      'not-json': 'cut off or changed on the way',
      'not-a-record': 'not a whole ride',
      'newer-version': 'made by a newer version; update the game here',
      'dirty-text': 'a name with hidden characters',
      checksum: 'changed on the way',
      recording: 'the marks are good, the recording is damaged',
      'file-head': 'the first line of its file is damaged',
      'too-long': 'far longer than any ride',
    } satisfies Record<DamageCode, string>,
    apart: 'Set apart',
    apartHint: 'These rides are kept, but not counted: ridden again, they do not come out as they say.',
    apartRide: (tablet: string, seq: number, name: string): string =>
      `Tablet ${tablet}, ride ${seq}, ${name}`,
    apartTotals: (said: string, found: string): string => `says ${said}, found ${found}`,
    apartCodes: {
      'no-recording': 'marks only',
      'unknown-level': 'its level is not here',
      'other-level': 'its level has been changed',
      'other-setup': 'its recording is of another ride',
      'changed-bike': 'a bundled bike with other numbers',
      'changed-rider': 'a bundled rider with other numbers',
      'impossible-setup': 'a bike or rider that cannot be',
      'too-long': 'longer than a ride can be',
      'not-finished': 'it never came to its end',
      'other-version': 'ridden on another version of the game',
      'not-same-ride': 'ridden again, it is another ride',
      'other-marks': 'ridden again, it has other marks',
    } satisfies Record<ApartCode, string>,
    conflicts: 'Contradictions',
    conflictCodes: {
      'same-id': 'Two different rides under one id; both are kept, neither is counted.',
      'same-seq': 'Two rides under one number of a tablet; both are kept, neither is counted.',
    },
    checked: (n: number): string => `${rides(n)} ridden again on this device; the marks are right.`,
    otherVersion: (n: number): string =>
      `${rides(n)} came from another version of the game: the marks are shown as they came, but they cannot be ridden again or compared with the others.`,
    marksOnly: (n: number): string => `${rides(n)} came as marks only; a tablet’s file has the whole rides.`,
    withdrawn: (n: number): string => `${rides(n)} were taken back by their own tablet.`,
    checking: (n: number): string => `Riding again: ${n} to go.`,
  },
};

export type HandoverWords = typeof handoverWords;
