/** The animal of a nickname, cut from paper in its colour, and cards of them; a name of one's own is a tag with its first letter. */
import type { JSX } from 'preact';
import { type Nickname, readNickname } from '../../core/group/nicknames.ts';
import { Button } from '../../ui/controls.tsx';
import { nameOf } from '../../words/group.ts';
import { ANIMAL_SHAPES, type AnimalTone } from './animalShapes.ts';

const INK: Readonly<Record<AnimalTone, Readonly<Record<string, string | number>>>> = {
  body: { fill: 'var(--tint)', stroke: 'var(--ink)' },
  deep: { fill: 'var(--ink)', 'fill-opacity': 0.42 },
  paper: { fill: 'var(--paper)', stroke: 'var(--ink)', 'stroke-width': 1.5 },
  ink: { fill: 'var(--ink)' },
};

/** A picture beside a written name; it says nothing the name does not. */
export function AnimalPicture({ nickname }: { readonly nickname: string }): JSX.Element {
  const name = readNickname(nickname);
  return (
    <svg
      class="animal"
      style={{ '--tint': `var(--tint-${name?.kind === 'listed' ? name.colour : 'white'})` }}
      viewBox="-3 -3 106 106"
      stroke-width="2.5"
      stroke-linejoin="round"
      aria-hidden="true"
    >
      {name?.kind === 'listed' ? <Listed name={name} /> : <Tag letter={firstLetter(name)} />}
    </svg>
  );
}

function Listed({ name }: { readonly name: Extract<Nickname, { kind: 'listed' }> }): JSX.Element {
  return (
    <>
      {ANIMAL_SHAPES[name.animal].map(([tone, path]) => (
        <path key={path} d={path} {...INK[tone]} />
      ))}
    </>
  );
}

function Tag({ letter }: { readonly letter: string }): JSX.Element {
  return (
    <>
      <path d="M14 30L50 6L86 30V92H14Z" fill="var(--tint)" stroke="var(--ink)" />
      <circle cx="50" cy="24" r="6" fill="var(--ink)" />
      <text x="50" y="78" text-anchor="middle" font-size="48" font-weight="900" fill="var(--ink)">
        {letter}
      </text>
    </>
  );
}

function firstLetter(name: Nickname | null): string {
  return name?.kind === 'own' ? ([...name.text][0] ?? '').toLocaleUpperCase() : '?';
}

/** Cards with an animal each, to be pushed; `labelOf` says what that does where the name alone does not. */
export function AnimalCards(props: {
  readonly nicknames: readonly string[];
  readonly small?: boolean;
  readonly labelOf?: (nickname: string) => string;
  readonly onPush: (nickname: string) => void;
}): JSX.Element {
  const { nicknames, small = false, labelOf, onPush } = props;
  return (
    <ul class={small ? 'animal-grid small' : 'animal-grid'}>
      {nicknames.map((nickname) => (
        <li key={nickname}>
          <Button
            look="cut animal-card"
            data-nickname={nickname}
            aria-label={labelOf?.(nickname)}
            onClick={() => onPush(nickname)}
          >
            <AnimalPicture nickname={nickname} />
            {nameOf(nickname)}
          </Button>
        </li>
      ))}
    </ul>
  );
}
