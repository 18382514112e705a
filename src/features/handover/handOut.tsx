/** The coach's page to hand out a plan: codes, link, file, their size, and what must be done at home before. */
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { ClinicPlan } from '../../core/group/plan.ts';
import { Sheet } from '../../ui/parts.tsx';
import type { HandoverWords } from './words.ts';
import { Carry } from './carry.tsx';
import type { EveningHost } from './evening.ts';
import { EveningList } from './eveningList.tsx';
import { type Parcel, parcelOfPlan } from './parcel.ts';
import './handover.css';

/** What the page is given. */
export interface HandOutProps {
  /** The plan of the session, under the id all its rides will carry. */
  readonly plan: ClinicPlan;
  /** Address of the game without what stands behind `#`, as tablets can open it. */
  readonly site: string;
  readonly host: EveningHost;
  readonly words: HandoverWords;
  readonly onSaveFile: (name: string, text: string) => void;
  readonly onCopy: (text: string) => Promise<boolean>;
}

/** A code with the whole link in it may have this many characters; bigger ones cameras read badly. */
const LONGEST_LINK_CODE = 800;

/** The page. */
export function HandOut(props: HandOutProps): JSX.Element {
  const { plan, site, words, onSaveFile, onCopy } = props;
  const say = words.handOut;
  const parcel = useParcel(() => parcelOfPlan(plan, site), [plan, site]);
  return (
    <Sheet title={say.title} intro={say.intro}>
      <div class="handover">
        <section class="paper">
          <h2>
            <bdi>{plan.title}</bdi>
          </h2>
          {parcel === 'making' && <output>{words.carry.making}</output>}
          {parcel === null && <output>{words.carry.tooBig}</output>}
          {parcel !== null && parcel !== 'making' && (
            <Made {...{ plan, parcel, words, onSaveFile, onCopy }} />
          )}
        </section>
        <EveningList host={props.host} words={words} />
      </div>
    </Sheet>
  );
}

function Made(props: {
  readonly plan: ClinicPlan;
  readonly parcel: Parcel;
  readonly words: HandoverWords;
  readonly onSaveFile: HandOutProps['onSaveFile'];
  readonly onCopy: HandOutProps['onCopy'];
}): JSX.Element {
  const { plan, parcel, words } = props;
  const say = words.handOut;
  // The tablet's own camera app opens a link without asking for anything, even where the page gets no camera.
  const codes = parcel.link.length <= LONGEST_LINK_CODE ? [parcel.link] : parcel.frames;
  return (
    <>
      <p data-size>
        {say.size(words.size(parcel.bytes), codes.length)}
        {plan.rides.some((ride) => ride.kind === 'own') && ` · ${say.own}`}
      </p>
      <p>{codes.length === 1 && codes[0] === parcel.link ? say.scanOne : say.scanMany}</p>
      <Carry {...props} codes={codes} name={say.what(plan.title)} />
    </>
  );
}

/** A parcel once it is packed; null where it is too big. */
export function useParcel(
  make: () => Promise<Parcel | null>,
  inputs: readonly unknown[],
): Parcel | null | 'making' {
  const [parcel, setParcel] = useState<Parcel | null | 'making'>('making');
  useEffect(() => {
    let wanted = true;
    setParcel('making');
    make().then(
      (made) => wanted && setParcel(made),
      () => wanted && setParcel(null),
    );
    return () => {
      wanted = false;
    };
  }, inputs);
  return parcel;
}
