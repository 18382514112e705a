/**
 * Wishing for a road: name, hills and length, drawn live from the road that will be ridden, and a link that carries
 * it. Riding and addresses are the business of whoever shows the form.
 */
import type { JSX } from 'preact';
import { useId, useMemo, useRef, useState } from 'preact/hooks';
import type { Course, Pitch } from '../../core/course/types.ts';
import { courseOfLevel } from '../../core/level/build.ts';
import {
  FREE_RIDE_LONGEST_M,
  FREE_RIDE_SHORTEST_M,
  freeLevel,
  type FreeRideWish,
} from '../../core/level/generate.ts';
import type { Format } from '../../words/format.ts';
import { Button, Slider } from '../../ui/controls.tsx';
import { Paper } from '../../ui/parts.tsx';
import { words } from '../../words/words.ts';
import { type BadFreeRide, decodeFreeRide, encodeFreeRide, seedOf } from '../../core/level/freeRide.ts';
import { px, roadPaths } from '../../charts/paths.ts';
import { useWidth } from '../../ui/hooks.ts';
import { Stroke } from '../../ui/pictures/stroke.tsx';
import './freeride.css';

interface FreeRideFormProps {
  /** What the form begins with. */
  readonly wish: FreeRideWish;
  /** Set if the form is shown because a link could not be read. */
  readonly badLink?: BadFreeRide | null;
  readonly onRide: (wish: FreeRideWish) => void;
  /** The whole link to a wish. */
  readonly onLink: (wish: FreeRideWish) => string;
  /** A seed nobody chose; chance without it. */
  readonly newSeed?: () => number;
  readonly format: Format;
}

const STEP_M = 250;

const say = words('levels');

/** From here on (share of the hilliest) a road is called by the next name. */
const HILLY_FROM = [0.15, 0.4, 0.65, 0.85];
const hillyStep = (share: number) => HILLY_FROM.filter((from) => share >= from).length as 0 | 1 | 2 | 3 | 4;

/** The drawn road is always the one the link carries. */
function asLinked(wish: FreeRideWish): FreeRideWish {
  const reading = decodeFreeRide(encodeFreeRide(wish));
  return reading.ok ? reading.wish : wish;
}

const anySeed = (): number => crypto.getRandomValues(new Uint32Array(1))[0] ?? 1;

export function FreeRideForm(props: FreeRideFormProps): JSX.Element {
  const { onRide, onLink, format, newSeed = anySeed, badLink = null } = props;
  const [wish, setWish] = useState(() => asLinked(props.wish));
  const [name, setName] = useState(String(props.wish.seed));
  const course = useMemo(() => courseOfLevel(freeLevel(wish)), [wish]);
  const typeName = (typed: string): void => {
    setName(typed);
    const seed = seedOf(typed);
    if (seed !== null) setWish((now) => ({ ...now, seed }));
  };
  const named = seedOf(name) !== null;
  return (
    <Paper look="free-ride" title={say('free-title')}>
      {badLink !== null && (
        <p class="free-bad" role="alert" data-bad-link={badLink}>
          {say(`free-bad-${badLink}`, {
            shortest: format.distance(FREE_RIDE_SHORTEST_M),
            longest: format.distance(FREE_RIDE_LONGEST_M),
          })}
        </p>
      )}
      <p class="hint">{say('free-intro')}</p>
      <div class="free-columns">
        <div>
          <NameField name={name} onType={typeName} onAnother={() => typeName(String(newSeed()))} />
          <Slider
            label={say('free-hilliness')}
            value={wish.hilliness}
            low={0}
            shown={say(`free-hilly-${hillyStep(wish.hilliness)}`)}
            onInput={(hilliness) => setWish((now) => ({ ...now, hilliness }))}
          />
          <Slider
            label={say('free-length')}
            value={wish.lengthM}
            low={FREE_RIDE_SHORTEST_M}
            high={FREE_RIDE_LONGEST_M}
            step={STEP_M}
            shown={format.road(wish.lengthM)}
            onInput={(lengthM) => setWish((now) => ({ ...now, lengthM }))}
          />
        </div>
        <WishedRoad course={course} facts={factsOf(course, format)} format={format} />
      </div>
      <div class="buttons">
        <Button strong data-free-ride disabled={!named} onClick={() => onRide(wish)}>
          {say('free-ride')}
        </Button>
      </div>
      <RoadLink link={onLink(wish)} />
    </Paper>
  );
}

function factsOf(course: Course, format: Format): string {
  let climbedM = 0;
  let steepest = 0;
  for (let m = 1; m <= course.lengthM; m += 1) {
    climbedM += Math.max(0, (course.heightM[m] ?? 0) - (course.heightM[m - 1] ?? 0));
    steepest = Math.max(steepest, course.slopeRatio[m] ?? 0);
  }
  return say('free-facts', {
    length: format.road(course.lengthM),
    pitches: course.pitches.length,
    steepest: format.percent(steepest),
    climbed: format.distance(climbedM),
  });
}

