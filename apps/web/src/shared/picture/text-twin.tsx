import type { ReactNode } from 'react';

export interface TextTwinProps {
  readonly caption: string;
  readonly head: readonly string[];
  /** First cell of a row is its name, the others are figures. */
  readonly rows: readonly (readonly ReactNode[])[];
  readonly total?: readonly ReactNode[];
  /** Open from the start; closed ones print all the same. */
  readonly open?: boolean;
}

/** The same as the picture, in figures. */
export function TextTwin({ caption, head, rows, total, open = false }: TextTwinProps) {
  return (
    <details open={open}>
      <summary>In figures</summary>
      <div className="table-wrap" tabIndex={0} role="group" aria-label={caption}>
        <table>
          <caption>{caption}</caption>
          <thead>
            <tr>
              {head.map((title, index) => (
                <th key={title} scope="col" className={index > 0 ? 'figure' : undefined}>
                  {title}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row, index) => (
              <Row key={index} cells={row} />
            ))}
          </tbody>
          {total && (
            <tfoot>
              <Row cells={total} />
            </tfoot>
          )}
        </table>
      </div>
    </details>
  );
}

function Row({ cells }: { readonly cells: readonly ReactNode[] }) {
  return (
    <tr>
      {cells.map((cell, index) =>
        index === 0 ? (
          <th key={index} scope="row">
            {cell}
          </th>
        ) : (
          <td key={index} className="figure">
            {cell}
          </td>
        ),
      )}
    </tr>
  );
}
