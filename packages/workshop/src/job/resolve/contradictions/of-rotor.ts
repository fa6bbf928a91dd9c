import type { RotorPart } from '../../job.ts';
import type { Finding } from '../../reading/finding.ts';
import { amount, atLeast, atMost, contradiction } from './contradiction.ts';

/** What cannot be true together of a rotor's sizes and masses. */
export function ofRotor(rotor: RotorPart): Finding[] {
  return [...sweptBand(rotor), ...cheeks(rotor), ...masses(rotor)];
}

function sweptBand({ facts: { sweptOuterDiameter: swept, outerDiameter: outer } }: RotorPart): Finding[] {
  if (swept.value <= outer.value + 1e-9) return [];
  const size = amount(outer.value, 'part-length');
  const why = `outside the rotor of ${size}`;
  return [
    contradiction({
      known: swept,
      kind: 'part-length',
      why,
      accepted: atMost(outer.value, 'part-length'),
    }),
  ];
}

function cheeks({ type, facts: { thickness, cheekThickness: cheek } }: RotorPart): Finding[] {
  const half = thickness.value / 2;
  const whole = amount(thickness.value, 'part-length');
  const vented = type === 'vented';
  if (vented ? cheek.value < half : cheek.value <= half + 1e-9) return [];
  const why = vented
    ? `so that two cheeks fill the whole thickness of ${whole} and leave no vent`
    : `more than half of the thickness of ${whole}`;
  const accepted = vented ? `less than ${amount(half, 'part-length')}` : atMost(half, 'part-length');
  return [contradiction({ known: cheek, kind: 'part-length', why, accepted })];
}

function masses({ facts }: RotorPart): Finding[] {
  const { mass, ringMass, outerDiameter, thickness, density } = facts;
  const disc = (Math.PI / 4) * outerDiameter.value ** 2 * thickness.value * density.value;
  if (ringMass.value > disc) {
    const why = `more than a full disc of the rotor's size, ${amount(disc, 'part-mass')}`;
    return [contradiction({ known: ringMass, kind: 'part-mass', why, accepted: atMost(disc, 'part-mass') })];
  }
  if (ringMass.value <= mass.value) return [];
  const why = `less than its swept ring of ${amount(ringMass.value, 'part-mass')}`;
  const accepted = atLeast(ringMass.value, 'part-mass');
  return [contradiction({ known: mass, kind: 'part-mass', why, accepted })];
}
