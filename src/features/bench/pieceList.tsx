/**
 * The road as a list: its pieces in their order, then what lies on it. The selected one opens and shows its numbers
 * and what can be done with it.
 */
import type { JSX } from 'preact';
import { useContext, useRef } from 'preact/hooks';
import { Button, Select } from '../../ui/controls.tsx';
import type { LevelEdit } from '../../core/level/edit.ts';
import { CUES, type Level } from '../../core/level/schema.ts';
import type { Selection } from './levelEditor.ts';
import { fieldsOf } from './fields.ts';
import { addPlaced, FRESH_PIECES, placeForNew, PLACED_LISTS } from './fresh.ts';
import { DoingButton, NumberField, TextField } from './inputs.tsx';
import { pieceNumbers, placedNumbers, Units, useFormat } from './say.ts';
import { Paper } from '../../ui/parts.tsx';
import { words } from '../../words/words.ts';
import { cueText } from '../../words/cues.ts';

const say = words('bench');

interface PieceListProps {
  readonly level: Level;
  readonly selection: Selection | null;
  readonly onSelect: (selection: Selection | null) => void;
  readonly onEdit: (edit: LevelEdit, gesture?: string | null) => void;
}

export function PieceList(props: PieceListProps): JSX.Element {
  const { level } = props;
  const format = useFormat();
  const row = useRows(props);
  return (
    <>
      <Paper title={say('edit-road')}>
        <ol class="things">
          {level.pieces.map((piece, index) =>
            row({ list: 'pieces', index }, piece, () => [
              say('edit-no', { number: index + 1, name: say(`piece-${piece.kind}`) }),
              pieceNumbers(piece, format),
            ]),
          )}
        </ol>
        <PieceAdders {...props} />
      </Paper>
      <Paper title={say('edit-placed')}>
        {PLACED_LISTS.every((list) => level[list].length === 0) && <p>{say('edit-nothing')}</p>}
        <ul class="things">
          {PLACED_LISTS.flatMap((list) =>
            level[list].map((entry, index) =>
              row({ list, index }, entry, () => [
                say(`place-${list}`),
                placedNumbers(level, list, index, format),
              ]),
            ),
          )}
        </ul>
        <PlacedAdders {...props} />
      </Paper>
    </>
  );
}

/** New pieces come behind the selected one, or at the end. */
function PieceAdders({ level, selection, onEdit, onSelect }: PieceListProps): JSX.Element {
  const behind = selection?.list === 'pieces' ? selection.index + 1 : level.pieces.length;
  return (
    <fieldset class="row adders">
      <legend>{say('edit-addPiece')}</legend>
      {Object.values(FRESH_PIECES).map((piece) => (
        <Button
          look="small-button"
          key={piece.kind}
          data-add={piece.kind}
          onClick={() => {
            onEdit({ kind: 'add-piece', index: behind, piece, follow: true });
            onSelect({ list: 'pieces', index: behind });
          }}
        >
          + {say(`piece-${piece.kind}`)}
        </Button>
      ))}
    </fieldset>
  );
}

/** What is added fills the piece that is selected. */
function PlacedAdders({ level, selection, onEdit, onSelect }: PieceListProps): JSX.Element {
  return (
    <fieldset class="row adders">
      <legend>{say('edit-addPlaced')}</legend>
      {PLACED_LISTS.map((list) => (
        <Button
          look="small-button"
          key={list}
          data-add={list}
          onClick={() => {
            onEdit(addPlaced(level, list, placeForNew(level, selection)));
            onSelect({ list, index: level[list].length });
          }}
        >
          + {say(`place-${list}`)}
        </Button>
      ))}
    </fieldset>
  );
}

/**
 * Rows of the list. A closed one of the same thing is the same row as before and is not looked at again: drawing two hundred
 * anew takes longer than an edit may.
 */
function useRows(props: PieceListProps) {
  const kept = useRef(new Map<string, { readonly thing: unknown; readonly row: JSX.Element }>());
  // In other units or another language all of them are others.
  const written = `${useContext(Units)} ${say('edit-road')}`;
  const writtenBefore = useRef(written);
  if (writtenBefore.current !== written) kept.current.clear();
  writtenBefore.current = written;
  const { selection } = props;
  return (one: Selection, thing: unknown, says: () => readonly [string, string]): JSX.Element => {
    const key = `${one.list}[${one.index}]`;
    const open = selection?.list === one.list && selection.index === one.index;
    const before = kept.current.get(key);
    if (!open && before !== undefined && before.thing === thing) return before.row;
    const [name, numbers] = says();
    const row = (
      <li key={key} class={open ? 'open' : ''} data-thing={key}>
        <Button look="wrap thing-head" aria-expanded={open} onClick={() => props.onSelect(open ? null : one)}>
          <strong>{name}</strong> <span>{numbers}</span>
        </Button>
        {open && <Open key={key} {...props} {...{ one, name }} />}
      </li>
    );
    if (open) kept.current.delete(key);
    else kept.current.set(key, { thing, row });
    return row;
  };
}

