import type { FluidPart, HosePart } from '../../job.ts';
import type { Finding } from '../../reading/finding.ts';
import { amount, atLeast, contradiction } from './contradiction.ts';

/** What cannot be true together of a fluid. */
export function ofFluid({ facts }: FluidPart): Finding[] {
  const { dryBoilingPoint: dry, wetBoilingPoint: wet, volume, trappedAir } = facts;
  const found: Finding[] = [];
  if (wet.value >= dry.value) {
    const size = amount(dry.value, 'temperature');
    found.push(
      contradiction({
        known: wet,
        kind: 'temperature',
        why: `not below the dry boiling point of ${size}`,
        accepted: `less than ${size}`,
      }),
    );
  }
  if (trappedAir.value >= volume.value) {
    found.push(
      contradiction({
        known: trappedAir,
        kind: 'fluid-volume',
        why: `as much as the fluid itself, ${amount(volume.value, 'fluid-volume')}`,
        accepted: `less than ${amount(volume.value, 'fluid-volume')}`,
      }),
    );
  }
  return found;
}

/** A hose grows with its pressure: a table that falls was typed wrong. */
export function ofHose({ expansion }: HosePart): Finding[] {
  const { values, factor } = expansion;
  const row = values.findIndex((value, index) => index > 0 && value < (values[index - 1] ?? 0));
  if (row < 0) return [];
  const [value, before] = [values[row] ?? 0, values[row - 1] ?? 0];
  const known = { ...factor, value, path: `${factor.path}[${row}][1]` };
  const why = `less than the row before it although the pressure is higher`;
  const accepted = atLeast(before, 'hose-growth');
  return [contradiction({ known, kind: 'hose-growth', why, accepted })];
}
