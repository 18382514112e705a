/** What is said before something is tried outside, on a bike if one is known: a motor has its own cautions. */
import type { Motor } from '../core/model/types.ts';
import { words } from './words.ts';

const cautions = words('cautions');

/** The cautions, each a sentence of its own. */
export function outsideLines({ motor }: { readonly motor?: Motor }): readonly string[] {
  return [
    ...cautions.lines('short'),
    ...(motor === undefined ? [] : cautions.lines('motor')),
    ...(motor?.place === 'wheel' ? [cautions('motorWheel')] : []),
  ];
}
