/** What lies on the road, drawn on the profile: stop lines and cues at their place, wind, surface and sight as bands. */
import type { JSX } from 'preact';
import type { Level } from '../../core/level/schema.ts';
import type { Selection } from './levelEditor.ts';
import type { Format } from '../../words/format.ts';
import { words } from '../../words/words.ts';
import { useFormat, windWords } from './say.ts';

const say = words('bench');

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

export function Bands(props: {
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
