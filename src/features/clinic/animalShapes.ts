/**
 * Animals cut from paper, each a handful of polygons and ovals in a box of 100 × 100, mostly faces that look at
 * you. Shapes only; colour comes from the nickname.
 */
import type { Animal } from '../../core/group/nicknames.ts';

/** `body` takes the colour of the nickname, `deep` a shadow over it, `paper` and `ink` are the same for all. */
export type AnimalTone = 'body' | 'deep' | 'paper' | 'ink';
type Shape = readonly [AnimalTone, string];

const cut = (points: string): string => `M${points}Z`;
/** A polygon and its mirror image; numbers are x y pairs of the left one. */
const twin = (...at: readonly number[]): string => {
  const one = at.map((n, i) => (i % 2 === 0 ? `${i === 0 ? 'M' : 'L'}${n} ` : `${n}`)).join('');
  const two = at.map((n, i) => (i % 2 === 0 ? `${i === 0 ? 'M' : 'L'}${100 - n} ` : `${n}`)).join('');
  return `${one}Z${two}Z`;
};
const oval = (x: number, y: number, rx: number, ry = rx): string =>
  `M${x - rx} ${y}a${rx} ${ry} 0 1 0 ${2 * rx} 0a${rx} ${ry} 0 1 0 ${-2 * rx} 0Z`;
const ovals = (x: number, y: number, rx: number, ry = rx): string =>
  oval(x, y, rx, ry) + oval(100 - x, y, rx, ry);

const ROUND = 'M50 24C74 23 87 42 85 60C82 82 66 91 50 91C34 91 18 82 15 60C13 42 26 23 50 24Z';
const POINTED = 'M50 93C40 86 15 70 12 50C12 31 30 25 50 25C70 25 88 31 88 50C85 70 60 86 50 93Z';
const LONG = 'M50 18C69 18 75 36 72 55C70 80 63 95 50 95C37 95 30 80 28 55C25 36 31 18 50 18Z';
const POINTED_EARS = twin(15, 44, 16, 5, 45, 28);
const eyes = (x = 34, y = 52, r = 5): Shape => ['ink', ovals(x, y, r)];
const nose = (y: number, rx = 9): Shape => ['ink', oval(50, y, rx, rx * 0.72)];
const roundEars = (x: number, y: number, r: number): readonly Shape[] => [
  ['body', ovals(x, y, r)],
  ['deep', ovals(x, y, r * 0.5)],
];
const weasel = (mask: readonly Shape[]): readonly Shape[] => [
  ...roundEars(24, 32, 12),
  ['body', ROUND],
  ...mask,
  eyes(),
  nose(72, 8),
];
/** Head of a long-necked bird that looks to the right; its parts differ by bill and crown. */
const neck = (bill: string, crown: readonly Shape[]): readonly Shape[] => [
  ['body', 'M18 96C14 66 30 62 32 42C30 20 44 12 56 16C68 20 70 34 60 42C50 52 58 66 62 96Z'],
  ['ink', bill],
  ...crown,
  ['ink', oval(53, 29, 4)],
];

