/** `gears`: every gear of a bike with what it means on the road and on the chain. */

import { buildGears, capacityTeeth, wheelCircumferenceM } from '../../core/model/gears.ts';
import { gearName } from '../../words/gears.ts';
import { bikeFrom } from '../common/choose.ts';
import { fixed, table } from '../common/print.ts';
import type { Verb } from '../common/verb.ts';

export const gearsVerb: Verb = {
  usage: '--bike ID',
  summary: 'lists every gear of a bike',
  flags: { bike: 'text' },
  takesFiles: false,
  run(args) {
    const bike = bikeFrom(args);
    const all = buildGears(bike);
    const capacity = capacityTeeth(bike);
    const circumferenceM = wheelCircumferenceM(bike);
    const rows = all.map((gear) => [
      gearName(gear),
      fixed(gear.ratio, 3),
      fixed(gear.developmentM, 3),
      fixed(gear.chainAngleDeg, 2),
      gear.crossed ? 'crossed' : '',
      fixed(gear.efficiency * 100, 2),
    ]);
    const head = ['gear', 'ratio', 'metres per turn', 'chain angle °', 'chain', 'efficiency %'];
    return {
      json: { bikeId: bike.id, circumferenceM, capacityTeeth: capacity, gears: all },
      text: `${table(head, rows)}\nThe rear derailleur must take up ${capacity} teeth.`,
    };
  },
};
