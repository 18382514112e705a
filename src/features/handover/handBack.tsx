/** A tablet's page to hand its results back: codes, link, file. Nothing is deleted by it. */
import type { JSX } from 'preact';
import type { ClinicPlan } from '../../core/group/plan.ts';
import type { HandOver } from '../../core/transfer/rideFile.ts';
import { Sheet } from '../../ui/parts.tsx';
import { words } from '../../words/words.ts';
import { Carry, Packed } from './carry.tsx';
import { messageOfRides } from './message.ts';
import { sizeAndCodes } from './size.ts';
import { tabletName } from './tablets.ts';
import './handover.css';

const say = words('handover');
const clinic = words('clinic');

/** What the page is given. */
interface HandBackProps {
  readonly plan: ClinicPlan;
  /** Everything this device has ridden for the plan, and what it has taken back. */
  readonly handOver: HandOver;
  /** Address of the game without what stands behind `#`, as others can open it; null where there is none. */
  readonly site: string | null;
  readonly onSaveFile: (name: string, text: string) => void;
  readonly onCopy: (text: string) => Promise<boolean>;
  /** What goes to a club's own store. */
  readonly store: JSX.Element | null;
}

/** The page. */
export function HandBack(props: HandBackProps): JSX.Element {
  const { plan, handOver, site, onSaveFile, onCopy } = props;
  const count = handOver.records.length;
  return (
    <Sheet title={clinic('tablets-back-title')} intro={say('handBack-intro')}>
      <div class="handover">
        <Packed
          plan={plan}
          pack={() => messageOfRides(handOver, site ?? '')}
          inputs={[handOver, site]}
          before={
            <>
              <p class="tablet-name">{say('handBack-tablet', { tablet: tabletName(handOver.deviceId) })}</p>
              {count === 0 && <output>{say('handBack-none')}</output>}
            </>
          }
        >
          {(message) => (
            <>
              <p data-size>
                {say('rides', { rides: count })} · {sizeAndCodes(message.bytes, message.frames.length)}
              </p>
              <Carry
                {...{ message, onSaveFile, onCopy }}
                linked={site !== null}
                name={say('rides', { rides: count })}
              />
              <p class="hint">{say('handBack-marksOnly')}</p>
            </>
          )}
        </Packed>
        {props.store}
      </div>
    </Sheet>
  );
}
