/**
 * Walks through JSON text and notes on which line each part begins, and where it stops being JSON. What the browser
 * says about that differs from one to the next; this does not. Values are not kept. Pure.
 */

/** Lines by path, such as `pieces[2].lengthM`; the line of the first fault, or null where there is none. */
interface JsonScan {
  readonly lines: ReadonlyMap<string, number>;
  readonly faultLine: number | null;
}

/** Nobody nests a level this deep. */
const DEEPEST = 60;
/** From one quote to the next that is not escaped; what is between them is judged by the browser. */
const STRING = /"(?:[^"\\\n]|\\.)*"/y;
const PLAIN = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y;
const SPACE = /[ \t\r\n\ufeff]*/y;

class Fault extends Error {}

/** Scans a text to its end or to its first fault. */
export function scanJson(text: string): JsonScan {
  const lines = new Map<string, number>();
  const walk = new Walk(text, lines);
  try {
    walk.value('', 0);
    walk.end();
    return { lines, faultLine: null };
  } catch (error) {
    if (!(error instanceof Fault)) throw error;
    return { lines, faultLine: walk.line() };
  }
}

class Walk {
  readonly #text: string;
  readonly #lines: Map<string, number>;
  #at = 0;
  #countedTo = 0;
  #line = 1;

  constructor(text: string, lines: Map<string, number>) {
    this.#text = text;
    this.#lines = lines;
  }

  /** The line of the place the walk has come to. */
  line(): number {
    for (; this.#countedTo < this.#at; this.#countedTo += 1)
      if (this.#text[this.#countedTo] === '\n') this.#line += 1;
    return this.#line;
  }

  value(path: string, depth: number): void {
    this.#skip();
    if (!this.#lines.has(path)) this.#lines.set(path, this.line());
    if (depth > DEEPEST) throw new Fault();
    const next = this.#text[this.#at];
    if (next === '{') this.#list('}', () => this.#member(path, depth));
    else if (next === '[') {
      let index = 0;
      this.#list(']', () => {
        this.value(`${path}[${index}]`, depth + 1);
        index += 1;
      });
    } else if (next === '"') this.#string();
    else this.#take(PLAIN);
  }

  end(): void {
    this.#skip();
    if (this.#at < this.#text.length) throw new Fault();
  }

  #member(path: string, depth: number): void {
    const key = this.#string();
    const inner = path === '' ? key : `${path}.${key}`;
    this.#lines.set(inner, this.line());
    this.#skip();
    this.#sign(':');
    this.value(inner, depth + 1);
  }

  /** Everything up to the closing sign, entry by entry. */
  #list(close: string, entry: () => void): void {
    this.#at += 1;
    this.#skip();
    if (this.#text[this.#at] === close) {
      this.#at += 1;
      return;
    }
    for (;;) {
      this.#skip();
      entry();
      this.#skip();
      if (this.#text[this.#at] === close) break;
      this.#sign(',');
    }
    this.#at += 1;
  }

  #string(): string {
    const at = this.#at;
    const text = this.#take(STRING);
    try {
      return JSON.parse(text) as string;
    } catch {
      this.#at = at;
      throw new Fault();
    }
  }

  #sign(sign: string): void {
    if (this.#text[this.#at] !== sign) throw new Fault();
    this.#at += 1;
  }

  #take(pattern: RegExp): string {
    pattern.lastIndex = this.#at;
    const found = pattern.exec(this.#text)?.[0];
    if (found === undefined) throw new Fault();
    this.#at += found.length;
    return found;
  }

  #skip(): void {
    SPACE.lastIndex = this.#at;
    this.#at += SPACE.exec(this.#text)?.[0].length ?? 0;
  }
}
