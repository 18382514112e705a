/** Names of the levels that are made of a pitch of a recorded ride, so that its page is found again from the debrief. */

/** The name of the level of a pitch (counted from 0) of a kept ride. */
export const againId = (rideId: string, index: number): string => `pitch-${rideId.slice(0, 8)}-${index + 1}`;

/** Whether a level was made so. */
export const isAgain = (levelId: string): boolean => /^pitch-[0-9a-f]{8}-\d+$/.test(levelId);
