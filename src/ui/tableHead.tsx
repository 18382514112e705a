/** The head of a table, and the cells of a row under it. What a table is about is its page's business. */
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
