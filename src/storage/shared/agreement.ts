/**
 * Where it is kept that a person on this device agreed to a club's own store, with the address they agreed to. It
 * stands under a name of its own in the browser's simple store: no file, link, code or store writes there, and what
 * is deleted on this device is deleted with it. It is read afresh every time, because another tab may have stopped it.
 */
import { attemptOn, OWN_PREFIX } from '../localBackup.ts';
import { type Agreement, readAgreement } from '../sharedKept.ts';

const KEY = `${OWN_PREFIX}club-store`;

/** Makes it over the simple store, which may be missing or throw; then an agreement lasts as long as this page. */
export function createAgreementStore(simpleStore: () => globalThis.Storage | null) {
  let here: Agreement | null = null;
  const attempt = attemptOn(simpleStore);
  return {
    /** What was agreed, or null where nobody has. */
    read: (): Agreement | null =>
      attempt(null, (store) => readAgreement(JSON.parse(store.getItem(KEY) ?? 'null') as unknown)) ?? here,
    /** Keeps an agreement, or ends it with null; false where it will be forgotten with this page. */
    keep(agreement: Agreement | null): boolean {
      here = null;
      const kept = attempt(false, (store) => {
        if (agreement === null) store.removeItem(KEY);
        else store.setItem(KEY, JSON.stringify(agreement));
        return true;
      });
      if (!kept) here = agreement;
      return kept;
    },
  };
}
/** The agreement. No method throws. */
export type AgreementStore = ReturnType<typeof createAgreementStore>;
