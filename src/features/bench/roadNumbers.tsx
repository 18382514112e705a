/** Numbers on a drawn road: how steep it is between two places, how high it goes, how far along it is. */
import type { JSX } from 'preact';
import { metric } from './say.ts';
import type { View } from './zoom.ts';

type Across = (atM: number) => number;

const STEPS_M = [10, 20, 50, 100, 200, 500, 1_000, 2_000, 5_000] as const;
/** Numbers of distance and of gradient need so much room (px). */
const AXIS_GAP_PX = 110;
const GRADIENT_GAP_PX = 46;

/** The shortest step whose numbers have room (m). */
function stepFor({ fromM, toM }: View, x: Across, gapPx: number): number {
  const perM = (x(toM) - x(fromM)) / (toM - fromM);
  return STEPS_M.find((stepM) => stepM * perM >= gapPx) ?? 5_000;
}

/** Mean gradients of equal parts of a road that has no gradients of its own to show. */
export function Gradients(props: {
  readonly part: View;
  /** What of the road is shown. */
  readonly shown: View;
  readonly heightAt: Across;
  readonly x: Across;
  readonly y: Across;
}): JSX.Element {
  const { part, shown, heightAt, x, y } = props;
  const stepM = stepFor(shown, x, GRADIENT_GAP_PX);
  const texts: JSX.Element[] = [];
  const first = Math.ceil(Math.max(part.fromM, shown.fromM) / stepM) * stepM;
  for (let fromM = first; fromM + stepM <= Math.min(part.toM, shown.toM); fromM += stepM) {
    const percent = Math.round(((heightAt(fromM + stepM) - heightAt(fromM)) / stepM) * 100);
    const middleM = fromM + stepM / 2;
    texts.push(
      <text key={fromM} x={x(middleM)} y={Math.max(16, y(middleM) - 12)} text-anchor="middle">
        {metric.number(percent)} %
      </text>,
    );
  }
  return (
    <g class="gradients" aria-hidden="true">
      {texts}
    </g>
  );
}

/** The highest and the lowest place that are shown, as heights over the start. */
export function Heights(props: {
  readonly shown: View;
  readonly heightAt: Across;
  readonly x: Across;
  readonly y: Across;
}): JSX.Element {
  const { shown, heightAt, x, y } = props;
  let [lowAtM, highAtM] = [shown.fromM, shown.fromM];
  const stepM = Math.max(1, (shown.toM - shown.fromM) / 400);
  for (let atM = shown.fromM; atM <= shown.toM; atM += stepM) {
    if (heightAt(atM) < heightAt(lowAtM)) lowAtM = atM;
    if (heightAt(atM) > heightAt(highAtM)) highAtM = atM;
  }
  const [left, right] = [x(shown.fromM), x(shown.toM)];
  const middleM = (shown.fromM + shown.toM) / 2;
  return (
    <g class="heights" aria-hidden="true">
      {[highAtM, lowAtM].map((atM, i) => (
        <g key={i}>
          <path d={`M${left} ${y(atM).toFixed(1)}H${right}`} />
          {/* On the far side, where the road itself and its gradients are not. */}
          <text
            x={atM > middleM ? left : right}
            y={y(atM) + (i === 0 ? -5 : 15)}
            text-anchor={atM > middleM ? 'start' : 'end'}
          >
            {metric.distance(heightAt(atM) - heightAt(0))}
          </text>
        </g>
      ))}
    </g>
  );
}

/** Distances along the lower edge. */
export function Axis({
  shown,
  x,
  y,
}: {
  readonly shown: View;
  readonly x: Across;
  readonly y: number;
}): JSX.Element {
  const stepM = stepFor(shown, x, AXIS_GAP_PX);
  const marks: number[] = [];
  for (let atM = Math.ceil(shown.fromM / stepM) * stepM; atM <= shown.toM; atM += stepM) marks.push(atM);
  // Numbers at the ends stay inside of the drawing.
  const anchorOf = (atM: number): 'start' | 'middle' | 'end' => {
    const share = (atM - shown.fromM) / (shown.toM - shown.fromM);
    return share < 0.02 ? 'start' : share > 0.97 ? 'end' : 'middle';
  };
  return (
    <g class="axis" aria-hidden="true">
      {marks.map((atM) => (
        <text key={atM} x={x(atM)} y={y} text-anchor={anchorOf(atM)}>
          {metric.distance(atM)}
        </text>
      ))}
    </g>
  );
}
