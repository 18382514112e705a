/**
 * The pages of a group session on a real desk, drawn into a document: taps, typing, places, and what was asked for. No
 * expectation lives here.
 */
import { render } from 'preact';
import { act } from 'preact/test-utils';
import type { OwnedDesk } from '../../../src/app/group/clinicDesk.ts';
import { ClinicPage } from '../../../src/features/clinic/page.tsx';
import type { SavedRound } from '../../../src/core/group/savedRound.ts';
import type { RideStart } from '../../../src/features/clinic/services.ts';
import { type MemoryShelf, memoryShelf, openDesk, propsOf } from '../../app/clinicGiven.ts';

/** The pages with everything round them. */
export interface Room {
  readonly root: HTMLElement;
  readonly shelf: MemoryShelf;
  /** Rides that were asked for. */
  readonly rides: RideStart[];
  /** Files that were offered, with their text. */
  readonly files: [string, string][];
  desk: OwnedDesk;
  place: string;
  debriefs: number;
}

/** Opens the pages on an empty device. */
export async function openRoom(startCounter: () => Worker | null = () => null): Promise<Room> {
  const root = document.createElement('div');
  document.body.append(root);
  const shelf = memoryShelf();
  const rides: RideStart[] = [];
  const desk = await openDesk(shelf, rides, undefined, startCounter);
  const room: Room = { root, shelf, rides, files: [], desk, place: '', debriefs: 0 };
  desk.subscribe(() => draw(room));
  draw(room);
  return room;
}

/** Takes them away. */
export function closeRoom({ root }: Room): void {
  render(null, root);
  root.remove();
}

/** Draws what the desk knows now. */
export function draw(room: Room): void {
  const props = propsOf(room.desk, room.place, {
    onPlace: (place) => goTo(room, place),
    onSaveFile: (name, text) => room.files.push([name, text]),
    onDebrief: () => {
      room.debriefs += 1;
    },
  });
  void act(() => render(<ClinicPage {...props} />, room.root));
}

/** Opens a place, as the address would. */
export function goTo(room: Room, place: string): void {
  room.place = place;
  room.desk.look(place);
  draw(room);
}

/** Everything a selector finds. */
export const all = <Kind extends Element = HTMLElement>({ root }: Room, selector: string): Kind[] => [
  ...root.querySelectorAll<Kind>(selector),
];

/** The first thing a selector finds. */
export function one(room: Room, selector: string): HTMLElement {
  const [found] = all(room, selector);
  if (found === undefined) throw new Error(`nothing is ${selector} in ${room.root.textContent ?? ''}`);
  return found;
}

/** A tap, and everything that follows from it. */
export async function tap(room: Room, selector: string): Promise<void> {
  await act(() => one(room, selector).click());
  await new Promise((resolve) => setTimeout(resolve, 0));
}

/** Writes into a field or chooses from a list. */
export async function type(room: Room, selector: string, text: string): Promise<void> {
  await act(() => {
    const input = one(room, selector) as HTMLInputElement;
    input.value = text;
    input.dispatchEvent(new Event(input.tagName === 'SELECT' ? 'change' : 'input', { bubbles: true }));
  });
}

/** The session that was kept last. */
export function sessionOf({ desk }: Room): SavedRound {
  const [saved] = desk.state().saved.rounds;
  if (saved === undefined) throw new Error('there is no session');
  return saved;
}

/** What can be used and has no name. */
export const nameless = (room: Room): string[] =>
  all(room, 'button, a, svg[role=img], input, select')
    .filter((element) => {
      const label = element.closest('label')?.textContent ?? '';
      return `${element.getAttribute('aria-label') ?? ''}${element.textContent}${label}`.trim() === '';
    })
    .map((element) => element.outerHTML);
