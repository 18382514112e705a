/**
 * The road of the bench from the side: ground, what lies on it, the shifts of the reference ride, and the handles of
 * what is selected. Draws and reports; edits are done by those who use it.
 */
import type { JSX } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { pieceLengthM } from '../../core/course/pieces.ts';
import type { Course } from '../../core/course/types.ts';
import type { Level } from '../../core/level/schema.ts';
import { sampleAt } from '../../core/math/numbers.ts';
import type { Machine } from '../../core/model/types.ts';
import { roadPaths } from '../../charts/paths.ts';
import { LEAST_TRY_M, type Selection } from './levelEditor.ts';
import { fieldsOf, type LevelField, pieceStartM, placeOfProblem } from './fields.ts';
import { Handle } from './handle.tsx';
import { fieldValue, pieceSlope, useFormat, windWords } from './say.ts';
import {
  type Across,
  Axis,
  Drawing,
  type DrawnRoad,
  Gradients,
  Heights,
  ShiftMarks,
} from './roadNumbers.tsx';
import { shownOf, type Span } from './zoom.tsx';
import type { ReferenceRide } from './services.ts';
import { words } from '../../words/words.ts';
import { useWidth } from '../../ui/hooks.ts';
import type { Format } from '../../words/format.ts';

const say = words('bench');

/** The paper (px). */
const PAPER = { height: 276, top: 46, bottom: 194 };
export const SIDE = 24;
/** A pixel of dragging up is a tenth of a point of gradient. */
const PERCENT_PER_PX = 0.1;
/** Numbers stand over pieces at least this wide (px). */
const WIDE_ENOUGH = 46;

interface ProfileProps {
  readonly level: Level;
  readonly course: Course;
  readonly selection: Selection | null;
  readonly tryFromM: number;
  readonly machine: Machine;
  readonly reference: ReferenceRide | null;
  /** The part of the road that is shown, null for all of it. */
  readonly view: Span | null;
  readonly onSelect: (selection: Selection) => void;
  readonly onField: (field: LevelField, value: number, gesture: string) => void;
  readonly onTryFrom: (atM: number) => void;
}

export function EditedProfile(props: ProfileProps): JSX.Element {
  const { level, course, selection, reference } = props;
  const [width, ref] = useWidth();
  // While a handle is dragged the scale stays, or the road would run away from the finger.
  const [heldPxPerM, setHeld] = useState<number | null>(null);
  const shown = shownOf(props.view, course.lengthM);
  const { fromM, toM } = shown;
  const held = props.view === null ? heldPxPerM : null;
  const pxPerM = held ?? (width - 2 * SIDE) / (toM - fromM);
  const x: Across = (atM) => SIDE + (atM - fromM) * pxPerM;
  const right = x(toM);
  const paths = useMemo(
    () => roadPaths(course, { fromM, toM, left: SIDE, right, top: PAPER.top, bottom: PAPER.bottom }),
    [course, fromM, toM, right],
  );
  const heightAt: Across = (atM) => sampleAt(course.heightM, atM);
  const y: Across = (atM) => paths.y(Math.min(course.lengthM, atM));
  useClick(ref, (atPx) => {
    const atM = fromM + (atPx - SIDE) / pxPerM;
    const index = level.pieces.findLastIndex((_, i) => pieceStartM(level, i) <= atM);
    if (index >= 0 && atM <= course.lengthM) props.onSelect({ list: 'pieces', index });
  });
  return (
    <div class="bench-profile" ref={ref} data-profile>
      <Drawing width={width} height={PAPER.height} label={say('edit-profile')}>
        <Selected {...{ level, selection, x }} />
        <path class="ground" d={paths.ground} />
        <path class="hatching" d={paths.hatching} />
        <path class="outline" d={paths.outline} />
        <Heights {...{ shown, heightAt, x, y }} />
        <PieceNumbers {...{ level, shown, heightAt, x, y }} />
        <Bands level={level} x={x} y={y} top={PAPER.bottom + 4} selection={selection} />
        <Axis shown={shown} x={x} y={PAPER.height - 6} />
        {reference !== null && <ShiftMarks report={reference.report} x={x} y={y} />}
      </Drawing>
      <Handles
        {...props}
        {...{ shown, x, y, pxPerM }}
        onDrag={(dragging) => setHeld(dragging ? pxPerM : null)}
      />
    </div>
  );
}

/** A click on the drawing itself, for those with a mouse; everybody can do the same in the list. */
function useClick(ref: { readonly current: HTMLElement | null }, onClick: (atPx: number) => void): void {
  const take = useRef(onClick);
  take.current = onClick;
  useEffect(() => {
    const element = ref.current;
    const click = (event: MouseEvent): void => {
      if (element === null || event.target instanceof HTMLInputElement) return;
      take.current(event.clientX - element.getBoundingClientRect().left);
    };
    element?.addEventListener('click', click);
    return () => element?.removeEventListener('click', click);
  }, []);
}

