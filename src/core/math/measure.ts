/**
 * Looks whether a value from outside is small enough to be looked at further: how many values it holds and how
 * deep they lie inside each other. Stops at the first that is too much, so that a huge value costs little, and
 * never calls itself, so that a deep one cannot break it.
 */

/** Whether a value from outside is an object with names in it: no list, and not nothing. */
export function isFields(value: unknown): value is Readonly<Record<string, unknown>> {
  return isHolder(value) && !Array.isArray(value);
}

/** What a text holds as JSON, or undefined where it is none; an invisible mark that some editors put before it is passed over. */
export function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return undefined;
  }
}

/** What is too much about a value, or null. A list or object that holds no other is 1 deep; entries are values and names, itself included. */
export function tooMuch(
  value: unknown,
  most: { readonly deep: number; readonly entries: number },
): 'too-deep' | 'too-much' | null {
  let level: object[] = isHolder(value) ? [value] : [];
  let entries = 1;
  for (let deep = 1; level.length > 0; deep += 1) {
    if (deep > most.deep) return 'too-deep';
    const next: object[] = [];
    for (const holder of level) {
      const inside: readonly unknown[] = Array.isArray(holder) ? holder : Object.values(holder);
      entries += inside.length;
      if (entries > most.entries) return 'too-much';
      for (const item of inside) if (isHolder(item)) next.push(item);
    }
    level = next;
  }
  return null;
}

/** Whether lists and objects lie inside each other deeper than that. */
export function isTooDeep(value: unknown, deep: number): boolean {
  return tooMuch(value, { deep, entries: Number.POSITIVE_INFINITY }) !== null;
}

function isHolder(value: unknown): value is object {
  return value !== null && typeof value === 'object';
}
