/** Short names for devices, made from their random ids, the same on the tablet itself and on the coach's screen. */

/** Short enough to read out across a field. */
const SHORT = 8;

/** The name of a device: its id where that is short, else four signs of it. */
export function tabletName(deviceId: string): string {
  return deviceId.length <= SHORT
    ? deviceId
    : deviceId
        .replace(/[^A-Za-z0-9]/g, '')
        .slice(0, 4)
        .toUpperCase();
}
