/** What a drawing of all the gears of a bike shows, for whoever has it read aloud. */
import type { Bike } from '../../core/model/types.ts';
import { words } from '../../words/words.ts';

const say = words('bike');

export function drawingText({ chainringsTeeth: rings, sprocketsTeeth: sprockets, hub }: Bike): string {
  return say('drawing', {
    rear: hub === undefined ? 'sprockets' : 'hub',
    ringCount: rings.length,
    rings: rings.join(' / '),
    sprockets: sprockets.join(', '),
  });
}
