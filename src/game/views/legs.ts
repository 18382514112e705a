/**
 * Two bones with a joint between them: where knee and elbow go when hip and pedal, or shoulder and grip, are
 * known. Pure geometry in any unit; y grows downwards as on the screen.
 */

/** A place that is changed in place, so that no frame allocates. */
export interface Spot {
  x: number;
  y: number;
}

/**
 * Puts the joint into `joint`. `bend` 1 puts it to the left of the way from root to end (seen on screen, y
 * down: a knee pointing forwards when the foot hangs below the hip), -1 to the right. An end out of reach is
 * answered by the straight limb; returns the share of the full reach that is used (over 1: out of reach).
 */
export function bendTwoBones(
  root: Readonly<Spot>,
  end: Readonly<Spot>,
  upper: number,
  lower: number,
  bend: 1 | -1,
  joint: Spot,
): number {
  const dx = end.x - root.x;
  const dy = end.y - root.y;
  const distance = Math.max(1e-6, Math.sqrt(dx * dx + dy * dy));
  const reach = Math.min(distance, (upper + lower) * 0.9999);
  const near = Math.max(reach, Math.abs(upper - lower) * 1.0001);
  const along = (upper * upper - lower * lower + near * near) / (2 * near);
  const aside = Math.sqrt(Math.max(0, upper * upper - along * along));
  const ux = dx / distance;
  const uy = dy / distance;
  joint.x = root.x + ux * along + uy * aside * bend;
  joint.y = root.y + uy * along - ux * aside * bend;
  return distance / (upper + lower);
}

/** Spindle of a pedal: `crankTurns` 0 is straight up, turning clockwise on screen; origin is the crank axle. */
export function pedalAt(crankTurns: number, crankLength: number, pedal: Spot): void {
  const turn = (crankTurns % 1) * Math.PI * 2;
  pedal.x = Math.sin(turn) * crankLength;
  pedal.y = -Math.cos(turn) * crankLength;
}

/** Toe-down angle of the foot (rad): the heel drops in the push and rises behind. */
export function footAngle(crankTurns: number): number {
  const turn = (crankTurns % 1) * Math.PI * 2;
  return 0.24 - 0.2 * Math.sin(turn) + 0.06 * Math.cos(turn);
}