function NameField(props: {
  readonly name: string;
  readonly onType: (typed: string) => void;
  readonly onAnother: () => void;
}): JSX.Element {
  const { name, onType, onAnother } = props;
  const id = useId();
  const empty = seedOf(name) === null;
  return (
    <div class="free-name">
      <label for={id}>{say('free-seed')}</label>
      <div class="wrap free-name-row">
        <input
          id={id}
          type="text"
          autocomplete="off"
          spellcheck={false}
          maxLength={40}
          value={name}
          aria-invalid={empty}
          aria-describedby={`${id}-hint`}
          onInput={(event) => onType(event.currentTarget.value)}
        />
        <Button data-another-road onClick={onAnother}>
          {say('free-another')}
        </Button>
      </div>
      <span id={`${id}-hint`} class={empty ? 'field-problem' : 'hint'}>
        {empty ? say('free-seedEmpty') : say('free-seedHint')}
      </span>
    </div>
  );
}

/** A link to be copied: by a button where the browser lets it, by hand where not. */
function RoadLink({ link }: { readonly link: string }): JSX.Element {
  const id = useId();
  const field = useRef<HTMLInputElement | null>(null);
  /** The link that was tried to copy, and whether that worked. */
  const [tried, setTried] = useState<{ readonly link: string; readonly copied: boolean } | null>(null);
  const copy = async (): Promise<void> => {
    try {
      await navigator.clipboard.writeText(link);
      setTried({ link, copied: true });
    } catch {
      field.current?.select();
      setTried({ link, copied: false });
    }
  };
  return (
    <div class="free-link">
      <label for={id}>{say('free-link')}</label>
      <div class="wrap free-name-row">
        <input
          id={id}
          ref={field}
          type="text"
          readOnly
          value={link}
          onFocus={(event) => event.currentTarget.select()}
        />
        <Button data-copy-link onClick={() => void copy()}>
          {say('free-copy')}
        </Button>
      </div>
      <output>{tried?.link === link ? say(tried.copied ? 'free-copied' : 'free-notCopied') : ''}</output>
    </div>
  );
}

const HEIGHT = 170;
const TOP = 30;
const LABEL_PX = 44;

/** The road that will be ridden, from the side, with its feet and what there is to know of it. */
function WishedRoad(props: {
  readonly course: Course;
  readonly facts: string;
  readonly format: Format;
}): JSX.Element {
  const { course, facts, format } = props;
  const [width, paper] = useWidth();
  const id = useId();
  const road = useMemo(
    () =>
      roadPaths(course, { fromM: 0, toM: course.lengthM, left: 0, right: width, top: TOP, bottom: HEIGHT }),
    [course, width],
  );
  const x = (m: number): number => (m / course.lengthM) * width;
  /** The highest ink under a number. */
  const topAround = (atX: number): number => {
    let top = HEIGHT;
    for (let at = -LABEL_PX / 2; at <= LABEL_PX / 2; at += 2)
      top = Math.min(top, road.y(((atX + at) / width) * course.lengthM));
    return top;
  };
  return (
    <div class="free-road">
      <div ref={paper}>
        <svg viewBox={`0 0 ${width} ${HEIGHT}`} role="img" aria-labelledby={id}>
          <title id={id}>{say('free-profile', { facts })}</title>
          <path d={road.ground} fill="var(--sand)" />
          <path d={road.hatching} stroke="var(--ink)" stroke-width="1.1" />
          <Stroke d={road.outline} width={2.6} />
          <path
            d={course.pitches
              .map(({ footM }) => `M${px(x(footM))} ${px(road.y(footM) - 3)}l-5 -9h10Z`)
              .join('')}
            fill="var(--rider-deep)"
          />
          <g font-size="14" font-weight="800" fill="var(--ink)">
            {labelled(course, width).map(({ footM, steepestRatio }) => (
              <text key={footM} x={px(x(footM))} y={px(topAround(x(footM)) - 8)} text-anchor="middle">
                {format.percent(steepestRatio)}
              </text>
            ))}
          </g>
        </svg>
      </div>
      <output>{facts}</output>
    </div>
  );
}

/** Pitches whose number has room beside that of the one before. */
function labelled({ pitches, lengthM }: Course, width: number): Pitch[] {
  const kept: Pitch[] = [];
  for (const pitch of pitches) {
    const last = kept.at(-1);
    const gap = last === undefined ? LABEL_PX : ((pitch.footM - last.footM) / lengthM) * width;
    if (gap >= LABEL_PX) kept.push(pitch);
  }
  return kept;
}
