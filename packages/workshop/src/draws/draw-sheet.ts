import type { Draw } from '../settle/draw.ts';
import { DrawTable } from './draw-table.ts';
import type { DrawTableInput } from './draw-table.ts';

/**
 * Possible values of every uncertain number of a job: draw i of one set-up belongs to draw i of every other.
 *
 * Equation: as `drawnColumn`
 * Assumes: one draw is looked at after the other; going back to an earlier block draws that block again.
 *
 * @param input - the uncertain numbers, how many draws, the seed
 * @returns for each draw the function that picks its values
 */
export function drawSheet(input: DrawTableInput): readonly Draw[] {
  const table = new DrawTable(input);
  const columns = new Map(input.knowns.map(({ path }, column) => [path, column]));
  return Array.from({ length: input.draws }, (_, row): Draw => {
    return (known) => {
      if (!(known.spread > 0)) return known.value;
      const column = columns.get(known.path);
      if (column === undefined) throw new TypeError(`${known.path} is not on the draw sheet`);
      return table.values[column * table.stride + table.turnTo(row)] ?? known.value;
    };
  });
}
