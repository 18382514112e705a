/**
 * Which stretch of a recorded road becomes a level: handles on its profile, numbers, the hardest two kilometres as a
 * proposal. Then a title, and it is saved: heights and distances only.
 */
import { Paper } from '../../ui/parts.tsx';
import type { JSX } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import type { RoadStretch } from '../../core/gpx/types.ts';
import { levelFigures } from '../../core/gpx/level.ts';
import { ascentM } from '../../core/gpx/smooth.ts';
import type { RoadSummary } from '../../core/gpx/summary.ts';
import { LONGEST_LEVEL_M, SHORTEST_LEVEL_M, STEEPEST_RATIO } from '../../core/level/schema.ts';
import type { Send } from '../../state/store.ts';
import { levelEditor } from './levelEditor.ts';
import { freshId } from './fresh.ts';
import { NumberField, TextField } from './inputs.tsx';
import { hardestLength, useFormat, useTold } from './say.ts';
import type { BenchServices } from './services.ts';
import { spokenLanguage, words } from '../../words/words.ts';
import { sentenceIn } from '../../words/problems.ts';
import { Button } from '../../ui/controls.tsx';
import { sampleAt } from '../../core/math/numbers.ts';
import { px } from '../../charts/paths.ts';
import { Handle } from './handle.tsx';
import { SIDE } from './profile.tsx';
import { Axis, Drawing, Gradients, Heights } from './roadNumbers.tsx';
import { shownOf, type Span, ZoomBar } from './zoom.tsx';
import { useWidth } from '../../ui/hooks.ts';

const say = words('bench');

/** So much less climbed than recorded is worth a word (m). */
const FLATTER_M = 2;

interface ChoiceProps {
  readonly road: RoadSummary;
  readonly services: BenchServices;
  readonly send: Send;
}

export function StretchChoice({ road, services, send }: ChoiceProps): JSX.Element {
  const [stretch, setStretch] = useState<RoadStretch>(road.hardest);
  const format = useFormat();
  const endM = (road.heightsM.length - 1) * road.stepM;
  const move = (change: Partial<RoadStretch>): void =>
    setStretch(limited({ ...stretch, ...change }, change, endM));
  const whole = { fromM: 0, toM: Math.min(endM, LONGEST_LEVEL_M) };
  const recorded = partOf(road, stretch);
  const level = levelFigures(road, stretch);
  const flatter = recorded.steepestRatio > STEEPEST_RATIO || recorded.ascentM - level.ascentM > FLATTER_M;
  const end = (name: 'fromM' | 'toM', low: number, high: number): JSX.Element => (
    <NumberField
      {...{ low, high }}
      label={say(`field-${name}`)}
      unit="m"
      name={`stretch-${name}`}
      value={stretch[name]}
      step={road.stepM}
      onValue={(atM) => move({ [name]: atM })}
    />
  );
  return (
    <Paper title={say('road-stretch')} data-stretch>
      <StretchProfile road={road} stretch={stretch} onMove={move} />
      <div class="row thing-fields">
        {end('fromM', 0, stretch.toM - SHORTEST_LEVEL_M)}
        {end('toM', stretch.fromM + SHORTEST_LEVEL_M, endM)}
        <div class="row thing-doing">
          <Button look="small-button" data-hardest onClick={() => setStretch(road.hardest)}>
            {say('road-hardest', { length: hardestLength(format) })}
          </Button>
          <Button look="small-button" data-whole onClick={() => setStretch(whole)}>
            {endM > LONGEST_LEVEL_M
              ? say('road-longest', { length: format.road(LONGEST_LEVEL_M) })
              : say('road-whole')}
          </Button>
        </div>
      </div>
      <p data-chosen>
        {say('road-chosen', {
          length: format.road(stretch.toM - stretch.fromM),
          climbed: format.distance(level.ascentM),
          steepest: format.percent(level.steepestRatio),
        })}
        {flatter &&
          ` ${say('road-flatter', {
            climbed: format.distance(recorded.ascentM),
            steepest: format.percent(recorded.steepestRatio),
            limit: format.percent(STEEPEST_RATIO),
          })}`}
      </p>
      <SaveRoad {...{ road, services, send, stretch }} />
    </Paper>
  );
}

