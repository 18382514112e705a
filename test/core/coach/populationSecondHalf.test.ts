/** The second half of the levels by name; in two files because two processors are faster than one. */
import { LEVELS } from './riding.ts';
import { testPopulation } from './population.ts';

testPopulation(LEVELS.slice(Math.ceil(LEVELS.length / 2)));
