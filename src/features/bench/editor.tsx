/**
 * A level on the bench: its road from the side and as a list, what is wrong with it, what it would feel like, and
 * what can be done with it. Every change goes through the desk, so that it can be taken back.
 */
import type { JSX } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Course } from '../../core/course/types.ts';
import { courseOfLevel } from '../../core/level/build.ts';
import { levelFrom, trimmed } from '../../core/level/cut.ts';
import type { RecordedSample } from '../../core/gpx/recorded.ts';
import { type LevelWarning, lintLevel } from '../../core/level/lint.ts';
import { parseLevel } from '../../core/level/parse.ts';
import type { Problem } from '../../core/level/problems.ts';
import type { Level } from '../../core/level/schema.ts';
import { buildMachine } from '../../core/model/machine.ts';
import type { Machine, Rider } from '../../core/model/types.ts';
import type { Send, State } from '../../state/store.ts';
import { AS_RIDDEN, ComparePanel, riderAsRidden } from './comparePanel.tsx';
import { Checks } from './checks.tsx';
import { type Draft, levelEditor, type Selection } from './levelEditor.ts';
import { placeOfProblem, selectionAt } from './fields.ts';
import { JsonPanel } from './jsonPanel.tsx';
import { Lanes } from './lanes.tsx';
import { MorePanel } from './morePanel.tsx';
import { EditedProfile } from './profile.tsx';
import { type Planning, ReferencePanel, usePlanning } from './referencePanel.tsx';
import { SharePanel } from './sharePanel.tsx';
import { PieceList } from './pieceList.tsx';
import { Toolbar } from './toolbar.tsx';
import type { BenchServices, ReferenceRide, Who } from './services.ts';
import { shownOf, type Span, withPlace, ZoomBar } from './zoom.tsx';
import { words } from '../../words/words.ts';

const say = words('bench');

/** The road has rested for so long before it is looked at for warnings (ms). */
const LINT_REST_MS = 250;
/** A test ride of a place begins so far before it (m). */
const RUN_UP_M = 60;

interface EditorProps {
  readonly draft: Draft;
  readonly state: State;
  readonly services: BenchServices;
  readonly send: Send;
}

export function Editor(props: EditorProps): JSX.Element {
  const { draft, state, services, send } = props;
  const { bike, rider } = state.settings;
  const level = draft.history.present;
  const own = useMemo(() => ({ bike, rider }), [bike, rider]);
  const course = useRoad(level);
  const samples = samplesFor(draft);
  const { who, asRidden, setWho } = useWho(own, samples, course);
  const machine = useMemo(() => buildMachine(who.bike, who.rider), [who]);
  const problems = useProblems(level);
  const rideable = problems.length === 0 ? level : null;
  const { planning, ask } = usePlanning(services, rideable, who);
  const reference = planning.kind === 'done' ? planning.ride : null;
  const selected = draft.selection === null ? null : placeOfProblem(level, draft.selection);
  const [view, setView] = useViewOf(course.lengthM, draft.selection, selected);
  return (
    <div class="bench">
      <section class="paper road-view pinned" aria-label={say('edit-profile')}>
        <EditedProfile
          {...{ level, course, machine, reference, view }}
          selection={draft.selection}
          tryFromM={draft.tryFromM}
          onSelect={(selection) => levelEditor.change({ selection })}
          onField={(field, value, gesture) => levelEditor.edit(field.edit(value), gesture)}
          onTryFrom={(tryFromM) => levelEditor.change({ tryFromM })}
        />
        <ZoomBar
          {...{ view }}
          lengthM={course.lengthM}
          aroundM={selected === null ? null : (selected.fromM + selected.toM) / 2}
          onView={setView}
        />
      </section>
      <Toolbar
        {...{ draft, course, services }}
        faulty={rideable === null}
        onTry={() => send({ kind: 'try-level', level: levelFrom(level, draft.tryFromM) })}
      />
      {reference !== null && (
        <section class="paper road-view" aria-label={say('reference-best')}>
          <Lanes
            shown={shownOf(view, course.lengthM)}
            reference={reference.trace.samples}
            recorded={samples}
          />
        </section>
      )}
      <div class="bench-columns">
        <div>
          <PieceList
            level={level}
            selection={draft.selection}
            onSelect={(selection) => levelEditor.change({ selection })}
            onEdit={(edit, gesture) => levelEditor.edit(edit, gesture)}
          />
          <MorePanel level={level} onEdit={(edit, gesture) => levelEditor.edit(edit, gesture)} />
        </div>
        <Panels
          {...props}
          {...{ who, own, asRidden, machine, course, problems, rideable, planning, reference, samples }}
          onWho={setWho}
          onAsk={ask}
        />
      </div>
    </div>
  );
}

/**
 * Who rides the best ride: beside a recorded one the rider of the settings with the power that its climbs tell, until
 * somebody else is chosen.
 */
