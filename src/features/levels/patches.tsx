/** The patches a child has collected: one for each lesson ridden to its end, however it went and however often. */
import type { JSX } from 'preact';
import type { Lesson } from '../../core/level/schema.ts';
import { PatchList } from '../../ui/pictures/patch.tsx';
import '../../ui/pictures/patches.css';
import { words } from '../../words/words.ts';

const say = words('levels');

/** All of them in a row, or nothing while there is none. */
export function PatchRow({ lessons }: { readonly lessons: readonly Lesson[] }): JSX.Element | null {
  if (lessons.length === 0) return null;
  return (
    <section class="patch-row" aria-label={say('patches')}>
      <h3>{say('patches')}</h3>
      <PatchList lessons={lessons} />
    </section>
  );
}
