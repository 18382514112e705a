/**
 * All gears as a staircase of paper steps, easiest first, in the order one would really shift: other gears lie as
 * slips on the step they are nearest to, and between two steps stands what the hands do.
 */
import type { JSX } from 'preact';
import { useId, useMemo } from 'preact/hooks';
import { differentGears, gearChart } from '../../core/coach/gearCheck.ts';
import { type GearStep, gearStairs } from '../../core/model/gearStairs.ts';
import { midBandRpm } from '../../core/model/legs.ts';
import { buildMachine } from '../../core/model/machine.ts';
import type { Bike, Gear, Machine, Rider } from '../../core/model/types.ts';
import { px } from '../../charts/paths.ts';
import { ScrollBox, TableHead } from '../../ui/tables.tsx';
import { signPath } from '../../ui/signs.ts';
import { useWidth } from '../../ui/hooks.ts';
import type { Format } from '../../words/format.ts';
import { Paper } from '../../ui/parts.tsx';
import { words } from '../../words/words.ts';
import { type PaperStep, SLIP_PX, type StairsLayout, stairsLayout } from './stairsLayout.ts';

const say = words('gearcheck');

interface Speech {
  readonly format: Format;
}

/** The staircase, its legend, and its numbers as a table. */
export function GearStairs(props: Speech & { readonly bike: Bike; readonly rider: Rider }): JSX.Element {
  const { bike, rider, format } = props;
  const [width, paper] = useWidth();
  const id = useId();
  const machine = useMemo(() => buildMachine(bike, rider), [bike, rider]);
  const steps = useMemo(() => gearStairs(machine), [machine]);
  const layout = stairsLayout(steps, width);
  return (
    <Paper title={say('stairs')}>
      <p class="quiet">
        {reallyText(machine)} {say('stairs-hint')}
      </p>
      <div ref={paper}>
        <ScrollBox class="gear-stairs" label={say('stairs-box')}>
          <svg
            viewBox={`0 0 ${px(layout.width)} ${px(layout.height)}`}
            style={{ width: `${px(layout.width)}px` }}
            role="img"
            aria-labelledby={id}
          >
            <title id={id}>{say('stairs-desc', { steps: steps.length, gears: machine.gears.length })}</title>
            {layout.steps.map((one) => (
              <Step key={keyOf(one.step.gear)} one={one} {...{ layout, format }} />
            ))}
          </svg>
        </ScrollBox>
      </div>
      <Legend steps={steps} rear={bike.hub === undefined ? 'sprockets' : 'hub'} />
      <details class="fold gear-fold">
        <summary>{say('table')}</summary>
        <StairsTable steps={steps} rpm={midBandRpm(rider)} format={format} />
      </details>
    </Paper>
  );
}

function Step(props: Speech & { readonly one: PaperStep; readonly layout: StairsLayout }): JSX.Element {
  const { one, layout, format } = props;
  const { step, x, y } = one;
  const { gear, others, rise } = step;
  const { stepWidth, floorY } = layout;
  const middle = x + stepWidth / 2;
  return (
    <g data-step={keyOf(gear)}>
      <path
        d={`M${px(x)} ${px(floorY)}V${px(y)}H${px(x + stepWidth)}V${px(floorY)}Z`}
        fill={gear.ringIndex % 2 === 0 ? 'var(--sand)' : 'var(--paper)'}
        stroke="var(--ink)"
        stroke-width="2"
      />
      {others.map((other, k) => (
        <Slip
          key={keyOf(other.gear)}
          {...other}
          x={x + 4}
          y={y - (k + 1) * SLIP_PX}
          width={stepWidth - 8}
          format={format}
        />
      ))}
      <text
        x={px(middle)}
        y={px(y + 18)}
        text-anchor="middle"
        font-size="13"
        font-weight="800"
        fill="var(--ink)"
      >
        {format.gear(gear)}
      </text>
      {rise !== null && <Hands rise={rise} x={middle} y={y + 24} />}
    </g>
  );
}

function reallyText(machine: Machine): string {
  const gears = machine.gears.length;
  const different = differentGears(gearChart(machine));
  return gears === different ? say('stairs-eachOwn', { gears }) : say('stairs-really', { gears, different });
}

function handsText({ ringSteps, rearSteps }: NonNullable<GearStep['rise']>['hands']): string {
  return say('hands', {
    ring: ringSteps > 0 ? 'bigger' : 'same',
    rear: rearSteps > 0 ? 'harder' : rearSteps < 0 ? 'easier' : 'same',
    count: Math.abs(rearSteps),
  });
}

/** Another gear on a step. */
function alsoText({ gear, same }: GearStep['others'][number], format: Format): string {
  return say(same ? 'also-same' : 'also-near', {
    gear: format.gear(gear),
    chain: gear.crossed ? 'crossed' : 'straight',
  });
}

