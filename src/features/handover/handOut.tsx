/** The coach's page to hand out a plan: codes, link, file, their size, and what must be done at home before. */
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { ClinicPlan } from '../../core/group/plan.ts';
import { Sheet } from '../../ui/parts.tsx';
import { common } from '../../words/common.ts';
import { words } from '../../words/words.ts';
import { Carry } from './carry.tsx';
import type { ReadinessHost } from './readiness.ts';
import { ReadinessList } from './readinessList.tsx';
import { type Message, messageOfPlan } from './message.ts';
import { sizeAndCodes } from './size.ts';
import './handover.css';
import { planTitle } from '../../words/group.ts';

const say = words('handover');
const clinic = words('clinic');

/** What the page is given. */
interface HandOutProps {
  /** The plan of the session, under the id all its rides will carry. */
  readonly plan: ClinicPlan;
  /** Address of the game without what stands behind `#`, as tablets can open it; null where there is none. */
  readonly site: string | null;
  readonly host: ReadinessHost;
  readonly onSaveFile: (name: string, text: string) => void;
  readonly onCopy: (text: string) => Promise<boolean>;
}

/** A code with the whole link in it may have this many characters; bigger ones cameras read badly. */
const LONGEST_LINK_CODE = 800;

/** The page. */
export function HandOut(props: HandOutProps): JSX.Element {
  const { plan, site, onSaveFile, onCopy } = props;
  const message = useMessage(() => messageOfPlan(plan, site ?? ''), [plan, site]);
  return (
    <Sheet title={clinic('tablets-out-title')} intro={say('handOut-intro')}>
      <div class="handover">
        <section class="paper">
          <h2>
            <bdi>{planTitle(plan)}</bdi>
          </h2>
          {message === 'making' && <output>{say('carry-making')}</output>}
          {message === null && <output>{say('carry-tooBig')}</output>}
          {message !== null && message !== 'making' && (
            <Made {...{ plan, message, onSaveFile, onCopy }} linked={site !== null} />
          )}
        </section>
        <ReadinessList host={props.host} />
      </div>
    </Sheet>
  );
}

function Made(props: {
  readonly plan: ClinicPlan;
  readonly message: Message;
  readonly onSaveFile: HandOutProps['onSaveFile'];
  readonly onCopy: HandOutProps['onCopy'];
  readonly linked: boolean;
}): JSX.Element {
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

/** A message once it is packed; null where it is too big. */
export function useMessage(
  make: () => Promise<Message | null>,
  inputs: readonly unknown[],
): Message | null | 'making' {
  const [message, setMessage] = useState<Message | null | 'making'>('making');
  useEffect(() => {
    let wanted = true;
    setMessage('making');
    make().then(
      (made) => wanted && setMessage(made),
      () => wanted && setMessage(null),
    );
    return () => {
      wanted = false;
    };
  }, inputs);
  return message;
}
