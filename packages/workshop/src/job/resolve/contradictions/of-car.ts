import type { Job } from '../../job.ts';
import type { Finding } from '../../reading/finding.ts';
import { amount, atLeast, atMost, contradiction } from './contradiction.ts';

/** What cannot be true together of a car's sizes. */
export function ofCar({ facts, laden }: Job['car']): Finding[] {
  const { centerOfGravityHeight: height, wheelbase, frontTrack, rearTrack } = facts;
  const found: Finding[] = [];
  if (height.value > 0.6 * wheelbase.value) {
    found.push(
      contradiction({
        known: height,
        kind: 'car-length',
        why: `more than 60 % of the wheelbase of ${amount(wheelbase.value, 'car-length')}`,
        accepted: atMost(0.6 * wheelbase.value, 'car-length'),
      }),
    );
  }
  for (const track of [frontTrack, rearTrack]) {
    if (track.origin === 'assumed' || track.value <= wheelbase.value) continue;
    found.push(
      contradiction({
        known: track,
        kind: 'car-length',
        why: `wider than the wheelbase of ${amount(wheelbase.value, 'car-length')} is long`,
        accepted: atMost(wheelbase.value, 'car-length'),
      }),
    );
  }
  if (laden.mass.of === 'car' && laden.mass.known.value < facts.mass.value) {
    found.push(
      contradiction({
        known: laden.mass.known,
        kind: 'car-mass',
        why: `less than the test mass of ${amount(facts.mass.value, 'car-mass')}`,
        accepted: atLeast(facts.mass.value, 'car-mass'),
      }),
    );
  }
  return found;
}
