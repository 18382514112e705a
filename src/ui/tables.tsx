/** The head of a table, the cells of a row under it, and a box to scroll it in. What it is about is its page's business. */
import type { ComponentChildren, JSX } from 'preact';

/** One row that names the columns; `children` are columns only some tables have, behind the others. */
export function TableHead(props: {
  readonly names: readonly string[];
  readonly children?: ComponentChildren;
}): JSX.Element {
  return (
    <thead>
      <tr>
        {props.names.map((name, index) => (
          // The same name can stand twice: one level is ridden twice in a plan.
          <th key={index} scope="col">
            {name}
          </th>
        ))}
        {props.children}
      </tr>
    </thead>
  );
}

/** One column: what it is called, and what stands in it for a row. */
export interface Column<Row> {
  readonly name: string;
  readonly cell: (row: Row) => ComponentChildren;
}

/** The cells of one row, below a head of the same columns; the first one names the row. */
export function RowCells<Row>(props: {
  readonly columns: readonly Column<Row>[];
  readonly row: Row;
}): JSX.Element {
  return (
    <>
      {props.columns.map(({ name, cell }, index) =>
        index === 0 ? (
          <th key={name} scope="row">
            {cell(props.row)}
          </th>
        ) : (
          <td key={name}>{cell(props.row)}</td>
        ),
      )}
    </>
  );
}

/** A box for a table that may be wider or longer than the page: it scrolls by itself, by finger and by key. */
export function ScrollBox(props: {
  readonly class: string;
  readonly label: string;
  readonly children: ComponentChildren;
}): JSX.Element {
  return (
    // What scrolls must be reached by key; not every browser does that by itself.
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex
    <section class={props.class} tabIndex={0} aria-label={props.label}>
      {props.children}
    </section>
  );
}