/** What the hands do to come up here: a wheel for the right hand, a wheel with its crank for the left. */
function Hands(props: {
  readonly rise: NonNullable<GearStep['rise']>;
  readonly x: number;
  readonly y: number;
}): JSX.Element {
  const { rise, x, y } = props;
  const { ringSteps, rearSteps } = rise.hands;
  const lines = [
    ...(ringSteps > 0 ? [{ sign: 'front-bigger' as const, text: '' }] : []),
    ...(rearSteps === 0
      ? []
      : [
          {
            sign: rearSteps > 0 ? ('rear-harder' as const) : ('rear-easier' as const),
            text: `${Math.abs(rearSteps)}`,
          },
        ]),
  ];
  return (
    <g data-hands={`${ringSteps} ${rearSteps}`} fill="var(--ink-soft)">
      {lines.map(({ sign, text }, i) => (
        <g key={sign} transform={`translate(${px(x - 18)} ${px(y + i * 20)})`}>
          <path d={signPath(sign)} transform="scale(0.46)" fill-rule="evenodd" />
          <text x="25" y="16" font-size="13" font-weight="700">
            {text}
          </text>
        </g>
      ))}
    </g>
  );
}

function Slip(props: {
  readonly gear: Gear;
  readonly same: boolean;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly format: Format;
}): JSX.Element {
  const { gear, same, x, y, width, format } = props;
  const kind = gear.crossed ? 'crossed' : same ? 'same' : 'near';
  return (
    <g data-slip={keyOf(gear)} data-kind={kind}>
      <rect
        x={px(x)}
        y={px(y)}
        width={px(width)}
        height={SLIP_PX - 2}
        fill="var(--paper)"
        stroke="var(--ink)"
        stroke-width={same ? 1.6 : 1}
        stroke-dasharray={same ? undefined : '3 3'}
      />
      <text x={px(x + width / 2)} y={px(y + 12)} text-anchor="middle" font-size="11" fill="var(--ink)">
        {format.gear(gear)}
      </text>
      {gear.crossed && (
        <path
          d={`M${px(x)} ${px(y + SLIP_PX - 2)}L${px(x + width)} ${px(y)}`}
          stroke="var(--rider-deep)"
          stroke-width="2"
        />
      )}
    </g>
  );
}

function Legend(props: {
  readonly steps: readonly GearStep[];
  readonly rear: 'hub' | 'sprockets';
}): JSX.Element {
  const { steps, rear } = props;
  const others = steps.flatMap((step) => step.others);
  const slips = [
    ['same', others.some(({ same, gear }) => same && !gear.crossed)],
    ['near', others.some(({ same, gear }) => !same && !gear.crossed)],
    ['crossed', others.some(({ gear }) => gear.crossed)],
  ] as const;
  const hands = [
    ['rear', 'rear-harder', true],
    ['front', 'front-bigger', steps.some(({ rise }) => (rise?.hands.ringSteps ?? 0) > 0)],
  ] as const;
  return (
    <ul class="legend gear-legend">
      {hands
        .filter(([, , shown]) => shown)
        .map(([name, sign]) => (
          <li key={name}>
            <svg width="20" height="20" viewBox="0 0 48 48" aria-hidden="true">
              <path d={signPath(sign)} fill="var(--ink)" fill-rule="evenodd" />
            </svg>
            {name === 'rear' ? say('sign-rear', { rear }) : say('sign-front')}
          </li>
        ))}
      {slips
        .filter(([, shown]) => shown)
        .map(([name]) => (
          <li key={name}>
            <svg width="20" height="20" viewBox="0 0 20 20" aria-hidden="true">
              <rect
                x="1"
                y="5"
                width="18"
                height="10"
                fill="var(--paper)"
                stroke="var(--ink)"
                stroke-width="1.4"
                stroke-dasharray={name === 'near' ? '3 3' : undefined}
              />
              {name === 'crossed' && <path d="M1 15L19 5" stroke="var(--rider-deep)" stroke-width="2" />}
            </svg>
            {say(`sign-${name}`)}
          </li>
        ))}
    </ul>
  );
}

function StairsTable(
  props: Speech & { readonly steps: readonly GearStep[]; readonly rpm: number },
): JSX.Element {
  const { steps, rpm, format } = props;
  const heads = [
    say('table-gear'),
    say('table-development'),
    say('table-step'),
    say('table-hands'),
    say('table-speed', { rpm: Math.round(rpm) }),
    say('table-also'),
  ];
  return (
    <ScrollBox class="scroll-table gear-scroll" label={say('table')}>
      <table>
        <TableHead names={heads} />
        <tbody>
          {steps.map(({ gear, rise, others }) => (
            <tr key={keyOf(gear)}>
              <th scope="row">
                {gear.crossed ? say('gear-crossed', { gear: format.gear(gear) }) : format.gear(gear)}
              </th>
              <td>{format.metres(gear.developmentM)}</td>
              <td>{rise === null ? '' : format.percent(rise.stepRatio)}</td>
              <td>{rise === null ? '' : handsText(rise.hands)}</td>
              <td>{format.speed((gear.developmentM * rpm) / 60)}</td>
              <td>{others.map((other) => alsoText(other, format)).join('; ')}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollBox>
  );
}

function keyOf({ ringTeeth, sprocketTeeth }: Gear): string {
  return `${ringTeeth}x${sprocketTeeth}`;
}
