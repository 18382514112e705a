/** Taking a copy back: opened away from the page, kept piece by piece, told how far it is, and stopped when told so. */
import type { ToldOutcome } from '../state/outcome.ts';
import type { TakingBack } from '../ui/kept.tsx';
import type { Clinic } from './group/clinic.ts';
import { NoCopy, piecesOfCopy } from './copyClient.ts';
import { LIMITS } from '../core/math/limits.ts';
import type { Keeping } from './device/persistence.ts';
import type { UnfinishedRides } from './ride/unfinishedRides.ts';
import { serviceWords } from '../words/kept.ts';

/** Those who have to know what came. */
interface Taker {
  readonly keeping: Keeping;
  readonly clinic: Clinic;
  readonly unfinished: UnfinishedRides;
}

/** Takes a copy in; what it says of a club's own store is only shown. */
export async function takeBack(
  { keeping, clinic, unfinished }: Taker,
  file: Blob,
  { evenIfChanged, onShare, signal }: TakingBack,
): Promise<ToldOutcome> {
  const services = serviceWords;
  if (file.size > LIMITS.copy.bytes.most) return { ok: false, sentence: services.tooBigFile };
  const report = await (await keeping.storage)
    .importOpened(piecesOfCopy({ file, evenIfChanged }, onShare, signal))
    .catch((error: unknown) => {
      if (error instanceof NoCopy) return null;
      throw error;
    });
  if (report === null) return { ok: false, sentence: services.notAFile };
  await keeping.refresh();
  await unfinished.look();
  await clinic.reload();
  const { added, already, unsaved, problem, clubStore } = report;
  if (signal.aborted) return { ok: false, sentence: services.stopped(added) };
  if (report.refused.some((one) => one.code === 'too-much'))
    return { ok: false, sentence: services.tooBigFile };
  if (report.refused.some((one) => one.code === 'newer-version'))
    return { ok: false, sentence: services.newerFile };
  if (!evenIfChanged && report.refused.some((one) => one.code === 'checksum'))
    return { ok: false, sentence: services.changedFile, askAboutChanged: true };
  const refused = report.refused.filter(({ code }) => code !== 'checksum').length;
  const good = refused === 0 && unsaved === 0 && problem === null;
  if (added + already === 0 && !good) return { ok: false, sentence: services.notAFile };
  const sentence = services.takenBack(added, already, refused + unsaved);
  if (clubStore === null) return { ok: good, sentence };
  // Nobody on this device has agreed to it.
  (await clinic.carrying.store()).offer(clubStore, 'file');
  return {
    ok: good,
    sentence: `${sentence} ${services.namesStore(new URL(clubStore.url).host)}`,
    more: { href: '#clinic/store', word: services.lookAtStore },
  };
}
