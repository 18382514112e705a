/** Finds the road of a picture again: the course to draw and its title, from the plan and the levels that are here. */
import type { PlanRide } from '../../core/group/plan.ts';
import type { RoadPicture } from '../../core/group/picture/group.ts';
import { levelOfRide } from '../../core/group/turn.ts';
import type { Course } from '../../core/course/types.ts';
import { courseOfLevel, levelHash } from '../../core/level/build.ts';
import type { Level } from '../../core/level/schema.ts';
import type { SavedRound } from '../../core/group/savedRound.ts';
import { rideTitle } from './say.ts';
import type { ClinicProps } from './services.ts';

/** Courses that were built, so that another question does not build them anew. */
const courses = new Map<string, Course>();

/** The ride of the plan that goes over a road, and its level. */
function plannedOn(
  road: RoadPicture,
  session: SavedRound,
  props: ClinicProps,
): { readonly ride: PlanRide; readonly level: Level } | null {
  const find = (id: string): Level | undefined => props.levels.find((level) => level.id === id);
  for (const ride of session.plan.rides) {
    const level = levelOfRide(ride, road.seed, find);
    if (level !== null && levelHash(level) === road.levelHash) return { ride, level };
  }
  return null;
}

/** The course of a road; null where its level is not here, or was changed since. */
export function courseOfRoad(road: RoadPicture, session: SavedRound, props: ClinicProps): Course | null {
  const key = `${road.levelHash} ${road.seed}`;
  const known = courses.get(key);
  if (known !== undefined) return known;
  const planned = plannedOn(road, session, props);
  if (planned === null) return null;
  const course = courseOfLevel(planned.level, road.seed);
  courses.set(key, course);
  return course;
}

/** Its title, or the id of its level. */
export function titleOfRoad(road: RoadPicture, session: SavedRound, props: ClinicProps): string {
  const planned = plannedOn(road, session, props);
  return (planned === null ? null : rideTitle(planned.ride, props.levels)) ?? road.levelId;
}