/** One handle for each number of the selected thing that has one, and the flag where test rides begin. */
function Handles(
  props: ProfileProps & {
    readonly shown: Span;
    readonly x: Across;
    readonly y: Across;
    readonly pxPerM: number;
    readonly onDrag: (dragging: boolean) => void;
  },
): JSX.Element {
  const { level, course, selection, shown, x, y, pxPerM } = props;
  const fields = selection === null ? [] : fieldsOf(level, selection);
  const tryFromM = Math.min(props.tryFromM, course.lengthM);
  const format = useFormat();
  const isShown = (atM: number): boolean => atM >= shown.fromM && atM <= shown.toM;
  return (
    <>
      {isShown(tryFromM) && (
        <Handle
          label={say('try-start')}
          value={Math.round(tryFromM)}
          low={0}
          high={Math.max(0, course.lengthM - LEAST_TRY_M)}
          step={course.lengthM > 2_000 ? 50 : 10}
          shown={format.distance(tryFromM)}
          axis="along"
          x={x(tryFromM)}
          y={y(tryFromM) - 17}
          perPx={1 / pxPerM}
          kind="begin"
          onValue={props.onTryFrom}
        />
      )}
      {fields.map(({ handle, ...field }) =>
        handle === null || !isShown(handle.atM) ? null : (
          <Handle
            key={`${selection?.list} ${selection?.index} ${field.name}`}
            {...field}
            label={say(`field-${field.name}`)}
            shown={fieldValue(format, field)}
            axis={handle.axis}
            x={x(handle.atM)}
            y={y(handle.atM) - (handle.axis === 'up' ? 6 : 0)}
            perPx={handle.axis === 'up' ? PERCENT_PER_PX : 1 / pxPerM}
            kind="edge"
            onValue={(value, gesture) => props.onField({ ...field, handle }, value, gesture)}
            onDrag={props.onDrag}
          />
        ),
      )}
    </>
  );
}

/** The selected piece or stretch as a lighter strip behind the road. */
function Selected(props: {
  readonly level: Level;
  readonly selection: Selection | null;
  readonly x: Across;
}): JSX.Element | null {
  const { level, selection, x } = props;
  const place = selection === null ? null : placeOfProblem(level, selection);
  if (place === null) return null;
  const left = x(place.fromM) - 1;
  return (
    <rect
      class="selected"
      x={left}
      y={6}
      width={Math.max(3, x(place.toM) - left)}
      height={PAPER.bottom - 6}
    />
  );
}

/** Gradients over the pieces that have one, and of parts of those that have many, where there is room. */
function PieceNumbers(props: DrawnRoad & { readonly level: Level }): JSX.Element {
  const { level, shown, x, y } = props;
  const format = useFormat();
  let endM = 0;
  return (
    <g class="piece-numbers" aria-hidden="true">
      {level.pieces.map((piece, index) => {
        const startM = endM;
        endM += pieceLengthM(piece);
        if (piece.kind === 'flat' || endM < shown.fromM || startM > shown.toM) return null;
        if (!('slopeRatio' in piece))
          return <Gradients key={index} {...props} part={{ fromM: startM, toM: endM }} />;
        if (x(endM) - x(startM) < WIDE_ENOUGH) return null;
        const middleM = (Math.max(startM, shown.fromM) + Math.min(endM, shown.toM)) / 2;
        return (
          <text key={index} x={x(middleM)} y={Math.max(16, y(middleM) - 30)} text-anchor="middle">
            {pieceSlope(piece, format)}
          </text>
        );
      })}
    </g>
  );
}

const BAND = 18;
/** Kinds lie in rows of their own, because they may lie over one another. */
const ROWS = { surfaces: 0, winds: 1, hidden: 2 } as const;
/** Average width of a letter in a band (px). */
const LETTER = 7.4;

interface Band {
  readonly list: 'winds' | 'surfaces' | 'hidden';
  readonly index: number;
  readonly fromM: number;
  readonly toM: number;
  readonly text: string;
}

/** What lies on the road, drawn on the profile: stop lines and cues at their place, wind, surface and sight as bands. */
function Bands(props: {
  readonly level: Level;
  readonly x: (atM: number) => number;
  readonly y: (atM: number) => number;
  readonly top: number;
  readonly selection: Selection | null;
}): JSX.Element {
  const { level, x, y, top, selection } = props;
  const chosen = (list: Selection['list'], index: number): string =>
    selection?.list === list && selection.index === index ? ' chosen' : '';
  return (
    <g aria-hidden="true">
      {bandsOf(level, useFormat()).map((band) => {
        const width = Math.max(4, x(band.toM) - x(band.fromM));
        const bandTop = top + ROWS[band.list] * (BAND + 1);
        return (
          <g key={`${band.list} ${band.index}`} class={`band ${band.list}${chosen(band.list, band.index)}`}>
            <rect x={x(band.fromM)} y={bandTop} width={width} height={BAND} rx="4" />
            {band.text.length * LETTER < width && (
              <text x={x(band.fromM) + 6} y={bandTop + 14}>
                {band.text}
              </text>
            )}
          </g>
        );
      })}
      {level.stopLinesM.map((atM, index) => (
        <path
          key={`${index}`}
          class={`stop-line${chosen('stopLinesM', index)}`}
          d={`M${x(atM).toFixed(1)} ${(y(atM) - 34).toFixed(1)}V${top}`}
        />
      ))}
      {level.cues.map((cue, index) => (
        <path
          key={`${index}`}
          class={`cue-mark${chosen('cues', index)}`}
          d={`M${x(cue.atM).toFixed(1)} ${(y(cue.atM) - 8).toFixed(1)}v-18h-7v-13h14v13h-7`}
        />
      ))}
    </g>
  );
}

function bandsOf(level: Level, format: Format): readonly Band[] {
  return [
    ...level.surfaces.map((one, index) => ({
      ...one,
      list: 'surfaces' as const,
      index,
      text: say(`surface-${one.surface}`),
    })),
    ...level.winds.map((one, index) => ({
      ...one,
      list: 'winds' as const,
      index,
      text: `${one.windMps >= 0 ? '←' : '→'} ${windWords(format, one.windMps)}`,
    })),
    ...level.hidden.map((one, index) => ({
      ...one,
      list: 'hidden' as const,
      index,
      text: say('hidden-sight', { sight: format.distance(one.sightM) }),
    })),
  ];
}
