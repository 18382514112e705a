/**
 * Makes a text from a person or a file harmless to show on one line: no control characters, nothing that
 * turns the direction of reading round, no halves of characters, not too long. What a text means is left
 * to others, and so is writing it into a page.
 */

/** Characters that are invisible or change how others are shown, as closed ranges of code points. */
const UNWANTED: readonly (readonly [number, number])[] = [
  [0x00, 0x1f],
  [0x7f, 0x9f],
  [0xad, 0xad],
  [0x61c, 0x61c],
  [0x180e, 0x180e],
  [0x200b, 0x200f],
  [0x2028, 0x202e],
  [0x2060, 0x206f],
  [0xd800, 0xdfff],
  [0xfeff, 0xfeff],
  [0xfff9, 0xfffb],
  [0xe0000, 0xe007f],
];

/** Longer texts are cut before they are looked at, so that a huge one costs nothing. */
const LOOKED_AT = 4;

/** A text of at most `most` characters (code points), on one line and without surprises. */
export function cleanText(text: string, most: number): string {
  const kept: string[] = [];
  let gap = false;
  for (const character of text.slice(0, most * LOOKED_AT + 64)) {
    const code = character.codePointAt(0) as number;
    if (isSpace(code)) {
      gap = kept.length > 0;
      continue;
    }
    if (isUnwanted(code)) continue;
    if (gap) kept.push(' ');
    gap = false;
    kept.push(character);
    if (kept.length >= most) break;
  }
  return kept.slice(0, most).join('').trimEnd();
}

/** True for a text that `cleanText` would leave as it is. */
export function isCleanText(text: string, most: number): boolean {
  return text.length <= most * 2 && cleanText(text, most) === text;
}

function isUnwanted(code: number): boolean {
  return UNWANTED.some(([first, last]) => code >= first && code <= last);
}

/** Spaces of every width, tabs and line ends become one plain space. */
function isSpace(code: number): boolean {
  return (
    code === 0x20 ||
    (code >= 0x09 && code <= 0x0d) ||
    code === 0x85 ||
    code === 0xa0 ||
    (code >= 0x2000 && code <= 0x200a) ||
    code === 0x2028 ||
    code === 0x2029 ||
    code === 0x202f ||
    code === 0x205f ||
    code === 0x3000
  );
}
