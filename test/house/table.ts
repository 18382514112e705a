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

/** The rooms of the core from left to right; each may import some of those before it. */
const coreTable = {
  'core/math': { rooms: [], packages: [] },
  'core/course': { rooms: ['core/math'], packages: [] },
  'core/model': { rooms: ['core/math', 'core/course'], packages: [] },
  'core/level': { rooms: ['core/math', 'core/course', 'core/model'], packages: ['saxes', 'zod'] },
  'core/ride': { rooms: ['core/math', 'core/course', 'core/model', 'core/level'], packages: ['zod'] },
  'core/planner': {
    rooms: ['core/math', 'core/course', 'core/model', 'core/level', 'core/ride'],
    packages: [],
  },
  'core/coach': {
    rooms: ['core/math', 'core/course', 'core/model', 'core/level', 'core/ride', 'core/planner'],
    packages: [],
  },
  'core/clinic': {
    rooms: [
      'core/math',
      'core/course',
      'core/model',
      'core/level',
      'core/ride',
      'core/planner',
      'core/coach',
    ],
    packages: ['zod'],
  },
} as const satisfies Readonly<Record<string, Omit<Permission, 'folders'>>>;

const coreRooms = Object.keys(coreTable);

const shellPackages = {
  game: ['phaser'],
  pages: ['jsqr', 'lean-qr', 'preact'],
  input: [],
  audio: ['howler'],
  storage: ['idb', 'zod'],
  worker: [],
  offline: [],
  cli: ['node:'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

/** Rooms that show pictures or play sounds refer to files in `assets`; `main` reads the levels too. */
const shellFolders: Readonly<Record<string, readonly string[]>> = {
  game: ['assets'],
  pages: ['assets'],
  audio: ['assets'],
};

function buildTable(): ReadonlyMap<string, Permission> {
  const table = new Map<string, Permission>();
  for (const [room, permission] of Object.entries(coreTable)) table.set(room, { ...permission, folders: [] });
  for (const [room, packages] of Object.entries(shellPackages)) {
    table.set(room, { rooms: coreRooms, packages, folders: shellFolders[room] ?? [] });
  }
  const shellsForMain = Object.keys(shellPackages).filter((room) => room !== 'cli');
  const folders = ['assets', 'levels'];
  table.set('main', { rooms: [...coreRooms, ...shellsForMain], packages: ['preact'], folders });
  return table;
}

/** Every room of the house. */
export const importTable: ReadonlyMap<string, Permission> = buildTable();

/** Rooms that `main` reaches only when they are needed, with `import()`. */
export const lazyRooms: readonly string[] = ['game'];

/**
 * The room a file lives in, or null if the table has no such room.
 * Files directly in `src` are `main`: the entry and what joins the rooms.
 * @param path from the top of the repository, with forward slashes
 */
export function roomOf(path: string): string | null {
  const parts = path.split('/');
  if (parts[0] !== 'src' || parts.length < 2) return null;
  if (parts.length === 2) return 'main';
  const room = parts[1] === 'core' ? (parts.length > 3 ? `core/${parts[2]}` : 'core') : (parts[1] as string);
  return importTable.has(room) && room !== 'main' ? room : null;
}
