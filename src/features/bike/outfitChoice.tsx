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
import { Paper } from '../../ui/paper.tsx';
import { words } from '../../words/words.ts';

const say = words('bike');

interface OutfitChoiceProps {
  readonly settings: Settings;
  readonly onChange: (kit: Outfit) => void;
  readonly paint: BikeServices['paintRider'];
}

/** The section. */
export function OutfitChoice({ settings, onChange, paint }: OutfitChoiceProps): JSX.Element {
  const { kit } = settings;
  const set = (change: Partial<Outfit>): void => onChange({ ...kit, ...change });
  return (
    <Paper look="kit" title={say('kit')}>
      <p>{say('kit-intro')}</p>
      <div class="kit-sides">
        <Portrait settings={settings} paint={paint} />
        <div>
          <Choice
            legend={say('jersey')}
            name="kit-jersey"
            value={kit.jersey}
            options={JERSEYS.map((one) => [one, say(`jersey-${one}`), JERSEY_CLOTHS[one].tone])}
            onChoose={(jersey) => set({ jersey })}
          />
          <Choice
            legend={say('pattern')}
            name="kit-pattern"
            value={kit.pattern}
            options={PATTERNS.map((one) => [one, say(`pattern-${one}`)])}
            onChoose={(pattern) => set({ pattern })}
          />
          <Choice
            legend={say('helmet')}
            name="kit-helmet"
            value={kit.helmet}
            options={HELMETS.map((one) => [one, say(`helmet-${one}`)])}
            onChoose={(helmet) => set({ helmet })}
          />
          <Choice
            legend={say('frame')}
            name="kit-frame"
            value={kit.frame}
            options={FRAMES.map((one) => [one, say(`frame-${one}`), frameTone(one)])}
            onChoose={(frame) => set({ frame })}
          />
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
