/**
 * The import table of the house: which room may know which other room, and which packages. It is data;
 * `boundaries.ts` compares the sources with it. Changing a line here is a decision about the design.
 */

/** What a room may import. */
export interface Permission {
  readonly rooms: readonly string[];
  readonly packages: readonly string[];
  /** Folders outside `src` whose files the room may refer to. */
  readonly folders: readonly string[];
}

/** The rooms of the core from left to right: each names those before it that it may import, by their short names. */
const coreTable = {
  math: { rooms: [], packages: [] },
  course: { rooms: ['math'], packages: [] },
  model: { rooms: ['math', 'course'], packages: [] },
  level: { rooms: ['math', 'course', 'model'], packages: ['zod'] },
  gpx: { rooms: ['math', 'level'], packages: ['fflate', 'saxes'] },
  ride: { rooms: ['math', 'course', 'model', 'level'], packages: ['zod'] },
  planner: { rooms: ['math', 'course', 'model', 'ride'], packages: [] },
  coach: { rooms: ['math', 'course', 'model', 'level', 'gpx', 'ride', 'planner'], packages: [] },
  recorded: { rooms: ['math', 'course', 'model', 'level', 'gpx', 'ride', 'planner'], packages: ['zod'] },
  virtual: { rooms: ['math', 'course', 'model', 'ride'], packages: [] },
  settings: { rooms: ['math', 'model', 'level', 'ride'], packages: [] },
  group: {
    rooms: ['math', 'course', 'model', 'level', 'ride', 'planner', 'coach', 'virtual'],
    packages: ['zod'],
  },
  transfer: { rooms: ['math', 'level', 'coach', 'group'], packages: ['zod'] },
} as const satisfies Readonly<Record<string, Omit<Permission, 'folders'>>>;

const inCore = (name: string): string => `core/${name}`;
const coreRooms = Object.keys(coreTable).map(inCore);

/** Pages of the game, each a room that knows no other, with the packages only it needs. */
const featurePackages = {
  about: [],
  bench: [],
  bike: [],
  children: [],
  clinic: [],
  debrief: [],
  gearcheck: [],
  handover: ['jsqr'],
  levels: [],
  progress: [],
  ride: [],
  road: [],
  settings: [],
  start: [],
  teach: [],
  two: [],
} as const satisfies Readonly<Record<string, readonly string[]>>;
const featureRooms = Object.keys(featurePackages).map((name) => `features/${name}`);

const shellPackages = {
  state: [],
  words: [],
  game: ['phaser'],
  ui: ['lean-qr', 'preact'],
  charts: ['preact'],
  app: ['preact'],
  input: [],
  audio: ['howler'],
  storage: ['idb', 'zod'],
  worker: [],
  offline: [],
  cli: ['node:'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

/** Rooms outside the core that others may know. */
const shellRooms: Readonly<Record<string, readonly string[]>> = {
  ui: ['state', 'words'],
  charts: ['words', 'ui'],
  game: ['words'],
  input: ['words'],
  app: [
    'state',
    'words',
    'game',
    'ui',
    'charts',
    ...featureRooms,
    'input',
    'audio',
    'storage',
    'worker',
    'offline',
  ],
  cli: ['words'],
};

/** Rooms that show pictures, play sounds refer to files in `assets`, the command line to its words; `app` reads the levels. */
const shellFolders: Readonly<Record<string, readonly string[]>> = {
  game: ['assets'],
  ui: ['assets'],
  audio: ['assets'],
  app: ['levels'],
  cli: ['assets'],
};

function buildTable(): ReadonlyMap<string, Permission> {
  const table = new Map<string, Permission>();
  for (const [name, { rooms, packages }] of Object.entries(coreTable)) {
    table.set(inCore(name), { rooms: rooms.map(inCore), packages, folders: [] });
  }
  // The door.
  table.set('core', { rooms: coreRooms, packages: [], folders: [] });
  for (const [room, packages] of Object.entries(shellPackages)) {
    const rooms = ['core', ...coreRooms, ...(shellRooms[room] ?? [])];
    table.set(room, { rooms, packages, folders: shellFolders[room] ?? [] });
  }
  for (const [name, packages] of Object.entries(featurePackages)) {
    table.set(`features/${name}`, {
      rooms: ['core', ...coreRooms, 'state', 'words', 'ui', 'charts'],
      packages: ['preact', ...packages],
      folders: [],
    });
  }
  const shellsForMain = [...Object.keys(shellPackages), ...featureRooms].filter((room) => room !== 'cli');
  table.set('main', { rooms: ['core', ...coreRooms, ...shellsForMain], packages: ['preact'], folders: [] });
  return table;
}

/** Every room of the house. */
export const importTable: ReadonlyMap<string, Permission> = buildTable();

/** Rooms that are reached only when they are needed, with `import()`. */
export const lazyRooms: readonly string[] = ['game'];

/**
 * The room a file lives in, or null if the table has no such room.
 * Of files directly in `src` there is one, the entry; its room is `main`.
 * @param path from the top of the repository, with forward slashes
 */
export function roomOf(path: string): string | null {
  const parts = path.split('/');
  if (parts[0] !== 'src' || parts.length < 2) return null;
  if (parts.length === 2) return 'main';
  // Of the core only its door lies in no room.
  if (path === 'src/core/index.ts') return 'core';
  const hasRooms = parts[1] === 'core' || parts[1] === 'features';
  const room = hasRooms && parts.length > 3 ? `${parts[1]}/${parts[2]}` : (parts[1] as string);
  return importTable.has(room) && room !== 'main' && room !== 'core' ? room : null;
}
