/** Choosing the rider's colours and shapes, with the rider beside it as the ride will draw them. */
import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import './outfit.css';
import {
  FRAME_TONES,
  FRAMES,
  type FrameColour,
  HELMETS,
  JERSEY_CLOTHS,
  JERSEYS,
  type Outfit,
  PATTERNS,
} from '../../core/settings/outfit.ts';
import { Choice } from '../../ui/controls.tsx';
import type { BikeServices } from './services.ts';
import type { Settings } from '../../core/settings/settings.ts';
import { Paper } from '../../ui/parts.tsx';
import { words } from '../../words/words.ts';

const say = words('bike');

interface OutfitChoiceProps {
  readonly settings: Settings;
  readonly onChange: (kit: Outfit) => void;
  readonly paint: BikeServices['paintRider'];
}

export function OutfitChoice({ settings, onChange, paint }: OutfitChoiceProps): JSX.Element {
  const { kit } = settings;
  /** One part of the outfit: what it can be, how that is called, and its colour where it has one. */
  const choice = <Part extends keyof Outfit>(
    part: Part,
    values: readonly Outfit[Part][],
    shown: (value: Outfit[Part]) => readonly [name: string, tone: string | null],
  ): JSX.Element => (
    <Choice
      legend={say(part)}
      name={`kit-${part}`}
      value={kit[part]}
      options={values.map((one) => [one, ...shown(one)])}
      onChoose={(one) => onChange({ ...kit, [part]: one })}
    />
  );
  return (
    <Paper look="kit" title={say('kit')}>
      <p>{say('kit-intro')}</p>
      <div class="kit-sides">
        <Portrait settings={settings} paint={paint} />
        <div>
          {choice('jersey', JERSEYS, (one) => [say(`jersey-${one}`), JERSEY_CLOTHS[one].tone])}
          {choice('pattern', PATTERNS, (one) => [say(`pattern-${one}`), null])}
          {choice('helmet', HELMETS, (one) => [say(`helmet-${one}`), null])}
          {choice('frame', FRAMES, (one) => [say(`frame-${one}`), frameTone(one)])}
        </div>
      </div>
    </Paper>
  );
}

function frameTone(frame: FrameColour): string | null {
  return frame === 'usual' ? null : FRAME_TONES[frame].tone;
}

/** The rider as they will be seen: for the eye only, and where it cannot be fetched the choices are still there. */
function Portrait({ settings, paint }: Pick<OutfitChoiceProps, 'settings' | 'paint'>): JSX.Element {
  const canvas = useRef<HTMLCanvasElement>(null);
  const { bike, rider, kit, theme } = settings;
  useEffect(() => {
    // The first drawing is fetched and may come after a later one that was at hand.
    let wanted = true;
    if (canvas.current !== null) paint(canvas.current, settings, () => wanted).catch(() => undefined);
    return () => {
      wanted = false;
    };
  }, [bike, rider, kit, theme]);
  return <canvas ref={canvas} class="kit-portrait" aria-hidden="true" />;
}
