/** Short names for devices, made from their random ids, the same on the tablet itself and on the coach's screen. */
import { hashJson } from '../../core/math/hash.ts';

/** Short enough to read out across a field. */
const SHORT = 8;

/** Signs that are not taken for one another. */
const SIGNS = 'ABCDEFGHJKLMNPQRSTUVWXYZ23456789';
const LENGTH = 4;

/** The name of a device: its id where that is short, else four signs made from all of it. */
export function tabletName(deviceId: string): string {
  if (deviceId.length <= SHORT) return deviceId;
  const hash = hashJson(deviceId);
  return Array.from(
    { length: LENGTH },
    (_, i) => SIGNS[Number.parseInt(hash.slice(2 * i, 2 * i + 2), 16) % SIGNS.length],
  ).join('');
}
