/**
 * Everything of a ride that is seen, made and taken away together: picture, instruments, pads. The engine is
 * loaded here, at the first ride.
 */
import type { Aids, Level } from '../../core/level/schema.ts';
import { hasHub, shiftsInFront } from '../../core/model/shifters.ts';
import type { RideEvent, RideFrame, RideWorld } from '../../core/ride/types.ts';
import type { HudAids, HudFormats } from '../../game/hud/options.ts';
import type { InputHub } from '../../input/hub.ts';
import { createPads } from '../../input/pads.ts';
import { helpLimit } from '../../words/cues.ts';
import { createFormat } from '../../words/format.ts';
import { drawSign } from '../../ui/signs.ts';
import { outfitBeside, outfitLook } from '../../core/settings/outfit.ts';
import type { RidePlaces } from '../../state/ridePlaces.ts';
import type { RideFailure } from '../../state/store.ts';
import { hasFewPads, isChild, type KeyAction, type Settings } from '../../core/settings/settings.ts';
import { bringWords } from '../device/language.ts';
import { besideFor, type BesideRides } from './beside.ts';
import { sceneryOf } from './scenery.ts';

/** What a ride looks like for this player on this device. */
export interface RideLook {
  readonly settings: Settings;
  /** What a friend on the road wears; another jersey than the rider's where nothing stands. */
  readonly friendKit?: Settings['kit'];
  readonly reducedMotion: boolean;
  readonly showPads: boolean;
  /** What is written in it. */
  readonly language: string;
}

/** Children ride by a face and by pictures; numbers come on wish. */
export function showsNumbers({ audience }: Level, { childNumbers }: Settings): boolean {
  return audience !== 'children' || childNumbers;
}

/** Whether the picture must be built anew. Bike, rider and easing stay those the ride began with. */
export function looksDifferent(a: RideLook, b: RideLook): boolean {
  const seen = ({ settings, reducedMotion, showPads, language }: RideLook): string =>
    [
      settings.theme,
      settings.units,
      settings.hand,
      settings.oneHand,
      settings.byEar,
      settings.childNumbers,
      settings.beside,
      settings.holdMode,
      settings.paceRatio,
      settings.aidsOn.join(),
      Object.values(settings.kit).join(),
      reducedMotion,
      showPads,
      language,
    ].join();
  return seen(a) !== seen(b);
}

/** Code that is loaded only when somebody rides. */
export type RideRooms = Awaited<ReturnType<typeof loadRideRooms>>;

/** Loads picture and instruments; rejects when they cannot be fetched. */
export async function loadRideRooms() {
  const [picture, hud] = await Promise.all([import('../../game/mount.ts'), import('../../game/hud/hud.ts')]);
  await bringWords();
  return { mountRide: picture.mountRide, Hud: hud.Hud };
}

/**
 * Browsers call a script that did not come, or that is none, a TypeError, each in its own words; a style that did not
 * come is told by the build. Anything else was thrown by what did come.
 */
export function whyNotLoaded(error: unknown): RideFailure {
  const message = String((error as Error | null)?.message);
  const isMissing =
    message.startsWith('Unable to preload') || (error instanceof TypeError && /module|MIME/.test(message));
  return isMissing ? 'not-fetched' : 'broken';
}

interface ViewOptions {
  readonly rooms: RideRooms;
  readonly places: RidePlaces;
  readonly level: Level;
  readonly aids: Aids;
  readonly world: RideWorld;
  readonly look: RideLook;
  readonly hub: InputHub;
  /** Who may be seen riding beside; null where nobody is. */
  readonly beside: BesideRides | null;
  readonly nextFrame: (timeMs: number) => RideFrame;
  /** The picture broke down and asks for no further frame. */
  readonly onBroken: (error: unknown) => void;
}

export function buildViews(options: ViewOptions) {
  const { rooms, places, level, aids, world, look, hub } = options;
  const { settings, reducedMotion, showPads } = look;
  const beside = besideFor(options.beside, settings);
  const hud = new rooms.Hud(places.hud, formatsOfHud(settings), {
    course: world.course,
    machine: world.machine,
    touch: showPads,
    reducedMotion,
    numbers: showsNumbers(level, settings),
    silent: settings.byEar,
    play: level.carries !== undefined,
    beside,
    drawSign,
  });
  hud.setAids(hudAids(aids));
  places.pads.dataset['pads'] = showPads ? 'on' : 'off';
  const pads = createPads(places.pads, hub, {
    gears: hasHub(world.machine.bike) ? 'hub' : 'sprockets',
    twoShifters: shiftsInFront(world.machine.bike),
    hand: settings.hand,
    oneHand: settings.oneHand,
    turned: places.pads.closest('[data-turned]') !== null,
    // Whoever plays in a group, on a bike of the plan, gets all that this bike needs.
    few: hasFewPads(level, { autoEase: settings.autoEase, bike: world.machine.bike }),
    mode: () => settings.holdMode,
    drawSign,
  });
  const picture = mountPicture(options, beside);
  return {
    frame(frame: RideFrame): void {
      hud.update(frame, picture.quality() < 2);
      pads.show(hub.now());
    },
    events(events: readonly RideEvent[]): void {
      picture.applyEvents(events);
      hud.applyEvents(events);
    },
    /** `cueLang`: what the cue is written in (BCP 47), where that is not the language of the page. */
    say(cue: string | null, remark: string | null, cueLang?: string): void {
      hud.setCue(cue, cueLang);
      hud.setRemark(remark);
    },
    /** So many apples have hopped out of the basket since the start. */
    spill: (count: number): void => picture.spill(count),
    help: hud.help,
    /** Lights the pads that are asked for now. */
    want: (actions: readonly KeyAction[]): void => pads.want(actions),
    setPaused: (paused: boolean): void => picture.setPaused(paused),
    destroy(): void {
      picture.destroy();
      hud.destroy();
      pads.destroy();
    },
  };
}
export type RideViews = ReturnType<typeof buildViews>;

function mountPicture(
  options: ViewOptions,
  beside: ReturnType<typeof besideFor>,
): ReturnType<RideRooms['mountRide']> {
  const { rooms, places, level, world, look, nextFrame, onBroken } = options;
  const { settings, reducedMotion } = look;
  return rooms.mountRide({
    parent: places.picture,
    world,
    scenery: sceneryOf(level, showsNumbers(level, settings)),
    look: {
      theme: settings.theme,
      reducedMotion,
      childRider: isChild(settings.rider),
      dog: level.audience === 'children',
      kit: outfitLook(settings.kit),
      friendKit: outfitLook(look.friendKit ?? outfitBeside(settings.kit)),
    },
    beside,
    nextFrame,
    onBroken,
  });
}

/** Gear and cadence are always shown: without them there would be nothing to ride by. */
function hudAids(aids: Aids): HudAids {
  return {
    roadAhead: aids.roadAhead,
    gear: true,
    chainLine: aids.chainView,
    cadence: true,
    pressure: aids.pressureHint,
    cue: aids.cues,
    nextStep: aids.nextStep,
    liveMarks: aids.liveMarks,
    clickTrack: aids.clickTrack,
  };
}

function formatsOfHud(settings: Settings): HudFormats {
  const format = createFormat(settings.units);
  const plain = createFormat('metric', 'en');
  return {
    gearName: format.gear,
    gearWanted: format.gearWanted,
    speed: format.speed,
    helpLimit: helpLimit(format),
    metres: format.distance,
    markM: settings.units === 'metric' ? 50 : 100 * format.unitM,
    percent: format.percent,
    plain: settings.units === 'metric' ? null : { speed: plain.speed, metres: plain.distance },
  };
}
