/**
 * The command line as a process: words in, two streams and an exit code out. JSON with `--json`, else
 * text; bad input of any kind is a sentence on the error stream and exit code 2.
 */
import { runCommandLine } from './run.ts';

// A reader that has seen enough (`… | head`) is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  process.exit(error.code === 'EPIPE' ? 0 : 1);
});

const { exitCode, out, err } = runCommandLine(process.argv.slice(2));
if (out !== '') console.log(out);
if (err !== '') console.error(err);
process.exitCode = exitCode;
