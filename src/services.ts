/** The real services behind the pages: files to save and to take back, and deleting everything. */
import type { Judging } from './judging.ts';
import type { Keeping } from './keeping.ts';
import { offerFile } from './pages/charts/picture.ts';
import type { Services } from './pages/services.ts';
import { words } from './pages/words.ts';

/** Joins the services to the keeping and to the planner. */
export function joinServices(keeping: Keeping, judging: Judging): Services {
  const { services } = words;
  return {
    async saveEverything() {
      const file = await (await keeping.storage).exportAll();
      offerFile(
        new Blob([JSON.stringify(file)], { type: 'application/json' }),
        'before-the-hill.everything.json',
      );
      return {
        ok: file.complete,
        sentence: file.complete ? services.savedAll(file.rides.length) : services.savedPart,
      };
    },
    async takeBack(file) {
      let value: unknown;
      try {
        value = JSON.parse(await file.text());
      } catch {
        return { ok: false, sentence: services.notAFile };
      }
      const report = await (await keeping.storage).importAll(value);
      await keeping.refresh();
      if (report.refused.some((one) => one.code === 'newer-version'))
        return { ok: false, sentence: services.newerFile };
      const good = report.refused.length === 0 && report.unsaved === 0 && report.problem === null;
      if (report.added + report.already === 0 && !good) return { ok: false, sentence: services.notAFile };
      return {
        ok: good,
        sentence: services.takenBack(report.added, report.already, report.refused.length + report.unsaved),
      };
    },
    bench: async () => (await import('./benchDesk.ts')).openBenchDesk(keeping, judging.planner),
    async deleteEverything() {
      const answer = await (await keeping.storage).deleteEverything();
      await keeping.refresh();
      return { ok: answer.deleted, sentence: answer.deleted ? services.deleted : services.notDeleted };
    },
  };
}
