import { influentialAssumptions, type Job } from '@standstill/workshop';
import type { Colors } from '../surface/terminal.ts';
import { quantityPrinter } from './quantity-printer.ts';

/** The assumed values that the stop hangs on most, so that a person knows what to measure first. */
export function influenceLines(job: Job, colors: Colors): string[] {
  const found = influentialAssumptions(job);
  if (found.length === 0) return [];
  const print = quantityPrinter('us');
  return [
    colors.bold('Measure these first; the stop hangs on them most (feet for one spread either way):'),
    ...found.map(({ title, text, path, change_m }) => {
      const feet = print.quantity(change_m, 'stopping-distance', change_m);
      return `  ${title}: ~${text}, ${feet}  ${colors.dim(path)}`;
    }),
  ];
}
