/**
 * The command line as a process: words in, two streams and an exit code out. JSON with `--json`, else
 * text; bad input of any kind is a sentence on the error stream and exit code 2.
 */
import '../../assets/words/english.ts';
import { runBatch } from './batchProcesses.ts';
import { runCommandLine } from './run.ts';

// A reader that has seen enough (`… | head`) is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  process.exit(error.code === 'EPIPE' ? 0 : 1);
});

const words = process.argv.slice(2);
const { exitCode, out, err } =
  words[0] === 'batch' && !words.includes('--help') ? await runBatch(words.slice(1)) : runCommandLine(words);
if (out !== '') console.log(out);
if (err !== '') console.error(err);
process.exitCode = exitCode;
