/**
 * What is kept, in a person's hands: saved as a file, deleted, and taken back. A copy is opened away from the page, kept
 * piece by piece, told how far it is, and stopped when told so.
 */
import { forgetRounds } from '../features/two/rounds.ts';
import type { ToldOutcome } from '../state/outcome.ts';
import type { TakingBack } from '../ui/kept.tsx';
import type { Clinic } from './group/clinic.ts';
import { NoCopy, piecesOfCopy } from './copyClient.ts';
import { LIMITS } from '../core/math/limits.ts';
import type { Keeping } from './device/persistence.ts';
import type { UnfinishedRides } from './ride/unfinishedRides.ts';
import { offerFile } from '../ui/file.ts';
import type { Newer } from './device/updates.ts';
import { workplace } from './device/workplace.ts';
import { words } from '../words/words.ts';

const say = words('kept');

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
  if (file.size > LIMITS.copy.bytes.most) return { ok: false, sentence: say('tooBigFile') };
  const report = await (await keeping.storage)
    .importOpened(piecesOfCopy(workplace, { file, evenIfChanged }, onShare, signal))
    .catch((error: unknown) => {
      if (error instanceof NoCopy) return null;
      throw error;
    });
  if (report === null) return { ok: false, sentence: say('notAFile') };
  await keeping.refresh();
  await unfinished.look();
  await clinic.reload();
  const { added, already, unsaved, problem, clubStore } = report;
  if (signal.aborted) return { ok: false, sentence: say('stopped', { added }) };
  if (report.refused.some((one) => one.code === 'too-much'))
    return { ok: false, sentence: say('tooBigFile') };
  if (report.refused.some((one) => one.code === 'newer-version'))
    return { ok: false, sentence: say('newerFile') };
  if (!evenIfChanged && report.refused.some((one) => one.code === 'checksum'))
    return { ok: false, sentence: say('changedFile'), askAboutChanged: true };
  const lost = report.refused.filter(({ code }) => code !== 'checksum').length + unsaved;
  const good = lost === 0 && problem === null;
  if (added + already === 0 && !good) return { ok: false, sentence: say('notAFile') };
  const sentence = [
    say('takenBack', { added, already }),
    ...(lost > 0 ? [say('refused', { refused: lost })] : []),
  ].join(' ');
  if (clubStore === null) return { ok: good, sentence };
  // Nobody on this device has agreed to it.
  (await clinic.carrying.store()).offer(clubStore, 'file');
  return {
    ok: good,
    sentence: `${sentence} ${say('namesStore', { host: new URL(clubStore.url).host })}`,
    more: { href: '#clinic/store', word: say('lookAtStore') },
  };
}

export async function saveEverything(keeping: Keeping): Promise<ToldOutcome> {
  const file = await (await keeping.storage).exportAll();
  offerFile(new Blob([JSON.stringify(file)], { type: 'application/json' }), `${say('fileEverything')}.json`);
  const { complete, rides } = file;
  return { ok: complete, sentence: complete ? say('savedAll', { rides: rides.length }) : say('savedPart') };
}

export async function deleteEverything({
  keeping,
  clinic,
  unfinished,
  newer,
}: Taker & { readonly newer: Newer }): Promise<ToldOutcome> {
  await newer.forget();
  forgetRounds();
  const { deleted } = await (await keeping.storage).deleteEverything();
  await (deleted ? keeping.forget() : keeping.refresh());
  await unfinished.look();
  await clinic.reload();
  return { ok: deleted, sentence: say(deleted ? 'deleted' : 'notDeleted') };
}
