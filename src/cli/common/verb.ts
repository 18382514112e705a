/**
 * What a verb of the command line is: flags it understands, a piece of work, an answer. Nothing here
 * knows any particular verb; the table of them is in `main.ts`.
 */
import type { Args, FlagKind } from './args.ts';

export interface VerbAnswer {
  /** Printed with `--json`. */
  readonly json: unknown;
  /** Printed without it: a table or sentences. */
  readonly text: string;
  /** Says that what was given is no good, although there was something to report; exit code 2. */
  readonly complaint?: string;
}

export interface Verb {
  /** The rest of the line after the verb, for the help text. */
  readonly usage: string;
  readonly summary: string;
  /** Flags besides `--json`, without their dashes. */
  readonly flags: Readonly<Record<string, FlagKind>>;
  /** True if words without dashes (files) may follow. */
  readonly takesFiles: boolean;
  readonly run: (args: Args) => VerbAnswer;
}
