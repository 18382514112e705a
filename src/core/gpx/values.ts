/**
 * Numbers and times as they stand in GPX files of all origins. Whatever is not plainly one number or one
 * time is unknown (NaN); nothing is guessed, and no half of a text is taken for the whole.
 */

/** Longer than any honest number or time. */
const LONGEST_TEXT = 40;
const DECIMAL = /^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][+-]?\d{1,3})?$/;
const TIME =
  /^([+-]?\d{4})-(\d\d)-(\d\d)[Tt ](\d\d):(\d\d)(?::(\d\d(?:[.,]\d+)?))?(?:[Zz]|([+-])(\d\d):?(\d\d))?$/;
const DAY_S = 86_400;

/** Heights a road can have (m); what devices write for "unknown" lies outside. */
const LOWEST_M = -500;
const HIGHEST_M = 9_000;
/** More turns a minute than legs on a road do are a fault of the sensor; some write 254 for "unknown". */
const FASTEST_RPM = 220;
/** More than the best sprinters give for a second is a fault of the meter. */
const STRONGEST_W = 2_500;

/** A number with a decimal point or a decimal comma, else NaN. Never infinite. */
export function readDecimal(text: string): number {
  const trimmed = text.trim();
  if (trimmed.length > LONGEST_TEXT || !DECIMAL.test(trimmed)) return Number.NaN;
  const value = Number(trimmed.replace(',', '.'));
  return Number.isFinite(value) ? value : Number.NaN;
}

/** A coordinate between −limit and limit (degrees), else NaN. */
export function readDegrees(text: string | undefined, limitDeg: number): number {
  const value = text === undefined ? Number.NaN : readDecimal(text);
  return Math.abs(value) <= limitDeg ? value : Number.NaN;
}

/** A longitude (degrees, −180 to 180), else NaN. Some programs count on eastward to 360. */
export function readLongitude(text: string | undefined): number {
  const value = readDegrees(text, 360);
  return Math.abs(value) <= 180 ? value : value - Math.sign(value) * 360;
}

/** A number with the unit some programs write behind it. */
const WITH_UNIT = /^\s*(\S+?)\s*(m|met(?:er|re)s?|ft|feet|foot)\.?\s*$/i;
export const M_PER_FOOT = 0.3048;

/** A height in metres, else NaN. Metres, or feet where the text says so. */
export function readHeightM(text: string): number {
  const [, digits = text, unit = 'm'] = text.length > LONGEST_TEXT ? [] : (WITH_UNIT.exec(text) ?? []);
  const value = readDecimal(digits) * (/^f/i.test(unit) ? M_PER_FOOT : 1);
  return value >= LOWEST_M && value <= HIGHEST_M ? value : Number.NaN;
}

/** A cadence (rpm), else NaN. */
export function readCadenceRpm(text: string): number {
  const value = readDecimal(text);
  return value >= 0 && value <= FASTEST_RPM ? value : Number.NaN;
}

/** Power at the pedals (W), else NaN. */
export function readPowerW(text: string): number {
  const value = readDecimal(text);
  return value >= 0 && value <= STRONGEST_W ? value : Number.NaN;
}

/** Seconds since 1970 of an ISO 8601 time, without leap seconds, else NaN. No zone means UTC. */
export function readTimeS(text: string): number {
  const trimmed = text.trim();
  const found = trimmed.length > LONGEST_TEXT ? null : TIME.exec(trimmed);
  if (found === null) return Number.NaN;
  const [, year, month, day, hour, minute, second, sign, zoneHour, zoneMinute] = found;
  const monthNumber = Number(month);
  const dayNumber = Number(day);
  if (monthNumber < 1 || monthNumber > 12 || dayNumber < 1 || dayNumber > 31) return Number.NaN;
  if (Number(hour) > 24 || Number(minute) > 59) return Number.NaN;
  const offsetS = (Number(zoneHour ?? 0) * 60 + Number(zoneMinute ?? 0)) * 60 * (sign === '-' ? -1 : 1);
  const clockS = (Number(hour) * 60 + Number(minute)) * 60 + Number((second ?? '0').replace(',', '.'));
  return dayOf(Number(year), monthNumber, dayNumber) * DAY_S + clockS - offsetS;
}

/** Days since 1 January 1970; years are counted from March so that the leap day comes last. */
function dayOf(year: number, month: number, day: number): number {
  const y = month <= 2 ? year - 1 : year;
  const monthFromMarch = (month + 9) % 12;
  const dayOfYear = Math.floor((153 * monthFromMarch + 2) / 5) + day - 1;
  return 365 * y + Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400) + dayOfYear - 719_468;
}
