/** What the debrief says its sentences with: the words for who the level is for, and how numbers are written. */
import type { Level } from '../../core/level/schema.ts';
import type { Format } from '../../words/format.ts';
import type { Messages } from '../../words/messages.ts';
import { type Say, words } from '../../words/words.ts';

type Grown = Messages['debrief'];
type Young = Messages['debriefChildren'];
/** All that either of two messages of one name is filled with. */
type Both<A, B> = A extends null ? B : B extends null ? A : A & B;
type DebriefMessages = {
  readonly [Id in keyof Grown]: Id extends keyof Young ? Both<Grown[Id], Young[Id]> : Grown[Id];
};
/** Says a message of the debrief. */
export type SayDebrief = Say<DebriefMessages>;

/** What sentences are made with. */
export interface Speech {
  readonly say: SayDebrief;
  readonly format: Format;
  /** Pitches on the road, for "the pitch" or "the first pitch". */
  readonly pitchCount: number;
}

const sayGrown: SayDebrief = words('debrief');
const young = words('debriefChildren');
/** What there is for children as they are spoken to, the rest as it is for everyone. */
const sayYoung: SayDebrief = Object.assign(
  (...asked: Parameters<SayDebrief>) =>
    // The compiler cannot know that a name the children's file has is one of its own.
    (young.has(asked[0]) ? (young as SayDebrief) : sayGrown)(...asked),
  sayGrown,
);

/** The words for who a level is for. */
export const debriefFor = (audience: Level['audience']): SayDebrief =>
  audience === 'children' ? sayYoung : sayGrown;