function useWho(own: Who, samples: readonly RecordedSample[] | null, course: Course) {
  const [chosen, setWho] = useState<Who | null>(null);
  const bike = chosen?.bike ?? own.bike;
  const asRidden = useMemo(
    () => (samples === null ? null : riderAsRidden(samples, course, { bike, rider: own.rider })),
    [samples, course, bike, own.rider],
  );
  const other = chosen === null || chosen.rider.id === AS_RIDDEN ? null : chosen.rider;
  const rider = other ?? asRidden ?? own.rider;
  const who = useMemo(() => ({ bike, rider }), [bike, rider]);
  return { who, asRidden, setWho } as const;
}

/** The part of the road that is shown; it goes to where something is selected outside of it. */
function useViewOf(lengthM: number, selection: Selection | null, place: Span | null) {
  const [view, setView] = useState<Span | null>(null);
  useEffect(() => {
    if (place !== null) setView((before) => withPlace(before, lengthM, place));
  }, [selection]);
  return [view, setView] as const;
}

/** What is said about the level, and the ways it leaves the bench. */
function Panels(
  props: EditorProps & {
    readonly who: Who;
    readonly own: Who;
    readonly asRidden: Rider | null;
    readonly machine: Machine;
    readonly course: Course;
    readonly problems: readonly Problem[];
    readonly rideable: Level | null;
    readonly planning: Planning;
    readonly reference: ReferenceRide | null;
    readonly samples: readonly RecordedSample[] | null;
    readonly onWho: (who: Who) => void;
    readonly onAsk: () => void;
  },
): JSX.Element {
  const { draft, machine, problems, rideable, samples } = props;
  const level = draft.history.present;
  const warnings = useWarnings(rideable, machine);
  return (
    <div>
      <Checks
        problems={problems}
        warnings={warnings}
        onGo={(finding) => goTo(level, finding.path, 'fromM' in finding ? Number(finding.fromM) : null)}
        trimOf={({ fromM, toM }) => {
          const cut = trimmed(level, fromM, toM);
          return cut === null ? null : () => levelEditor.replace(cut);
        }}
      />
      <ReferencePanel {...props} />
      {samples !== null && (
        <ComparePanel
          {...props}
          samples={samples}
          ride={props.reference}
          keptId={draft.kept?.id ?? null}
          onForgotten={() => levelEditor.change({ recorded: null })}
        />
      )}
      <SharePanel level={rideable} />
      <JsonPanel level={level} onLevel={(next, gesture) => levelEditor.replace(next, gesture)} />
    </div>
  );
}

/** Opens the thing a finding is about, puts the flag of the test ride before it, and gives its first field the focus. */
function goTo(level: Level, path: string, fromM: number | null): void {
  const selection = selectionAt(path);
  const place = selection === null ? null : placeOfProblem(level, selection);
  const atM = fromM ?? place?.fromM ?? null;
  levelEditor.change({
    ...(selection === null ? {} : { selection }),
    ...(atM === null ? {} : { tryFromM: Math.max(0, Math.round(atM - RUN_UP_M)) }),
  });
  // What was opened is there after the next drawing.
  setTimeout(() => {
    const thing = selection === null ? '' : `[data-thing="${selection.list}[${selection.index}]"]`;
    const there = document.querySelector<HTMLElement>(
      thing === '' ? '[data-level-title]' : `${thing} input, ${thing} select`,
    );
    const shown = there ?? document.querySelector<HTMLElement>(`${thing} button`);
    shown?.focus({ preventScroll: true });
    shown?.scrollIntoView({ block: 'center' });
  }, 0);
}

/** Why a level cannot be ridden. */
function useProblems(level: Level): readonly Problem[] {
  return useMemo(() => {
    const parsed = parseLevel(level);
    return parsed.ok ? [] : parsed.problems;
  }, [level]);
}

/** What was ridden on this road; null once the road is another. */
function samplesFor({ recorded, history }: Draft): readonly RecordedSample[] | null {
  return recorded !== null && samePieces(recorded.pieces, history.present.pieces) ? recorded.samples : null;
}

/** The course of a level, built anew only when its road has changed. */
function useRoad(level: Level) {
  const { pieces, joinM, seed, stopLinesM, winds, surfaces, hidden } = level;
  return useMemo(() => courseOfLevel(level), [pieces, joinM, seed, stopLinesM, winds, surfaces, hidden]);
}

/** Warnings, looked for when the road has rested; null meanwhile. */
function useWarnings(level: Level | null, machine: Machine): readonly LevelWarning[] | null {
  const [found, setFound] = useState<{ readonly for: Level; readonly list: readonly LevelWarning[] } | null>(
    null,
  );
  useEffect(() => {
    if (level === null) return undefined;
    const timer = setTimeout(() => setFound({ for: level, list: lintLevel(level, machine) }), LINT_REST_MS);
    return () => clearTimeout(timer);
  }, [level, machine]);
  return found !== null && found.for === level ? found.list : null;
}

function samePieces(a: Level['pieces'], b: Level['pieces']): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}
