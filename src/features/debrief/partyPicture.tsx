/** The party: a table under bunting, a basket, the friend, the dog, and a hedgehog with all that hopped out. */
import type { JSX } from 'preact';
import { words } from '../../words/words.ts';
import { Stroke } from '../../ui/pictures/stroke.tsx';

const say = words('party');

const FLAGS = ['var(--rider)', 'var(--leaf-deep)', 'var(--sand-dark)'] as const;

function Apple({ x, y }: { readonly x: number; readonly y: number }): JSX.Element {
  return (
    <g transform={`translate(${x} ${y})`}>
      <Stroke d="M0 -12q1 -7 6 -9" colour="#4a352b" width={2.5} round />
      <path d="M4 -16q8 -6 12 0q-7 5 -12 0" fill="#4f8a3f" />
      <circle r="13" fill="#cf3a2c" />
      <Stroke d="M-7 -5q2 -5 6 -5" colour="#f1b3a6" width={3} round />
    </g>
  );
}

function Bunting(): JSX.Element {
  return (
    <>
      <Stroke d="M-400 4L20 24Q320 92 620 24L1040 4" width={2.5} />
      {Array.from({ length: 13 }, (_, i) => {
        const t = (i + 0.5) / 13;
        const x = 20 + 600 * t;
        const y = 24 + 2 * t * (1 - t) * 68;
        return (
          <path
            key={i}
            class="party-flag"
            style={{ '--turn': i }}
            d={`M${x - 15} ${y}h30l-15 32Z`}
            fill={FLAGS[i % 3]}
          />
        );
      })}
    </>
  );
}

function Friend(): JSX.Element {
  return (
    <g>
      <path d="M136 172q-6 -46 22 -58h24q24 12 22 58Z" fill="#2b62b8" />
      <Stroke class="party-arm" d="M192 128q26 -16 34 -52" colour="#2b62b8" width={15} round />
      <circle cx="227" cy="72" r="9" fill="#c78d66" />
      <circle cx="170" cy="92" r="27" fill="#c78d66" />
      <path d="M141 86q2 -32 30 -32t30 32q-30 -10 -60 0Z" fill="#f6cf6b" />
      <Stroke d="M158 100q12 12 24 0" colour="#2c3842" width={3.5} round />
      <circle cx="160" cy="92" r="3" fill="#2c3842" />
      <circle cx="181" cy="92" r="3" fill="#2c3842" />
    </g>
  );
}

function Dog(): JSX.Element {
  return (
    <g class="party-dog">
      <path d="M470 208q-12 -50 22 -62q34 0 36 62Z" fill="#c98a4b" />
      <Stroke d="M528 190q22 -4 26 -26" colour="#c98a4b" width={9} round />
      <path d="M462 122q0 -32 32 -32t30 32q-2 26 -32 26t-30 -26" fill="#c98a4b" />
      <path d="M462 104q-16 8 -12 36q12 0 16 -20ZM526 104q14 8 10 34q-12 0 -14 -18Z" fill="#8f5c30" />
      <ellipse cx="492" cy="130" rx="15" ry="11" fill="#f6e3c4" />
      <ellipse cx="492" cy="124" rx="6" ry="4.500" fill="#22303a" />
      <circle cx="480" cy="112" r="3.500" fill="#22303a" />
      <circle cx="505" cy="112" r="3.500" fill="#22303a" />
      <path d="M488 137q4 12 9 0" fill="#e58a7a" />
    </g>
  );
}

const BACK = [
  [-8, -34],
  [14, -30],
  [-28, -22],
  [3, -52],
  [32, -18],
  [-20, -46],
  [22, -46],
] as const;

function Hedgehog({ apples }: { readonly apples: number }): JSX.Element {
  const spikes = Array.from({ length: 12 }, (_, i) => {
    const turn = Math.PI + (i / 11) * Math.PI;
    const reach = i % 2 === 0 ? 52 : 43;
    return `${(Math.cos(turn) * reach).toFixed(0)} ${(Math.sin(turn) * reach * 0.86).toFixed(0)}`;
  });
  return (
    <g transform="translate(372 214)" data-who="hedgehog">
      <path d={`M-54 0L${spikes.join('L')}L52 0Z`} fill="#6d5544" />
      <path d="M-20 0q-14 -30 -44 -10q-14 8 -8 10Z" fill="#e2bf94" />
      <circle cx="-73" cy="-4" r="4.500" fill="#22303a" />
      <circle cx="-46" cy="-14" r="3" fill="#22303a" />
      {BACK.slice(0, apples).map(([x, y]) => (
        <Apple key={x} x={x} y={y} />
      ))}
    </g>
  );
}

export function PartyPicture(props: { readonly carried: number; readonly spilled: number }): JSX.Element {
  const { carried, spilled } = props;
  return (
    <svg
      class="party-picture"
      viewBox="0 0 640 240"
      preserveAspectRatio="xMidYMax meet"
      role="img"
      aria-label={say('picture')}
    >
      <path d="M-400 240V150C120 118 220 160 340 138S560 118 1040 140V240Z" fill="var(--leaf-pale)" />
      <path d="M-400 240V196C150 176 330 206 1040 184V240Z" fill="var(--leaf)" />
      <Bunting />
      <Friend />
      <path d="M100 176H332l-6 14H106Z" fill="var(--sand)" stroke="var(--ink)" stroke-width="2.500" />
      <path d="M122 190v42M310 190v42" stroke="var(--ink)" stroke-width="6" stroke-linecap="round" />
      {Array.from({ length: carried }, (_, i) => (
        <Apple key={i} x={122 + i * 27} y={163 - (i % 2) * 5} />
      ))}
      <Dog />
      <Hedgehog apples={spilled} />
      {Array.from({ length: 22 }, (_, i) => (
        <rect
          key={i}
          class="confetti"
          style={{ '--turn': i }}
          x={24 + ((i * 97) % 590)}
          y={8 + ((i * 37) % 60)}
          width="9"
          height="5"
          fill={FLAGS[i % 3]}
        />
      ))}
    </svg>
  );
}
