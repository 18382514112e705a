/** The head of a table. */
import type { ComponentChildren, JSX } from 'preact';

/** One row that names the columns; `children` are columns only some tables have, behind the others. */
export function TableHead(props: {
  readonly names: readonly string[];
  readonly children?: ComponentChildren;
}): JSX.Element {
  return (
    <thead>
      <tr>
        {props.names.map((name) => (
          <th key={name} scope="col">
            {name}
          </th>
        ))}
        {props.children}
      </tr>
    </thead>
  );
}
