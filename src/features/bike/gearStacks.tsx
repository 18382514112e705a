/** The gears of a bike as bars, as they are laid on a table; apart from its picture, which the first page needs. */
import type { JSX } from 'preact';
import { HUBS } from '../../core/model/hub.ts';
import type { Bike } from '../../core/model/types.ts';
import { words } from '../../words/words.ts';

/** So high is the straight gear of a hub beside its sprocket (px). */
const STRAIGHT_PX = 24;

/**
 * Every ring and every sprocket as a bar as high as its teeth, the way a cassette is laid on a table; the gears of a
 * hub as high as the way they make, with their numbers.
 */
export function GearStacks({ bike, label }: { readonly bike: Bike; readonly label: string }): JSX.Element {
  const bars = [
    ...bike.chainringsTeeth.map((teeth) => ({ high: teeth, says: teeth, ring: true })),
    ...bike.sprocketsTeeth.toReversed().map((teeth) => ({ high: teeth, says: teeth, ring: false })),
    ...(bike.hub === undefined ? [] : HUBS[bike.hub].ratios).map((ratio, at) => ({
      high: ratio * STRAIGHT_PX,
      says: at + 1,
      ring: false,
    })),
  ];
  const rings = bike.chainringsTeeth.length;
  const hubFrom = bike.hub === undefined ? bars.length : rings + bike.sprocketsTeeth.length;
  return (
    <svg class="gear-stacks" viewBox="0 0 300 66" role="img" aria-label={label}>
      {bars.map(({ high, says, ring }, i) => {
        const x = (i < rings ? 4 + i * 16 : 78 + (i - rings) * 16) + (i < hubFrom ? 0 : 12);
        return (
          <>
            <rect
              x={x}
              y={52 - high}
              width="10"
              height={high}
              rx="3"
              fill={ring ? 'var(--rider)' : i < hubFrom ? 'var(--leaf)' : 'var(--leaf-pale)'}
              stroke="var(--ink)"
              stroke-width="1.6"
            />
            <text x={x + 5} y="64" text-anchor="middle">
              {says}
            </text>
          </>
        );
      })}
    </svg>
  );
}

const say = words('bike');

/** What a drawing of all the gears of a bike shows, for whoever has it read aloud. */
export function drawingText({ chainringsTeeth: rings, sprocketsTeeth: sprockets, hub }: Bike): string {
  return say('drawing', {
    rear: hub === undefined ? 'sprockets' : 'hub',
    ringCount: rings.length,
    rings: rings.join(' / '),
    sprockets: sprockets.join(', '),
  });
}
