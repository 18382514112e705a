/** A sewn patch for a lesson: its shape, its stitches and a small picture of what was learnt. */
import type { JSX } from 'preact';
import type { Lesson } from '../../core/level/schema.ts';
import { patchName } from '../../words/common.ts';
import { Stroke } from './stroke.tsx';

/** Lines of the picture on each patch, in a box of 64 by 64. */
const PICTURES: Readonly<Partial<Record<Lesson, string>>> = {
  levers: 'M16 40H38q10 0 14-10M40 30 50 44M36 34 40 48',
  cadence: 'M32 18a14 14 0 1 1-13 9M19 18v10h10',
  easing: 'M18 46c2-14 10-24 28-28-2 12-8 20-20 22M18 46l12-12',
  'look-ahead': 'M12 32q20-20 40 0-20 20-40 0M32 26a6 6 0 1 0 .1 0',
  rolling: 'M10 40q8-16 16 0t16 0 12-8',
  'ride-over': 'M10 42H22q10-18 20 0H54M32 18v10',
  hidden: 'M12 44c10-26 18-26 22-14M34 44V24h16v20M40 30h4M40 36h4',
  'stop-gear': 'M24 14H40L50 24V40L40 50H24L14 40V24Z',
  everything: 'M10 46 26 22 36 36 44 26 54 46Z',
};

/** Three tones of paper that go round, so that neighbours differ; the picture and the name tell them apart. */
const CLOTHS = ['--leaf-pale', '--sky-low', '--sand'] as const;

/** One patch; `index` only chooses its cloth. */
export function Patch(props: {
  readonly lesson: Lesson;
  readonly name: string;
  readonly index: number;
}): JSX.Element {
  const { lesson, name, index } = props;
  const cloth = CLOTHS[index % CLOTHS.length] ?? CLOTHS[0];
  return (
    <figure class="patch" data-patch={lesson}>
      <svg viewBox="0 0 64 64" aria-hidden="true">
        <rect
          x="3"
          y="3"
          width="58"
          height="58"
          rx="18"
          fill={`var(${cloth})`}
          stroke="var(--ink)"
          stroke-width="2"
        />
        <rect
          x="7"
          y="7"
          width="50"
          height="50"
          rx="14"
          fill="none"
          stroke="var(--ink)"
          stroke-width="2"
          stroke-dasharray="5 3.5"
        />
        <Stroke d={PICTURES[lesson] ?? 'M14 46 32 18 50 46Z'} width={4} round stroke-linejoin="round" />
      </svg>
      <figcaption>{name}</figcaption>
    </figure>
  );
}

/** All patches of a child, each with the name of what was learnt. */
export function PatchList(props: {
  readonly lessons: readonly Lesson[];
  readonly look?: string;
}): JSX.Element {
  return (
    <ul class={props.look}>
      {props.lessons.map((lesson, i) => (
        <li key={lesson}>
          <Patch lesson={lesson} name={patchName(lesson)} index={i} />
        </li>
      ))}
    </ul>
  );
}
