/**
 * How the site is built and how the tests are grouped. Pages, levels and sounds keep relative
 * addresses so that the built folder works under any path; which room may import what is not
 * decided here but checked in `test/house`.
 */
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { enginePlugin } from './.ci/enginePlugin.ts';
import { readerPlugin } from './.ci/readerPlugin.ts';
import { sitePlugin } from './.ci/sitePlugin.ts';
import { wordsPlugin } from './.ci/wordsPlugin.ts';
import { workPlugin } from './.ci/workPlugin.ts';

/** `src/game/engine/engine.ts` takes single files of the engine, which its package does not offer by name. */
const engineSources = fileURLToPath(new URL('node_modules/phaser/src', import.meta.url));

/** Switches the engine's sources ask for: canvas only, no sound of their own. */
const engineSwitches = {
  'typeof CANVAS_RENDERER': '"true"',
  'typeof WEBGL_RENDERER': 'undefined',
  'typeof WEBGL_DEBUG': 'undefined',
  'typeof FEATURE_SOUND': 'undefined',
  'typeof PLUGIN_CAMERA3D': 'undefined',
  'typeof PLUGIN_FBINSTANT': 'undefined',
};

/** Rooms whose tests need a document; every other test runs in plain Node. */
const roomsWithDocument = 'test/{app,ui,charts,features,input,audio,game,storage}';
const testFiles = '**/*.test.{ts,tsx}';

const work = workPlugin();

/** In one file each, what so many of the files fetched later share: a file for every small thing is more on the way. */
const sharedRooms = [
  { name: 'riding', test: /[\\/]src[\\/]core[\\/](?:model|ride)[\\/]/, minShareCount: 3 },
  { name: 'group', test: /[\\/]src[\\/]core[\\/](?:group|transfer)[\\/]/, minShareCount: 4 },
  // Group sessions and a club's own store are for few; everything else is asked for at every visit.
  {
    name: 'storage',
    test: /[\\/]src[\\/]storage[\\/](?!shared[\\/]|session)|[\\/]node_modules[\\/]idb[\\/]/,
  },
  { name: 'parts', test: /[\\/]src[\\/]ui[\\/]/, minShareCount: 4 },
  { name: 'charts', test: /[\\/]src[\\/]charts[\\/]/, minShareCount: 3 },
  { name: 'scene', test: /[\\/]src[\\/]game[\\/]/, minShareCount: 2 },
];

export default defineConfig({
  base: './',
  plugins: [wordsPlugin(), enginePlugin(), readerPlugin(), work.plugin, sitePlugin()],
  define: engineSwitches,
  resolve: {
    alias: {
      'phaser/src': engineSources,
      // Sounds have no place in space here.
      howler: 'howler/dist/howler.core.min.js',
    },
  },
  // The development server bundles packages on its own and must be told the same.
  optimizeDeps: { rolldownOptions: { transform: { define: engineSwitches } } },
  build: {
    target: 'es2022',
    // Where the browser does not know it, scripts come a little later all the same.
    modulePreload: { polyfill: false },
    // A sound inside a script would be fetched before anybody wants to hear it.
    assetsInlineLimit: 0,
    // The engine is big and loaded only when a ride starts; the usual warning would hide real ones.
    chunkSizeWarningLimit: 1600,
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [
            { name: 'phaser', test: /node_modules[\\/]phaser[\\/]/ },
            // All that the first page needs in two files, fetched side by side: every further one waits for the network
            // once more. What the worker needs of it as well stands apart, for it may not ask for a document.
            { name: 'core', test: (id) => work.onFirstPage(id) && work.inWorker(id) },
            { name: 'start', test: work.onFirstPage },
            ...sharedRooms,
          ],
        },
      },
    },
  },
  test: {
    allowOnly: false,
    passWithNoTests: false,
    // As many as there are processors on the smallest machine; left alone, vitest keeps one of two idle.
    maxWorkers: 2,
    // Not a measure of speed: only a test that hangs should fail, also behind the rides on a small machine.
    testTimeout: 600_000,
    hookTimeout: 600_000,
    setupFiles: ['assets/words/english.ts'],
    // What is waited for comes when the machine gets round to it.
    expect: { poll: { timeout: 120_000, interval: 100 } },
    coverage: { include: ['src/**/*.{ts,tsx}'], reportsDirectory: 'coverage' },
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          environment: 'node',
          // Nothing here leaves anything behind; reading the core anew for each file would take longer than its tests.
          isolate: false,
          // What Node itself imports works at the speed at which the game does; vitest's own runner makes every call twice as dear.
          execArgv: ['--import', 'tsx'],
          experimental: { viteModuleRunner: false, nodeLoader: false },
          include: [`test/${testFiles}`],
          exclude: [
            `${roomsWithDocument}/**`,
            'test/browser/**',
            'test/engines/**',
            'test/reader/**',
            'test/bench/**',
          ],
          benchmark: { include: ['test/bench/**/*.bench.ts'] },
        },
      },
      {
        extends: true,
        test: {
          name: 'dom',
          environment: 'happy-dom',
          include: [`${roomsWithDocument}/${testFiles}`],
          benchmark: { include: [] },
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          environment: 'node',
          // The driver of the browser is read once, not anew for each file.
          isolate: false,
          include: [`test/browser/${testFiles}`],
          globalSetup: ['test/browser/prepare.ts'],
          // Most of a test is waiting for a ride, so three fit on two processors.
          maxWorkers: 3,
          benchmark: { include: [] },
        },
      },
      {
        extends: true,
        test: {
          name: 'engines',
          environment: 'node',
          isolate: false,
          include: [`test/engines/${testFiles}`],
          globalSetup: ['test/engines/prepare.ts'],
          // As many as the browser project, beside which these run.
          maxWorkers: 3,
          benchmark: { include: [] },
        },
      },
      {
        extends: true,
        test: {
          name: 'reader',
          environment: 'node',
          include: [`test/reader/${testFiles}`],
          globalSetup: ['test/reader/prepare.ts'],
          hookTimeout: 600_000,
          benchmark: { include: [] },
        },
      },
    ],
  },
});
