/**
 * The gear check: which road, the answer in sentences, where the gears run out, other parts, all gears, roll-out. Rider, bike
 * and roads of the state go in, wishes go to the store; riding the candidates is done elsewhere.
 */
import { createFormat, type Format } from '../../words/format.ts';
import { levelForButton } from '../../state/nextRide.ts';
import type { GearCheckProps, GearCheckServices } from './services.ts';
import { type Page, Paper, Sheet } from '../../ui/parts.tsx';
import { common } from '../../words/common.ts';
import { words } from '../../words/words.ts';
import type { JSX } from 'preact';
import { useId, useMemo } from 'preact/hooks';
import { courseOfLevel } from '../../core/level/build.ts';
import type { Level } from '../../core/level/schema.ts';
import { GearAnswer, toldStretches, useCheck } from './answerText.tsx';
import { AskPart } from './askPart.tsx';
import { Candidates, type TakeParts } from './candidates.tsx';
import { GearStairs } from './stairs.tsx';
import { RollOut } from './rollOut.tsx';
import type { GearOutcome, ShortStretch } from '../../core/coach/gearCheck.ts';
import type { Course } from '../../core/course/types.ts';
import { px, roadPaths } from '../../charts/paths.ts';
import { roadTicks } from '../../charts/stripLayout.ts';
import { useWidth } from '../../ui/hooks.ts';
import { Stroke } from '../../ui/pictures/stroke.tsx';
import './gearcheck.css';

const say = words('gearcheck');

export const gearCheckPage: Page<GearCheckServices> = (state, send, services) => (
  <Sheet title={common('nav-gearcheck')} intro={say('intro')}>
    <GearCheckPage
      bike={state.settings.bike}
      rider={state.settings.rider}
      levels={state.levels}
      ownLevels={state.ownLevels}
      chosenLevelId={state.rest || (levelForButton(state)?.id ?? '')}
      onCompute={services.checkGears}
      onChooseLevel={(rest) => send({ kind: 'address', address: { view: 'gearcheck', rest } })}
      onTakeBike={(bike) => send({ kind: 'choose-bike', bike })}
      format={createFormat(state.settings.units)}
    />
  </Sheet>
);

/** Id of a bike that is not one of the bundled ones. */
const OWN_BIKE = 'own';

/** The page below its head. */
export function GearCheckPage(props: GearCheckProps): JSX.Element | null {
  const { levels, ownLevels, chosenLevelId } = props;
  const everything = [...levels, ...ownLevels];
  const level = everything.find(({ id }) => id === chosenLevelId) ?? everything[0];
  return level === undefined ? null : <Check {...props} level={level} />;
}

function Check(props: GearCheckProps & { readonly level: Level }): JSX.Element {
  const { level, bike, rider, format, onTakeBike } = props;
  const course = useMemo(() => courseOfLevel(level), [level]);
  const question = useMemo(() => ({ level, seed: level.seed, bike, rider }), [level, bike, rider]);
  const [state, again] = useCheck(question, props.onCompute);
  const take: TakeParts = ({ chainringsTeeth, sprocketsTeeth }) =>
    onTakeBike({ ...bike, id: OWN_BIKE, chainringsTeeth, sprocketsTeeth });
  return (
    <div class="papers gear-check">
      <LevelChoice {...props} />
      <p class="gear-you">
        {say('you', {
          parts: format.parts(bike),
          low: rider.cadenceLowRpm,
          high: rider.cadenceHighRpm,
        })}
      </p>
      <GearAnswer state={state} format={format} onAgain={again} />
      <Paper title={say('profile')}>
        <GearRoad course={course} own={state.own} format={format} />
      </Paper>
      <AskPart question={question} onCompute={props.onCompute} onTake={take} format={format} />
      <Candidates state={state} format={format} onTake={take} />
      <GearStairs bike={bike} rider={rider} format={format} />
      <RollOut bike={bike} format={format} />
    </div>
  );
}

function LevelChoice(props: GearCheckProps & { readonly level: Level }): JSX.Element {
  const { levels, ownLevels, level, onChooseLevel } = props;
  const groups = [
    [say('roads-ladder'), levels.filter(({ audience }) => audience === 'everyone')],
    [common('ladder-children'), levels.filter(({ audience }) => audience === 'children')],
    [say('roads-own'), ownLevels],
  ] as const;
  return (
    <label class="gear-level">
      <span>{say('road')}</span>
      <select value={level.id} onChange={(event) => onChooseLevel(event.currentTarget.value)}>
        {groups
          .filter(([, list]) => list.length > 0)
          .map(([label, list]) => (
            <optgroup key={label} label={label}>
              {list.map(({ id, title }) => (
                <option key={id} value={id} selected={id === level.id}>
                  {title}
                </option>
              ))}
            </optgroup>
          ))}
      </select>
    </label>
  );
}