/** Title, sentence, save. */
function SaveRoad(props: ChoiceProps & { readonly stretch: RoadStretch }): JSX.Element {
  const { road, services, send, stretch } = props;
  const [title, setTitle] = useState('');
  const [sentence, setSentence] = useState<string>(say('road-sentence'));
  const [told, tell] = useTold();
  const format = useFormat();
  const save = async (): Promise<void> => {
    const name = title.trim();
    if (name === '') return tell(() => say('road-needsTitle'));
    tell(() => say('road-working'));
    const words = { title: name, sentence: sentence.trim() === '' ? say('road-sentence') : sentence.trim() };
    const made = await services.cutRoad({ ...stretch, ...words, lang: spokenLanguage(), id: freshId(name) });
    if (!made.ok) return tell(() => made.problems.map(sentenceIn(format)).join(' '));
    const recorded = road.timed ? await services.recordedOn(stretch) : null;
    const answer = await services.keep(made.level);
    levelEditor.open(made.level, answer.saved, recorded);
    if (!answer.saved) levelEditor.markNotKept(answer.code);
    send({ kind: 'address', address: { view: 'bench', rest: 'edit' } });
  };
  return (
    <form
      class="save-road"
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <TextField
        data-title
        label={say('road-titleField')}
        hint={say('road-titleHint')}
        maxLength={80}
        value={title}
        onType={setTitle}
      />
      <TextField label={say('edit-sentenceField')} maxLength={240} value={sentence} onType={setSentence} />
      <div class="buttons">
        <Button strong submit data-save-road>
          {say('road-make')}
        </Button>
      </div>
      <output class="told">{told}</output>
    </form>
  );
}

/** A stretch a level can hold: the end that was not moved gives way. */
function limited(wanted: RoadStretch, moved: Partial<RoadStretch>, endM: number): RoadStretch {
  let fromM = Math.max(0, Math.min(wanted.fromM, endM - SHORTEST_LEVEL_M));
  let toM = Math.min(endM, Math.max(wanted.toM, SHORTEST_LEVEL_M));
  if (moved.fromM === undefined) {
    toM = Math.max(toM, fromM + SHORTEST_LEVEL_M);
    fromM = Math.max(fromM, toM - LONGEST_LEVEL_M);
  } else {
    fromM = Math.min(fromM, toM - SHORTEST_LEVEL_M);
    toM = Math.min(toM, fromM + LONGEST_LEVEL_M);
  }
  return { fromM, toM };
}

/** What was recorded on a stretch; a level may have to be flatter. */
function partOf(road: RoadSummary, { fromM, toM }: RoadStretch) {
  const [from, to] = [Math.round(fromM / road.stepM), Math.round(toM / road.stepM)];
  const slopes = road.slopesRatio.subarray(from, to + 1);
  return {
    ascentM: ascentM(road.heightsM.subarray(from, to + 1)),
    steepestRatio: slopes.reduce((a, b) => Math.max(a, b), 0),
  };
}

/** The paper (px). */
const PAPER = { height: 230, top: 24, bottom: 176 };
/** A road never looks hillier than this many metres over the whole height (m). */
const LEAST_RISE_M = 20;

interface StretchProps {
  readonly road: RoadSummary;
  readonly stretch: RoadStretch;
  readonly onMove: (change: Partial<RoadStretch>) => void;
}

