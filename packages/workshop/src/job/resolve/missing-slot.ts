import type { JobDocument } from '../document/job-document.ts';
import { emptiableSlots, none, partSlots, rearDiscSlots } from '../document/part-slots.ts';
import type { PartSlot } from '../document/part-slots.ts';
import type { Filler } from './filler.ts';

/** A slot that nothing can be assumed for, with the parts of the job that would fit. */
export function missingSlot(filler: Filler, document: JobDocument, id: string, slot: PartSlot): void {
  const { kind, title } = partSlots[slot];
  const fitting = Object.entries(document.parts).filter(([, part]) => part.kind === kind);
  const emptiable = (emptiableSlots as readonly PartSlot[]).includes(slot);
  const ids = [...fitting.map(([partId]) => partId), ...(emptiable ? [none] : [])].join(', ');
  const drums = Object.entries(document.parts).filter(([, part]) => part.kind === 'drum');
  const orDrum =
    drums.length > 0 && (rearDiscSlots as readonly PartSlot[]).includes(slot)
      ? `, or instead rearDrum with ${drums.map(([partId]) => partId).join(', ')}`
      : '';
  const accepted = `the id of a part of kind ${kind}${ids === '' ? '' : `: ${ids}`}${orDrum}`;
  const message = `setUps.${id}.${slot} is missing: the ${title} can't be assumed; give ${accepted}`;
  filler.findings.push({
    code: 'missing',
    path: ['setUps', id, slot],
    at: 'key',
    found: 'nothing',
    accepted,
    message,
  });
}
