/**
 * The gear check: which road, the answer in sentences, where the gears run out, other parts, all gears, roll-out. Rider, bike
 * and roads of the state go in, wishes go to the store; riding the candidates is done elsewhere.
 */
import { createFormat } from '../../words/format.ts';
import { levelForButton } from '../../state/nextRide.ts';
import type { GearCheckProps, GearCheckServices } from './services.ts';
import { type Page, Paper, Sheet } from '../../ui/parts.tsx';
import { common } from '../../words/common.ts';
import { words } from '../../words/words.ts';
import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { courseOfLevel } from '../../core/level/build.ts';
import type { Level } from '../../core/level/schema.ts';
import { GearAnswer, useCheck } from './answerText.tsx';
import { AskPart } from './askPart.tsx';
import { Candidates, type TakeParts } from './candidates.tsx';
import { GearStairs } from './stairs.tsx';
import { GearRoad } from './road.tsx';
import { RollOut } from './rollOut.tsx';
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
