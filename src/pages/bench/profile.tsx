/**
 * The road of the bench from the side: ground, what lies on it, the shifts of the reference ride, and the handles of
 * what is selected. Draws and reports; edits are done by those who use it.
 */
import type { JSX } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import type { Course } from '../../core/course/types.ts';
import type { Level } from '../../core/level/schema.ts';
import type { Machine } from '../../core/model/types.ts';
import { roadPaths } from '../charts/road.ts';
import { benchWords } from '../words/bench.ts';
import type { Selection } from './desk.ts';
import { type Field, fieldsOf, pieceStartM, placeOf } from './fields.ts';
import { Handle } from './handle.tsx';
import { Bands } from './profileBands.tsx';
import { ShiftMarks } from './shiftMarks.tsx';
import { fieldValue, metric, pieceNumbers } from './say.ts';
import type { ReferenceRide } from './types.ts';
import { useWidth } from './width.ts';

const HEIGHT = 268;
const TOP = 46;
const BOTTOM = 206;
export const SIDE = 24;
/** A pixel of dragging up is a tenth of a point of gradient. */
const PERCENT_PER_PX = 0.1;
/** Numbers stand over pieces at least this wide (px). */
const WIDE_ENOUGH = 46;

export interface ProfileProps {
  readonly level: Level;
  readonly course: Course;
  readonly selection: Selection | null;
  readonly tryFromM: number;
  readonly machine: Machine;
  readonly reference: ReferenceRide | null;
  readonly onSelect: (selection: Selection) => void;
  readonly onField: (field: Field, value: number, gesture: string) => void;
  readonly onTryFrom: (atM: number) => void;
}

export function Profile(props: ProfileProps): JSX.Element {
  const { level, course, selection } = props;
  const { ref, width } = useWidth<HTMLDivElement>(960);
  // While a handle is dragged the scale stays, or the road would run away from the finger.
  const [heldPxPerM, setHeld] = useState<number | null>(null);
  const pxPerM = heldPxPerM ?? (width - 2 * SIDE) / course.lengthM;
  const x = (atM: number): number => SIDE + atM * pxPerM;
  const right = x(course.lengthM);
  const paths = useMemo(
    () => roadPaths(course, { fromM: 0, toM: course.lengthM, left: SIDE, right, top: TOP, bottom: BOTTOM }),
    [course, right],
  );
  const y = (atM: number): number => paths.y(Math.min(course.lengthM, atM));
  const fields = selection === null ? [] : fieldsOf(level, selection);
  const onDrag = (dragging: boolean): void => setHeld(dragging ? pxPerM : null);
  const select = (event: MouseEvent): void => {
    const box = (event.currentTarget as Element).getBoundingClientRect();
    const atM = (event.clientX - box.left - SIDE) / pxPerM;
    const index = level.pieces.findLastIndex((_, i) => pieceStartM(level, i) <= atM);
    if (index >= 0 && atM <= course.lengthM) props.onSelect({ list: 'pieces', index });
  };
  const tryFrom = Math.min(props.tryFromM, course.lengthM);
  return (
    <div class="bench-profile" ref={ref}>
      <svg
        width={width}
        height={HEIGHT}
        viewBox={`0 0 ${width} ${HEIGHT}`}
        role="group"
        aria-label={benchWords.edit.profile}
        data-profile
      >
        <rect class="catcher" width={width} height={HEIGHT} onClick={select} />
        <Selected {...{ level, selection, x }} />
        <path class="ground" d={paths.ground} />
        <path class="hatching" d={paths.hatching} />
        <path class="outline" d={paths.outline} />
        <PieceNumbers {...{ level, x, y }} />
        <Bands level={level} x={x} y={y} top={BOTTOM + 4} selection={selection} />
        <Axis lengthM={course.lengthM} x={x} />
        {props.reference !== null && (
          <ShiftMarks report={props.reference.report} machine={props.machine} x={x} y={y} />
        )}
        {fields.map((field) =>
          field.handle === null ? null : (
            <Handle
              key={`${selection?.list} ${selection?.index} ${field.name}`}
              label={benchWords.fields[field.name]}
              {...field}
              shown={fieldValue(field)}
              axis={field.handle.axis}
              x={x(field.handle.atM)}
              y={y(field.handle.atM) - (field.handle.axis === 'up' ? 6 : 0)}
              perPx={field.handle.axis === 'up' ? PERCENT_PER_PX : 1 / pxPerM}
              kind="edge"
              onValue={(value, gesture) => props.onField(field, value, gesture)}
              onDrag={onDrag}
            />
          ),
        )}
        <Handle
          label={benchWords.tryOut.start}
          value={Math.round(tryFrom)}
          low={0}
          high={Math.max(0, course.lengthM - 100)}
          step={course.lengthM > 2_000 ? 50 : 10}
          shown={metric.distance(tryFrom)}
          axis="along"
          x={x(tryFrom)}
          y={y(tryFrom) - 17}
          perPx={1 / pxPerM}
          kind="flag"
          onValue={props.onTryFrom}
        />
      </svg>
    </div>
  );
}

type Across = (atM: number) => number;

/** The selected piece or stretch as a lighter strip behind the road. */
function Selected(props: {
  readonly level: Level;
  readonly selection: Selection | null;
  readonly x: Across;
}): JSX.Element | null {
  const { level, selection, x } = props;
  const place = selection === null ? null : placeOf(level, selection);
  if (place === null) return null;
  const left = x(place.fromM) - 1;
  return (
    <rect class="selected" x={left} y={6} width={Math.max(3, x(place.toM) - left)} height={BOTTOM - 6} />
  );
}

/** Gradients over the pieces that have one, where there is room. */
function PieceNumbers(props: { readonly level: Level; readonly x: Across; readonly y: Across }): JSX.Element {
  const { level, x, y } = props;
  let fromM = 0;
  return (
    <g class="piece-numbers" aria-hidden="true">
      {level.pieces.map((piece, index) => {
        const startM = fromM;
        const lengthM = piece.kind === 'recorded' ? piece.stepM * (piece.heightsM.length - 1) : piece.lengthM;
        fromM += lengthM;
        if (piece.kind === 'flat' || piece.kind === 'recorded') return null;
        if (x(fromM) - x(startM) < WIDE_ENOUGH) return null;
        const middleM = startM + lengthM / 2;
        const text = pieceNumbers(piece).split(', ').at(-1);
        return (
          <text key={index} x={x(middleM)} y={Math.max(16, y(middleM) - 30)} text-anchor="middle">
            {text}
          </text>
        );
      })}
    </g>
  );
}

/** Distances along the lower edge. */
function Axis({ lengthM, x }: { readonly lengthM: number; readonly x: Across }): JSX.Element {
  const wanted = ((x(lengthM) - x(0)) / 90) | 0;
  const stepM =
    [10, 20, 50, 100, 200, 500, 1_000, 2_000, 5_000].find((step) => lengthM / step <= wanted) ?? 5_000;
  const marks: number[] = [];
  for (let atM = 0; atM <= lengthM; atM += stepM) marks.push(atM);
  return (
    <g class="axis" aria-hidden="true">
      {marks.map((atM) => (
        <text key={atM} x={x(atM)} y={HEIGHT - 6} text-anchor={atM === 0 ? 'start' : 'middle'}>
          {metric.distance(atM)}
        </text>
      ))}
    </g>
  );
}
