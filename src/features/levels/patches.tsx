/** The patches a child has collected: one for each lesson ridden to its end, however it went and however often. */
import type { KeptResult } from '../../core/coach/results.ts';
import type { JSX } from 'preact';
import { patchesOf } from '../../core/coach/patches.ts';
import type { Lesson, Level } from '../../core/level/schema.ts';
import { Patch } from '../../ui/pictures/patch.tsx';
import '../../ui/pictures/patches.css';
import { levelsWords } from './words.ts';
import { commonWords } from '../../words/common.ts';

/** Lessons with a patch, in the order they were earned. Kept rides have all been ridden to their end. */
export function earnedPatches(levels: readonly Level[], results: readonly KeptResult[]): readonly Lesson[] {
  const ridden = results
    .toSorted((a, b) => a.atMs - b.atMs)
    .flatMap(({ levelId }) => {
      const level = levels.find(({ id }) => id === levelId);
      return level === undefined
        ? []
        : [{ audience: level.audience, teaches: level.teaches, finished: true }];
    });
  return patchesOf(ridden);
}

/** All of them in a row, or nothing while there is none. */
export function PatchRow({ lessons }: { readonly lessons: readonly Lesson[] }): JSX.Element | null {
  if (lessons.length === 0) return null;
  return (
    <section class="patch-row" aria-label={levelsWords.patches}>
      <h3>{levelsWords.patches}</h3>
      <ul>
        {lessons.map((lesson, i) => (
          <li key={lesson}>
            <Patch lesson={lesson} name={commonWords.lessons[lesson]} index={i} />
          </li>
        ))}
      </ul>
    </section>
  );
}
