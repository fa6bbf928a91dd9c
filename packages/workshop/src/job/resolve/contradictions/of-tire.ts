import { slideRatioRange } from '@standstill/braking';
import type { TirePart } from '../../job.ts';
import type { Finding } from '../../reading/finding.ts';
import { amount, contradiction, within } from './contradiction.ts';

/** What cannot be true together of a tire: a radius that its size denies, and a slip curve that no tire has. */
export function ofTire(tire: TirePart): Finding[] {
  return [...radiusOfSize(tire), ...slipCurve(tire)];
}

/** A loaded radius is 93 to 100 % of the free one. */
function radiusOfSize({ size, facts: { rollingRadius: radius } }: TirePart): Finding[] {
  if (size === null || radius.origin === 'assumed') return [];
  const [low, high] = [0.93 * size.freeRadius, size.freeRadius];
  if (radius.value >= low && radius.value <= high) return [];
  return [
    contradiction({
      known: radius,
      kind: 'car-length',
      why: `which a tire of the size ${size.written} does not have`,
      accepted: within(low, high, 'car-length'),
    }),
  ];
}

function slipCurve({ facts: { peakSlip, slipStiffness, slideRatio } }: TirePart): Finding[] {
  const peak = amount(peakSlip.value, 'share');
  const [softest, stiffest] = [1.001 / peakSlip.value, 20 / peakSlip.value];
  if (slipStiffness.value < softest || slipStiffness.value > stiffest) {
    const accepted = within(softest, stiffest, 'ratio');
    const why = `which no slip curve with its peak at ${peak} has`;
    return [contradiction({ known: slipStiffness, kind: 'ratio', why, accepted })];
  }
  const { low, high } = slideRatioRange({ peakSlip: peakSlip.value, slipStiffness: slipStiffness.value });
  if (slideRatio.value >= low && slideRatio.value <= high) return [];
  const why = `which no slip curve with its peak at ${peak} and a stiffness of ${amount(slipStiffness.value, 'ratio')} has`;
  const accepted = within(low, high, 'ratio');
  return [contradiction({ known: slideRatio, kind: 'ratio', why, accepted })];
}
