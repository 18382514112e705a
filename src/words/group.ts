/** What a coach's device and the tablets of a group call alike: riders, and plans. */
import { readNickname } from '../core/group/nicknames.ts';
import type { ClinicPlan, PlanRide } from '../core/group/plan.ts';
import { words } from './words.ts';

const say = words('group');

/** A nickname as people say it: "Red fox", or what the rider chose. */
export function nameOf(nickname: string): string {
  const name = readNickname(nickname);
  if (name === null) return nickname;
  return name.kind === 'own' ? name.text : say(`animal-${name.animal}`, { colour: name.colour });
}

/** The title of a plan. One that comes with the game has a code for it, so that each device says it in its language. */
export function planTitle({ title }: Pick<ClinicPlan, 'title'>): string {
  const name = `plan-${title}`;
  return say.has(name) ? say(name) : title;
}

export type PlannedCheck = Extract<PlanRide, { readonly kind: 'check' }>;

export function checkTitle({ audience, needs }: PlannedCheck): string {
  if (needs === undefined) return say(`check-${audience}`);
  return say(audience === 'children' ? 'check-children-hub' : `check-everyone-${needs}`);
}
