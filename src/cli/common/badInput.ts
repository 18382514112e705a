/** The one kind of fault that is the fault of what was given: it ends in a sentence and exit code 2. */

/** Something a person gave is no good. The message is a whole sentence that says what to do. */
export class BadInput extends Error {}

/** There is nothing of this name; says what there is. */
export function noSuch(kind: string, name: string, names: readonly string[], more = ''): BadInput {
  return new BadInput(`There is no ${kind} "${name}". Choose one of ${names.join(', ')}${more}.`);
}
