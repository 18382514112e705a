/**
 * A level on the bench: its road from the side and as a list, what is wrong with it, what it would feel like, and
 * what can be done with it. Every change goes through the desk, so that it can be taken back.
 */
import type { JSX } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { courseOfLevel } from '../../core/level/build.ts';
import { levelFrom } from '../../core/level/cut.ts';
import { type LevelWarning, lintLevel } from '../../core/level/lint.ts';
import { parseLevel } from '../../core/level/parse.ts';
import type { Level } from '../../core/level/schema.ts';
import { buildMachine } from '../../core/model/machine.ts';
import type { Machine } from '../../core/model/types.ts';
import { createFormat } from '../format.ts';
import type { Send, State } from '../store.ts';
import { benchWords } from '../words/bench.ts';
import { Checks } from './checks.tsx';
import { ComparePanel } from './comparePanel.tsx';
import { type Draft, desk } from './desk.ts';
import { placeOf, selectionAt } from './fields.ts';
import { JsonPanel } from './jsonPanel.tsx';
import { Lanes } from './lanes.tsx';
import { MorePanel } from './morePanel.tsx';
import { Profile } from './profile.tsx';
import { ReferencePanel } from './referencePanel.tsx';
import { SharePanel } from './sharePanel.tsx';
import { Things } from './things.tsx';
import { Toolbar } from './toolbar.tsx';
import type { BenchServices, Who } from './types.ts';
import { usePlanning } from './usePlanning.ts';

/** The road has rested for so long before it is looked at for warnings (ms). */
const LINT_REST_MS = 250;
/** A test ride of a place begins so far before it (m). */
const RUN_UP_M = 60;

export interface EditorProps {
  readonly draft: Draft;
  readonly state: State;
  readonly services: BenchServices;
  readonly send: Send;
}

export function Editor({ draft, state, services, send }: EditorProps): JSX.Element {
  const { settings } = state;
  const level = draft.history.present;
  const { bike, rider } = settings;
  const own = useMemo(() => ({ bike, rider }), [bike, rider]);
  const [chosen, setWho] = useState<Who | null>(null);
  const who = chosen ?? own;
  const machine = useMemo(() => buildMachine(who.bike, who.rider), [who]);
  const course = useRoad(level);
  const problems = useMemo(() => {
    const parsed = parseLevel(level);
    return parsed.ok ? [] : parsed.problems;
  }, [level]);
  const rideable = problems.length === 0 ? level : null;
  const warnings = useWarnings(rideable, machine);
  const { planning, ask } = usePlanning(services, rideable, who);
  const reference = planning.kind === 'done' ? planning.ride : null;
  const top = useRef<HTMLDivElement | null>(null);
  useGuard(draft);

  const goTo = (path: string, fromM: number | null): void => {
    const selection = selectionAt(path);
    if (selection !== null) desk.change({ selection });
    const place = selection === null ? null : placeOf(level, selection);
    const atM = fromM ?? place?.fromM ?? null;
    if (atM !== null) desk.change({ tryFromM: Math.max(0, Math.round(atM - RUN_UP_M)) });
    top.current?.scrollIntoView({ block: 'start' });
    // The thing opens with the next drawing; then its first number takes the focus.
    setTimeout(() => {
      const thing = selection === null ? null : `[data-thing="${selection.list}[${selection.index}]"]`;
      const field = thing === null ? '[data-level-title]' : `${thing} input, ${thing} button`;
      document.querySelector<HTMLElement>(field)?.focus();
    }, 0);
  };
  const { recorded } = draft;
  const samples = recorded !== null && samePieces(recorded.pieces, level.pieces) ? recorded.samples : null;
  return (
    <div class="bench" ref={top}>
      <Toolbar
        {...{ draft, course, services }}
        faulty={rideable === null}
        onTry={() => send({ kind: 'try-level', level: levelFrom(level, draft.tryFromM) })}
      />
      <section class="paper road-view" aria-label={benchWords.edit.profile}>
        <Profile
          {...{ level, course, machine, reference }}
          selection={draft.selection}
          tryFromM={draft.tryFromM}
          onSelect={(selection) => desk.change({ selection })}
          onField={(field, value, gesture) => desk.edit(field.edit(value), gesture)}
          onTryFrom={(tryFromM) => desk.change({ tryFromM })}
        />
        {reference !== null && (
          <Lanes lengthM={course.lengthM} reference={reference.trace.samples} recorded={samples} />
        )}
      </section>
      <div class="bench-columns">
        <div>
          <Things
            level={level}
            selection={draft.selection}
            onSelect={(selection) => desk.change({ selection })}
            onEdit={(edit, gesture) => desk.edit(edit, gesture)}
          />
          <MorePanel level={level} onEdit={(edit, gesture) => desk.edit(edit, gesture)} />
        </div>
        <div>
          <Checks
            problems={problems}
            warnings={warnings}
            onGo={(finding) => goTo(finding.path, 'fromM' in finding ? Number(finding.fromM) : null)}
          />
          <ReferencePanel {...{ who, own, machine, planning }} onWho={setWho} onAsk={ask} />
          {samples !== null && (
            <ComparePanel
              {...{ samples, course, machine, services }}
              ride={reference}
              keptId={draft.kept?.id ?? null}
              format={createFormat(settings.units)}
              onForgotten={() => desk.change({ recorded: null })}
            />
          )}
          <SharePanel level={rideable} />
          <JsonPanel level={level} onLevel={(next, gesture) => desk.replace(next, gesture)} />
        </div>
      </div>
    </div>
  );
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

/** The browser asks before a tab with unsaved changes is closed. */
function useGuard({ history, kept }: Draft): void {
  const unsaved = history.present !== kept && (history.past.length > 0 || kept === null);
  useEffect(() => {
    if (!unsaved) return undefined;
    const ask = (event: BeforeUnloadEvent): void => event.preventDefault();
    window.addEventListener('beforeunload', ask);
    return () => window.removeEventListener('beforeunload', ask);
  }, [unsaved]);
}

function samePieces(a: Level['pieces'], b: Level['pieces']): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}