/** Every animal's shapes, in the order they are laid. */
export const ANIMAL_SHAPES: Readonly<Record<Animal, readonly Shape[]>> = {
  badger: [
    ...roundEars(20, 34, 11),
    ['body', POINTED],
    ['paper', cut('42 26L58 26L56 66L50 70L44 66')],
    ['ink', twin(24, 28, 38, 26, 42, 70, 28, 64)],
    ['paper', ovals(34, 50, 4)],
    nose(84, 8),
  ],
  beaver: [
    ...roundEars(22, 32, 11),
    ['body', ROUND],
    ['deep', oval(50, 72, 25, 17)],
    ['paper', cut('41 76L59 76L58 96L42 96')],
    ['ink', 'M49 78h2v18h-2Z'],
    eyes(34, 48),
    nose(64),
  ],
  bee: [
    ['paper', `${oval(28, 34, 22, 15)}${oval(72, 34, 22, 15)}`],
    ['body', oval(50, 62, 27, 34)],
    ['ink', 'M24 52h52v10h-52ZM26 72h48v9h-48Z'],
    ['ink', 'M40 30L30 10L35 8L46 28ZM60 30L70 10L65 8L54 28Z'],
    ['ink', ovals(41, 42, 4)],
  ],
  crane: neck('M62 24L98 34L62 38Z', [
    ['ink', 'M32 44C40 48 52 46 58 44C50 60 46 66 50 80L34 80C28 66 36 56 32 44Z'],
    ['deep', 'M38 20C46 10 58 12 62 22Z'],
  ]),
  crow: [
    ['body', 'M10 92C12 44 26 18 52 20C72 22 78 40 72 58C70 76 60 86 60 92Z'],
    ['ink', 'M68 32L98 46L70 58Z'],
    ['deep', 'M10 92C14 70 26 56 40 60C44 76 40 84 36 92Z'],
    ['paper', oval(56, 40, 6)],
    ['ink', oval(57, 40, 3)],
  ],
  deer: [
    [
      'deep',
      'M32 34L14 24L6 4L12 4L18 18L26 22L24 4L30 4L38 30ZM68 34L86 24L94 4L88 4L82 18L74 22L76 4L70 4L62 30Z',
    ],
    ['body', twin(32, 44, 6, 40, 14, 54, 32, 54)],
    ['body', LONG],
    ['paper', oval(50, 82, 14, 11)],
    eyes(39, 52),
    nose(79, 8),
  ],
  duck: [
    ['body', 'M8 92C6 66 26 60 30 46C24 22 40 12 56 16C72 22 72 40 64 52C58 66 68 74 70 92Z'],
    ['ink', 'M64 32C78 30 88 38 98 36C98 48 84 52 64 48Z'],
    ['paper', 'M22 62C36 70 50 70 62 60L62 68C50 78 34 78 20 70Z'],
    ['ink', oval(52, 32, 4.5)],
  ],
  fox: [
    ['body', POINTED_EARS],
    ['body', POINTED],
    ['paper', twin(13, 54, 36, 60, 50, 92, 30, 80)],
    eyes(35, 52),
    nose(86, 9),
  ],
  frog: [
    ['body', ovals(28, 30, 18)],
    ['body', oval(50, 62, 42, 31)],
    ['paper', ovals(28, 28, 10)],
    ['ink', ovals(28, 28, 5)],
    ['ink', 'M16 64Q50 92 84 64Q50 82 16 64Z'],
    ['ink', ovals(45, 54, 2.2)],
  ],
  goat: [
    ['deep', 'M36 26C30 14 26 8 10 4C14 18 22 28 32 36ZM64 26C70 14 74 8 90 4C86 18 78 28 68 36Z'],
    ['body', twin(30, 44, 4, 50, 14, 60, 32, 54)],
    ['body', LONG],
    ['paper', cut('42 88L58 88L50 100')],
    eyes(39, 50),
    nose(78, 8),
  ],
  hare: [
    ['body', `${oval(36, 24, 9, 24)}${oval(64, 24, 9, 24)}`],
    ['deep', `${oval(36, 24, 4, 17)}${oval(64, 24, 4, 17)}`],
    ['body', oval(50, 66, 29, 28)],
    ['paper', ovals(42, 78, 10, 8)],
    eyes(37, 60),
    nose(71, 5),
  ],
  hedgehog: [
    [
      'deep',
      cut(
        '50 4L58 14L70 8L74 20L88 20L86 33L98 40L91 51L98 64L87 70L86 84L14 84L13 70L2 64L9 51L2 40L14 33L12 20L26 20L30 8L42 14',
      ),
    ],
    ['body', 'M50 40C66 40 78 56 74 72C68 88 60 94 50 94C40 94 32 88 26 72C22 56 34 40 50 40Z'],
    eyes(39, 62),
    nose(80, 8),
  ],
  heron: neck('M60 22L100 30L60 36Z', [['ink', 'M62 20C46 12 30 18 8 14C24 26 40 26 60 24Z']]),
  horse: [
    ['body', twin(36, 28, 30, 4, 46, 20)],
    ['body', LONG],
    ['ink', cut('42 14L58 14L57 42L50 50L44 40')],
    ['deep', oval(50, 82, 19, 14)],
    eyes(36, 46),
    ['ink', ovals(43, 82, 3)],
  ],
  lizard: [
    ['body', 'M50 8C64 10 70 26 64 40C60 58 64 70 50 96C48 72 40 58 36 40C30 26 36 10 50 8Z'],
    ['body', twin(38, 40, 14, 30, 8, 38, 22, 44, 38, 52)],
    ['body', twin(42, 62, 18, 66, 10, 78, 24, 76, 44, 72)],
    ['deep', `${oval(50, 44, 4)}${oval(50, 57, 3.4)}${oval(50, 68, 2.8)}`],
    ['ink', ovals(42, 22, 4)],
  ],
  lynx: [
    ['body', POINTED_EARS],
    ['ink', twin(12, 16, 15, 0, 24, 16)],
    ['body', ROUND],
    ['paper', twin(14, 62, 8, 86, 30, 78, 46, 70)],
    ['deep', twin(38, 28, 44, 28, 45, 42, 41, 42)],
    eyes(),
    nose(70, 8),
  ],
  marten: weasel([
    ['paper', cut('34 78L66 78L58 96L42 96')],
    ['deep', oval(50, 40, 22, 11)],
  ]),
  mole: [
    ['body', 'M50 18C76 18 88 44 86 92L14 92C12 44 24 18 50 18Z'],
    ['paper', twin(8, 78, 2, 96, 10, 90, 14, 98, 20, 90, 28, 98, 30, 78)],
    ['deep', oval(50, 62, 16, 20)],
    ['ink', ovals(38, 42, 2.6)],
    nose(56, 9),
  ],
  mouse: [
    ...roundEars(22, 30, 20),
    ['body', oval(50, 62, 29, 29)],
    ['ink', 'M14 66h20v2h-20ZM14 74l20-2v2l-20 2ZM86 66h-20v2h20ZM86 74l-20-2v2l20 2Z'],
    eyes(39, 56),
    nose(72, 6),
  ],
  otter: [
    ...roundEars(18, 40, 9),
    ['body', oval(50, 56, 38, 34)],
    ['paper', oval(50, 72, 24, 16)],
    eyes(34, 48),
    nose(62, 11),
  ],
  owl: [
    ['body', 'M16 10L36 20H64L84 10C90 40 88 92 50 94C12 92 10 40 16 10Z'],
    ['paper', ovals(33, 42, 17)],
    ['ink', ovals(34, 42, 8)],
    ['ink', cut('44 52L56 52L50 66')],
    ['deep', 'M36 74h8v8h-8ZM56 74h8v8h-8ZM46 82h8v8h-8Z'],
  ],
  seal: [
    ['body', 'M50 14C76 14 84 42 88 94L12 94C16 42 24 14 50 14Z'],
    ['paper', oval(50, 62, 20, 13)],
    eyes(36, 40, 6),
    nose(56, 8),
    ['ink', `${ovals(40, 64, 1.6)}${ovals(37, 68, 1.6)}`],
  ],
  snail: [
    ['body', 'M4 92C4 80 18 80 34 80L66 78C70 64 68 52 76 46C92 44 96 60 90 74C86 90 76 92 66 92Z'],
    ['ink', 'M78 46L72 26L76 25L83 46ZM88 48L94 28L98 30L92 50Z'],
    ['body', oval(40, 52, 32)],
    ['deep', oval(40, 52, 21)],
    ['body', oval(43, 54, 12)],
    ['deep', oval(42, 53, 5)],
  ],
  squirrel: [
    ['deep', 'M60 92C96 92 100 56 90 34C84 18 64 20 66 36C84 40 70 60 60 66Z'],
    ['body', 'M22 34L20 8L36 24ZM54 34L56 8L40 24Z'],
    ['body', oval(38, 48, 25, 24)],
    ['body', 'M22 64C22 84 18 92 20 96L66 96C68 78 60 66 54 62Z'],
    ['paper', oval(40, 82, 12, 13)],
    ['ink', oval(29, 46, 4) + oval(47, 46, 4)],
    ['ink', oval(38, 57, 5, 4)],
  ],
  stork: neck('M60 22L100 40L60 38Z', [
    ['paper', 'M32 50C40 44 50 46 52 54C54 68 58 80 60 96L20 96C18 74 30 66 32 50Z'],
    ['ink', 'M20 96C24 80 34 78 40 96Z'],
  ]),
  swan: [
    [
      'body',
      'M4 84C14 58 40 56 52 68C66 70 66 58 58 48C46 32 50 12 66 10C80 10 84 24 76 32L68 30C66 22 60 26 64 36C72 48 82 66 74 82C64 96 20 98 4 84Z',
    ],
    ['ink', 'M74 18L96 30L74 34Z'],
    ['deep', 'M16 82C24 68 44 66 54 80C44 90 26 90 16 82Z'],
    ['ink', oval(68, 19, 3)],
  ],
  swift: [
    [
      'body',
      'M50 14C58 18 60 30 59 38C76 34 92 46 98 76C84 58 70 54 58 58L62 94L50 80L38 94L42 58C30 54 16 58 2 76C8 46 24 34 41 38C40 30 42 18 50 14Z',
    ],
    ['paper', oval(50, 34, 5, 6)],
    ['ink', ovals(45, 24, 2.4)],
  ],
  toad: [
    ['body', ovals(27, 34, 15)],
    ['body', 'M50 34C84 34 98 62 92 88L8 88C2 62 16 34 50 34Z'],
    ['paper', ovals(27, 32, 8)],
    ['ink', 'M21 30h12v4h-12ZM67 30h12v4h-12Z'],
    ['ink', 'M18 70h64v3h-64Z'],
    ['deep', `${oval(50, 48, 4)}${oval(38, 56, 3)}${oval(64, 58, 4)}${oval(22, 56, 3.4)}${oval(80, 52, 3)}`],
  ],
  trout: [
    ['body', 'M4 54C18 30 52 26 74 50L96 30C92 46 92 62 96 78L74 58C52 82 18 78 4 54Z'],
    ['deep', cut('36 34L52 18L60 40')],
    ['paper', 'M8 58C26 74 50 74 68 56C50 62 28 64 8 58Z'],
    ['ink', `${oval(20, 48, 4.5)}`],
    ['deep', `${oval(38, 46, 3.4)}${oval(50, 44, 3)}${oval(60, 50, 2.8)}${oval(46, 54, 2.4)}`],
  ],
  weasel: weasel([['paper', 'M22 68C36 60 64 60 78 68C74 84 62 91 50 91C38 91 26 84 22 68Z']]),
  wolf: [
    ['body', POINTED_EARS],
    ['deep', twin(22, 34, 21, 16, 36, 28)],
    ['body', POINTED],
    ['deep', cut('42 28L58 28L62 62L50 70L38 62')],
    ['paper', twin(14, 58, 32, 62, 42, 84, 24, 76)],
    eyes(31, 50, 4.5),
    nose(84, 10),
  ],
  wren: [
    ['body', 'M12 34L30 10L34 44C44 30 58 28 66 34C82 40 84 66 66 82C48 94 24 84 22 60Z'],
    ['ink', 'M78 44L98 40L80 54Z'],
    ['deep', 'M30 58C42 50 56 56 58 70C46 80 34 74 30 58Z'],
    ['ink', oval(68, 46, 4)],
    ['ink', 'M44 86h3v12h-3ZM56 86h3v12h-3Z'],
  ],
};
