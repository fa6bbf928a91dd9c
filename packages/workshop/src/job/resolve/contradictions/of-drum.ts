import type { DrumPart } from '../../job.ts';
import type { Finding } from '../../reading/finding.ts';
import { amount, atMost, contradiction } from './contradiction.ts';

/** What cannot be true together of a drum brake: two linings must fit around its drum. */
export function ofDrum({ facts: { diameter, width, liningArea } }: DrumPart): Finding[] {
  const half = (Math.PI / 2) * diameter.value * width.value;
  if (liningArea.value <= half) return [];
  return [
    contradiction({
      known: liningArea,
      kind: 'part-area',
      why: `more than half of the drum of ${amount(diameter.value, 'part-length')} by ${amount(width.value, 'part-length')}`,
      accepted: atMost(half, 'part-area'),
    }),
  ];
}
