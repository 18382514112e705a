/**
 * Rides by ear with a real screen reader, again and again: marks, how late the voice came, and all that was heard. By
 * hand, with the site built and the machine to itself: `npx tsx test/figures/byEar.ts [TIMES]`.
 */
import { siteHeaders } from '../../.ci/policy.mjs';
import { serveFolder } from '../browser/server.ts';
import { builtSiteFolder } from '../browser/site.ts';
import { ridesByEar } from '../reader/heardRide.ts';
import { missingReader, readAloud } from '../reader/screenReader.ts';

const missing = missingReader();
if (missing !== null) throw new Error(missing);
const server = await serveFolder(builtSiteFolder, '/', siteHeaders);
for (let run = 1; run <= Number(process.argv[2] ?? 3); run += 1) {
  const site = await readAloud(server.url);
  try {
    for (const { total, passed, lines, twice, after } of await ridesByEar(site)) {
      const late = lines.map(({ lateS }) => lateS);
      const worst = lines.find(({ lateS }) => lateS === Math.max(...late));
      console.log(
        `run ${run}: ${total} ${passed ? 'passed' : 'not passed'}, ${lines.length} lines,`,
        `at most ${worst?.lateS.toFixed(2)} s late (${worst?.text}), twice: ${twice.join(' | ') || 'none'}`,
      );
      console.log(`  during: ${lines.map(({ text, lateS }) => `${text} +${lateS.toFixed(1)}`).join(' | ')}`);
      console.log(`  after: ${after.filter((text) => text.length > 3).join(' | ')}`);
    }
  } catch (error) {
    console.log(`run ${run}:`, error);
    console.log(
      site
        .heard()
        .slice(-40)
        .map(({ text }) => text)
        .join(' | '),
    );
  } finally {
    await site.close();
  }
}
await server.close();
