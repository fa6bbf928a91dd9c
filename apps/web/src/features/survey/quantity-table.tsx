import type { Fact, QuantityInput } from '@standstill/workshop';
import { useJobPart, useJobSession } from '../../shared/job/job-context.ts';
import { valueAt } from '../../shared/job/set-at.ts';
import { withOrigin } from '../../shared/quantity/field-text.ts';
import { QuantityField } from '../../shared/quantity/quantity-field.tsx';

export interface QuantityTableProps {
  readonly path: string;
  readonly title: string;
  /** One fact for a list, two for rows of pairs. */
  readonly columns: readonly [Fact] | readonly [Fact, Fact];
  /** Rows that the schema allows. */
  readonly most: number;
}

/** A list of quantities, or a table of pairs in rising order; rows are added at the end. */
export function QuantityTable({ path, title, columns, most }: QuantityTableProps) {
  const session = useJobSession();
  const kept = useJobPart((state) => valueAt(state.document, path));
  const rows: readonly unknown[] = Array.isArray(kept) ? kept : [];
  const [first, second] = columns;

  const add = () => session.set(`${path}.${rows.length}`, newRow(rows.at(-1), columns));
  const remove = () => session.set(path, rows.length > 1 ? rows.slice(0, -1) : undefined);

  return (
    <fieldset className="quantity-table">
      <legend>{title}</legend>
      {rows.length === 0 && <p className="hint small soft">left out</p>}
      {rows.map((_, index) => (
        <div key={index} className={second ? 'row two' : 'row'}>
          <QuantityField
            path={second ? `${path}.${index}.0` : `${path}.${index}`}
            fact={first}
            title={`${first.title} ${index + 1}`}
          />
          {second && (
            <QuantityField path={`${path}.${index}.1`} fact={second} title={`${second.title} ${index + 1}`} />
          )}
        </div>
      ))}
      <div className="actions">
        {rows.length < most && (
          <button type="button" className="bare" onClick={add}>
            Add a row
          </button>
        )}
        {rows.length > (second ? 0 : 1) && (
          <button type="button" className="bare" onClick={remove}>
            Take out the last row
          </button>
        )}
      </div>
    </fieldset>
  );
}

/** A row to start from: the one above it, else the example; marked as assumed until somebody says more. */
function newRow(last: unknown, columns: QuantityTableProps['columns']): unknown {
  const cells = columns.map((fact, column): QuantityInput => {
    const above = columns.length === 1 ? last : (last as readonly unknown[] | undefined)?.[column];
    return withOrigin((above ?? fact.example) as QuantityInput, 'assumed');
  });
  return columns.length === 1 ? cells[0] : cells;
}
