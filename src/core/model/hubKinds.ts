/** The kinds of hubs there are, as they are kept in files, with how many gears each has and how big it is drawn. */

export const HUB_GEARS = {
  three: 3,
  'three-wide': 3,
  five: 5,
  'five-wide': 5,
  seven: 7,
  eight: 8,
  'eight-wide': 8,
  fourteen: 14,
} as const;
export type HubKind = keyof typeof HUB_GEARS;
export const HUB_KINDS = Object.keys(HUB_GEARS) as HubKind[];

/** Radius of the shell of a bike's hub, for pictures (mm; common practice), or null where there is a rear derailleur. */
export function hubShellMm({ hub }: { readonly hub?: HubKind }): number | null {
  return hub === undefined ? null : 30 + HUB_GEARS[hub] * 1.5;
}