function Open(props: PieceListProps & { readonly one: Selection; readonly name: string }): JSX.Element {
  const { level, one, onEdit } = props;
  return (
    <div class="thing-open">
      <div class="row thing-fields">
        {fieldsOf(level, one).map((field) => (
          <NumberField
            key={field.name}
            {...field}
            label={say(`field-${field.name}`)}
            onValue={(value, gesture) => onEdit(field.edit(value), gesture)}
          />
        ))}
        {one.list === 'surfaces' && <SurfaceChoice level={level} index={one.index} onEdit={onEdit} />}
        {one.list === 'cues' && <CueChoice level={level} index={one.index} onEdit={onEdit} />}
      </div>
      {useFormat().unitM !== 1 && <p class="quiet">{say('edit-wholeMetres')}</p>}
      <Doing {...props} />
    </div>
  );
}

/** Move, double and take out. */
function Doing({ level, one, name, onEdit, onSelect }: PieceListProps & { one: Selection; name: string }) {
  const { list, index } = one;
  const button = (doing: string, disabled: boolean, onClick: () => void, data: string): JSX.Element => (
    <DoingButton data-do={data} what={name} {...{ doing, disabled, onClick }} />
  );
  const move = (to: number): void => {
    onEdit({ kind: 'move-piece', from: index, to });
    onSelect({ list: 'pieces', index: to });
  };
  if (list !== 'pieces')
    return (
      <div class="row thing-doing">
        {button(say('edit-remove'), false, () => onEdit({ kind: 'remove-entry', list, index }), 'remove')}
      </div>
    );
  const piece = level.pieces[index];
  if (piece === undefined) return null;
  return (
    <div class="row thing-doing">
      {button(say('edit-earlier'), index === 0, () => move(index - 1), 'earlier')}
      {button(say('edit-later'), index === level.pieces.length - 1, () => move(index + 1), 'later')}
      {button(
        say('edit-duplicate'),
        false,
        () => {
          onEdit({ kind: 'add-piece', index: index + 1, piece, follow: true });
          onSelect({ list: 'pieces', index: index + 1 });
        },
        'duplicate',
      )}
      {button(
        say('edit-remove'),
        level.pieces.length === 1,
        () => onEdit({ kind: 'remove-piece', index, follow: true }),
        'remove',
      )}
    </div>
  );
}

interface ChoiceProps {
  readonly level: Level;
  readonly index: number;
  readonly onEdit: PieceListProps['onEdit'];
}

type Surface = Level['surfaces'][number]['surface'];
const SURFACES = ['gravel', 'grass', 'cobbles'] as const satisfies readonly Surface[];

function SurfaceChoice({ level, index, onEdit }: ChoiceProps): JSX.Element | null {
  const entry = level.surfaces[index];
  if (entry === undefined) return null;
  return (
    <Select
      look="select-field"
      label={say('place-surfaces')}
      value={entry.surface}
      options={SURFACES.map((surface) => [surface, say(`surface-${surface}`)])}
      onChoose={(surface) =>
        onEdit({ kind: 'change-entry', list: 'surfaces', index, entry: { ...entry, surface } })
      }
    />
  );
}

const OWN = 'own';

function CueChoice({ level, index, onEdit }: ChoiceProps): JSX.Element | null {
  const entry = level.cues[index];
  if (entry === undefined) return null;
  const { atM } = entry;
  const change = (cue: Level['cues'][number], gesture: string | null = null): void =>
    onEdit({ kind: 'change-entry', list: 'cues', index, entry: cue }, gesture);
  return (
    <>
      <Select
        look="select-field"
        label={say('cueText')}
        value={'cue' in entry ? entry.cue : OWN}
        options={[[OWN, say('ownCue')], ...CUES.map((cue) => [cue, cueText(cue)] as const)]}
        onChoose={(cue) => change(cue === OWN ? { atM, text: say('ownCue') } : { atM, cue })}
      />
      {'text' in entry && (
        <TextField
          label={say('ownCue')}
          maxLength={76}
          value={entry.text}
          onType={(text) => change({ atM, text }, `cue ${index}`)}
        />
      )}
    </>
  );
}