/** A whole recorded road from the side, with the chosen stretch between two handles and its holes marked. */
function StretchProfile({ road, stretch, onMove }: StretchProps): JSX.Element {
  const [width, ref] = useWidth();
  const endM = (road.heightsM.length - 1) * road.stepM;
  const format = useFormat();
  const [view, setView] = useState<Span | null>(null);
  const shown = shownOf(view, endM);
  const pxPerM = (width - 2 * SIDE) / (shown.toM - shown.fromM);
  const x = (atM: number): number => SIDE + (atM - shown.fromM) * pxPerM;
  const handle = (end: 'fromM' | 'toM', label: string): JSX.Element | null =>
    stretch[end] < shown.fromM || stretch[end] > shown.toM ? null : (
      <Handle
        label={label}
        value={stretch[end]}
        low={0}
        high={endM}
        step={road.stepM}
        shown={format.distance(stretch[end])}
        axis="along"
        x={x(stretch[end])}
        y={PAPER.bottom + 22}
        perPx={1 / pxPerM}
        kind="edge"
        onValue={(value) => onMove({ [end]: value })}
      />
    );
  return (
    <>
      <div class="bench-profile" ref={ref}>
        <Stretch {...{ road, stretch, width, shown, x }} />
        {handle('fromM', say('field-fromM'))}
        {handle('toM', say('field-toM'))}
      </div>
      <ZoomBar view={view} lengthM={endM} aroundM={(stretch.fromM + stretch.toM) / 2} onView={setView} />
    </>
  );
}

function Stretch(props: {
  readonly road: RoadSummary;
  readonly stretch: RoadStretch;
  readonly width: number;
  readonly shown: Span;
  readonly x: (atM: number) => number;
}): JSX.Element {
  const { road, stretch, width, shown, x } = props;
  const { outline, y } = useMemo(
    () => outlineOf(road, shown, width - 2 * SIDE),
    [road, width, shown.fromM, shown.toM],
  );
  const heightAt = (atM: number): number => sampleAt(road.heightsM, atM / road.stepM);
  const [left, right] = [x(stretch.fromM), x(stretch.toM)];
  return (
    <Drawing width={width} height={PAPER.height} label={say('road-profile')}>
      <rect class="selected" x={left} y={6} width={Math.max(2, right - left)} height={PAPER.bottom - 6} />
      <path class="ground" d={`M${SIDE} ${PAPER.bottom}L${outline}L${px(width - SIDE)} ${PAPER.bottom}Z`} />
      <path class="outline" d={`M${outline}`} />
      {road.holes.map((hole) => (
        <path
          key={hole.fromM}
          class="hole"
          d={`M${px(x(hole.fromM))} ${PAPER.bottom - 8}H${px(x(hole.toM))}`}
        />
      ))}
      <path
        class="stretch-ends"
        d={`M${px(left)} 6V${PAPER.bottom + 6}M${px(right)} 6V${PAPER.bottom + 6}`}
      />
      <Heights {...{ shown, heightAt, x, y }} />
      <Gradients part={shown} {...{ shown, heightAt, x, y }} />
      <Axis shown={shown} x={x} y={PAPER.height - 4} />
    </Drawing>
  );
}

/** The heights of what is shown, at most one point a pixel: the highest of those that fall on it. */
function outlineOf({ heightsM, stepM }: RoadSummary, shown: Span, widthPx: number) {
  const [first, last] = [shown.fromM / stepM, shown.toM / stepM];
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const height of heightsM.subarray(Math.floor(first), Math.ceil(last) + 1)) {
    low = Math.min(low, height);
    high = Math.max(high, height);
  }
  const scale = (PAPER.bottom - PAPER.top - 20) / Math.max(LEAST_RISE_M, high - low);
  const yOf = (heightM: number): number => PAPER.bottom - 20 - (heightM - low) * scale;
  const columns = Math.max(1, Math.round(widthPx));
  const points: string[] = [];
  for (let column = 0; column <= columns; column += 1) {
    const from = first + (column / columns) * (last - first);
    const to = first + ((column + 1) / columns) * (last - first);
    let top = sampleAt(heightsM, from);
    for (let i = Math.ceil(from); i < to && i <= last; i += 1) top = Math.max(top, heightsM[i] as number);
    points.push(`${px(SIDE + (column / columns) * widthPx)} ${px(yOf(top))}`);
  }
  return { outline: points.join('L'), y: (atM: number): number => yOf(sampleAt(heightsM, atM / stepM)) };
}
