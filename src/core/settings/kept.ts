/**
 * Settings as they are kept on the device: what is written, and how it is read back by a version that may know
 * other choices. A choice that cannot be read falls back to the usual one; the rest stays.
 */
import { isFields } from '../math/measure.ts';
import { todaysBike } from '../model/presets.ts';
import { readBike, readRider } from '../ride/recording.ts';
import { readOutfit } from './outfit.ts';
import {
  AIDS,
  defaultSettings,
  KEY_ACTIONS,
  type Keys,
  type PadButtons,
  type Settings,
  readChosen,
  VOLUMES,
  within,
} from './settings.ts';

/** Version of what is written. */
export const SETTINGS_VERSION = 1;

export interface KeptChoices {
  readonly settings: Settings;
  readonly cautionsSeen: boolean;
}

/** Reads kept choices; null only where they are no object at all. */
export function readChoices(value: unknown, keys: Keys): KeptChoices | null {
  if (!isFields(value) || !isFields(value['settings'])) return null;
  const kept = value['settings'];
  const usual = defaultSettings(keys);
  const settings: Settings = {
    ...readChosen(kept),
    language: readLanguage(kept['language']),
    bike: todaysBike(readBike(kept['bike']) ?? usual.bike),
    rider: readRider(kept['rider']) ?? usual.rider,
    riderChosen: kept['riderChosen'] === true,
    volumes: readVolumes(kept['volumes'], usual.volumes),
    keys: readKeys(kept['keys'], keys),
    padButtons: readPadButtons(kept['padButtons'], usual.padButtons),
    aidsOn: readAids(kept['aidsOn']),
    kit: readOutfit(kept['kit']),
  };
  return { settings, cautionsSeen: value['cautionsSeen'] === true };
}

/**
 * The kept settings with what somebody has already changed since the page opened: a quick hand must not be undone by
 * choices that come back a moment later. The kept ones themselves where nothing has been changed.
 */
export function withEarly(kept: Settings, untouched: Settings, now: Settings): Settings {
  const changed = (Object.keys(now) as (keyof Settings)[]).filter((key) => now[key] !== untouched[key]);
  if (changed.length === 0) return kept;
  return { ...kept, ...Object.fromEntries(changed.map((key) => [key, now[key]])) };
}

/** Which languages there are is not known here; one that is no more becomes that of the device. */
function readLanguage(value: unknown): string {
  return typeof value === 'string' && /^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/.test(value) ? value : '';
}

function readVolumes(value: unknown, usual: Settings['volumes']): Settings['volumes'] {
  if (!isFields(value)) return usual;
  const entries = VOLUMES.map((name) => [name, within(value[name], 0, 1, usual[name])]);
  return Object.fromEntries(entries) as Settings['volumes'];
}

/** Every action keeps a button, and no two the same one. */
function readPadButtons(value: unknown, usual: PadButtons): PadButtons {
  if (!isFields(value)) return usual;
  const names = Object.keys(usual) as (keyof PadButtons)[];
  const buttons = names.map((name) => value[name]);
  const good = buttons.every((one) => Number.isInteger(one) && (one as number) >= 0 && (one as number) < 32);
  if (!good || new Set(buttons).size !== names.length) return usual;
  return Object.fromEntries(names.map((name) => [name, value[name]])) as unknown as PadButtons;
}

function readAids(value: unknown): Settings['aidsOn'] {
  return Array.isArray(value) ? AIDS.filter((aid) => value.includes(aid)) : [];
}

/** Every action must have a key, or nobody could pause. */
function readKeys(value: unknown, usual: Keys): Keys {
  if (!isFields(value)) return usual;
  const entries = KEY_ACTIONS.map((action) => {
    const codes = value[action];
    const good = Array.isArray(codes) && codes.length > 0 && codes.every((code) => typeof code === 'string');
    return [action, good ? codes : usual[action]];
  });
  return Object.fromEntries(entries) as Keys;
}
