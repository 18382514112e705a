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
