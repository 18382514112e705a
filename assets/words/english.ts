/** Speaks English wherever there are files: for the command line, the build, scripts and tests. Importing it is enough. */
import { take } from '../../src/words/words.ts';
import { carriedWords, ENGLISH, wordFiles } from './carry.ts';

for (const file of wordFiles()) take(ENGLISH, file, carriedWords(ENGLISH, file));