/** The paper (px). */
const PAPER = { height: 190, top: 46, bottom: 168, edge: 8 };
/** A stretch is drawn at least this wide, or nobody would find it (px). */
const LEAST_PX = 14;

interface RoadProps {
  readonly course: Course;
  readonly own: GearOutcome | null;
  readonly format: Format;
}

/**
 * The chosen road with the places where the bike has no gear left: below the road where the lowest is too hard,
 * above it where the highest is too easy. Shape, ink and words tell which is which.
 */
function GearRoad({ course, own, format }: RoadProps): JSX.Element {
  const [width, paper] = useWidth();
  const id = useId();
  const below = toldStretches(own?.belowBand ?? []);
  const above = toldStretches(own?.aboveBand ?? []);
  const [left, right] = [PAPER.edge, width - PAPER.edge];
  const domain = { fromM: 0, toM: course.lengthM };
  const road = useMemo(
    () =>
      roadPaths(course, { fromM: 0, toM: course.lengthM, left, right, top: PAPER.top, bottom: PAPER.bottom }),
    [course, left, right],
  );
  const x = (m: number): number => left + (m / course.lengthM) * (right - left);
  const said = say('profile-desc', {
    length: format.road(course.lengthM),
    below: below.length,
    above: above.length,
  });
  const marks = { x, y: (m: number) => road.y(m), edge: right };
  return (
    <div class="gear-road" ref={paper}>
      <svg viewBox={`0 0 ${width} ${PAPER.height}`} role="img" aria-labelledby={id}>
        <title id={id}>{said}</title>
        <path d={road.ground} fill="var(--sand)" />
        <path d={road.hatching} stroke="var(--ink)" stroke-width="1.1" />
        <Stroke d={road.outline} width={2.6} />
        {below.map((stretch) => (
          <Stretch key={stretch.fromM} stretch={stretch} kind="below" {...marks} />
        ))}
        {above.map((stretch) => (
          <Stretch key={stretch.fromM} stretch={stretch} kind="above" {...marks} />
        ))}
        {roadTicks(domain, right - left, format.unitM).map((m) => (
          <text
            key={m}
            x={px(x(m))}
            y={PAPER.height - 6}
            font-size="12"
            fill="var(--ink-soft)"
            text-anchor={m === 0 ? 'start' : m > course.lengthM * 0.95 ? 'end' : 'middle'}
          >
            {format.distance(m)}
          </text>
        ))}
      </svg>
      {own !== null && below.length + above.length === 0 && <p class="quiet">{say('profile-nowhere')}</p>}
      <ul class="legend gear-legend">
        {below.length > 0 && (
          <li>
            <LegendMark kind="below" />
            {say('profile-below')}
          </li>
        )}
        {above.length > 0 && (
          <li>
            <LegendMark kind="above" />
            {say('profile-above')}
          </li>
        )}
      </ul>
    </div>
  );
}

type Kind = 'below' | 'above';

function Stretch(props: {
  readonly stretch: ShortStretch;
  readonly kind: Kind;
  readonly x: (m: number) => number;
  readonly y: (m: number) => number;
  readonly edge: number;
}): JSX.Element {
  const { stretch, kind, x, y, edge } = props;
  const middle = (x(stretch.fromM) + x(stretch.toM)) / 2;
  const wide = Math.max(LEAST_PX, x(stretch.toM) - x(stretch.fromM));
  const labelX = Math.min(edge - 34, Math.max(PAPER.edge + 34, middle));
  const at = y((stretch.fromM + stretch.toM) / 2);
  return (
    <g data-stretch={kind}>
      <rect
        x={px(middle - wide / 2)}
        y="26"
        width={px(wide)}
        height={PAPER.bottom - 26}
        fill="var(--attention)"
        opacity="0.3"
      />
      <path d={`M${px(middle)} 26V${px(at - 4)}`} stroke="var(--ink)" stroke-width="1.6" />
      <path d={pointer(kind, middle, kind === 'below' ? at - 4 : at - 18)} fill="var(--ink)" />
      <text x={px(labelX)} y="18" text-anchor="middle" font-size="15" font-weight="800" fill="var(--ink)">
        {say('perMinute', { rpm: Math.round(stretch.meanRpm) })}
      </text>
    </g>
  );
}

/** Down where the legs are pressed down, up where they spin. */
function pointer(kind: Kind, x: number, y: number): string {
  return kind === 'below' ? `M${px(x)} ${px(y)}l-8 -14h16Z` : `M${px(x)} ${px(y)}l-8 14h16Z`;
}

function LegendMark({ kind }: { readonly kind: Kind }): JSX.Element {
  return (
    <svg width="18" height="18" viewBox="0 0 18 18" aria-hidden="true">
      <path d={pointer(kind, 9, kind === 'below' ? 16 : 2)} fill="var(--ink)" />
    </svg>
  );
}
