/** What is said of the road to those who ride by ear. Distances come in with their units. */

/** English. */
export const earWords = {
  'pitch-ahead': (distance: string, slope: string, length: string): string =>
    `Pitch in ${distance}: ${slope}, ${length} long.`,
  'pitch-soon': (distance: string): string => `Pitch in ${distance}.`,
  'pitch-now': (): string => 'Foot of the pitch.',
  'pitch-over': (): string => 'Over the top.',
  'stop-ahead': (distance: string): string => `Stop line in ${distance}.`,
  'stop-soon': (distance: string): string => `Stop line in ${distance}. Brake.`,
  hint: (step: string): string => `Now: ${step.toLowerCase()}.`,
  downhill: (): string => 'Downhill.',
};
