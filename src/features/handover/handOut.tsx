/** The pages that hand out a plan and hand results back: codes, link, file, their size, and what must be done at home before. */
import type { JSX } from 'preact';
import type { ClinicPlan } from '../../core/group/plan.ts';
import { Sheet } from '../../ui/parts.tsx';
import { common } from '../../words/common.ts';
import { words } from '../../words/words.ts';
import { Carry, type CarryProps, Packed, sizeAndCodes } from './carry.tsx';
import type { ReadinessHost } from './readiness.ts';
import { ReadinessList } from './readinessList.tsx';
import { messageOfPlan, messageOfRides, tabletName } from './message.ts';
import { planTitle } from '../../words/group.ts';
import type { HandOver } from '../../core/transfer/rideFile.ts';
import './handover.css';

const say = words('handover');
const clinic = words('clinic');

/** What both pages carry, and by which ways. */
interface CarriedProps extends Pick<CarryProps, 'onSaveFile' | 'onCopy'> {
  /** The plan of the session, under the id all its rides carry. */
  readonly plan: ClinicPlan;
  /** Address of the game without what stands behind `#`, as others can open it; null where there is none. */
  readonly site: string | null;
}

/** A code with the whole link in it may have this many characters; bigger ones cameras read badly. */
const LONGEST_LINK_CODE = 800;

export function HandOut(props: CarriedProps & { readonly host: ReadinessHost }): JSX.Element {
  const { plan, site, onSaveFile, onCopy } = props;
  return (
    <Sheet title={clinic('tablets-out-title')} intro={say('handOut-intro')}>
      <div class="handover">
        <Packed plan={plan} pack={() => messageOfPlan(plan, site ?? '')} inputs={[plan, site]}>
          {(message) => <Made {...{ plan, message, onSaveFile, onCopy }} linked={site !== null} />}
        </Packed>
        <ReadinessList host={props.host} />
      </div>
    </Sheet>
  );
}

function Made(props: Omit<CarryProps, 'name' | 'codes'> & { readonly plan: ClinicPlan }): JSX.Element {
  const { plan, message, linked } = props;
  const page = common('nav-join');
  // The tablet's own camera app opens a link without asking for anything, even where the page gets no camera.
  const codes = linked && message.link.length <= LONGEST_LINK_CODE ? [message.link] : message.frames;
  return (
    <>
      <p data-size>
        {sizeAndCodes(message.bytes, codes.length)}
        {plan.rides.some((ride) => ride.kind === 'own') && ` · ${say('handOut-own')}`}
      </p>
      <p>
        {codes.length === 1 && codes[0] === message.link
          ? say('handOut-scanOne', { page })
          : say('handOut-scanMany', { page })}
      </p>
      <Carry {...props} codes={codes} name={say('handOut-what', { title: planTitle(plan) })} />
    </>
  );
}

interface HandBackProps extends CarriedProps {
  /** Everything this device has ridden for the plan, and what it has taken back. */
  readonly handOver: HandOver;
  /** What goes to a club's own store. */
  readonly store: JSX.Element | null;
}

/** A tablet's page to hand its results back: codes, link, file. Nothing is deleted by it. */
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
