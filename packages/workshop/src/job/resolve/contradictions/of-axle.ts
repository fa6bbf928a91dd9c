import type {
  CaliperPart,
  DrumPart,
  Job,
  JobPart,
  JobSetUp,
  PadPart,
  RotorPart,
  TirePart,
} from '../../job.ts';
import type { Finding } from '../../reading/finding.ts';
import { amount, atLeast, atMost, contradiction } from './contradiction.ts';

/** What cannot be true together of the parts on one axle of a set-up. */
export function ofAxle(parts: Job['parts'], setUp: JobSetUp, axle: 'front' | 'rear'): Finding[] {
  const [rotor, pad, caliper, tire] = [
    partOf(parts, setUp.slots[`${axle}Rotor`], 'rotor'),
    partOf(parts, setUp.slots[`${axle}Pad`], 'pad'),
    partOf(parts, setUp.slots[`${axle}Caliper`], 'caliper'),
    partOf(parts, setUp.slots[`${axle}Tire`], 'tire'),
  ];
  const drum = axle === 'rear' ? partOf(parts, setUp.slots.rearDrum, 'drum') : null;
  return [
    ...(drum !== null && tire !== null ? drumInWheel(drum, tire) : []),
    ...(pad !== null && rotor !== null ? padOnRotor(pad, rotor) : []),
    ...(caliper !== null && pad !== null ? pistonsOnPad(caliper, pad) : []),
    ...(rotor !== null && tire !== null ? rotorInWheel(rotor, tire) : []),
  ];
}

/** The part in a slot; null where it is not there, of another kind or spoiled. */
function partOf<K extends JobPart['kind']>(
  parts: Job['parts'],
  id: string | null,
  kind: K,
): Extract<JobPart, { kind: K }> | null {
  const part = id !== null && Object.hasOwn(parts, id) ? parts[id] : undefined;
  return part?.kind === kind ? (part as Extract<JobPart, { kind: K }>) : null;
}

/** The effective radius must lie on the rotor, so the pad's inner edge must lie well outside the hub. */
function padOnRotor(pad: PadPart, rotor: RotorPart): Finding[] {
  const { radialHeight: height, area } = pad.facts;
  const outer = rotor.facts.sweptOuterDiameter.value / 2;
  if (outer - height.value <= 0.35 * outer) {
    return [
      contradiction({
        known: height,
        kind: 'part-length',
        why: `more than fits between hub and edge of the rotor "${rotor.id}"`,
        accepted: atMost(0.65 * outer, 'part-length'),
      }),
    ];
  }
  const halfBand = 0.5 * Math.PI * (outer ** 2 - (outer - height.value) ** 2);
  if (area.value <= halfBand) return [];
  return [
    contradiction({
      known: area,
      kind: 'part-area',
      why: `more than half of the band that a pad of this height sweeps on the rotor "${rotor.id}"`,
      accepted: atMost(halfBand, 'part-area'),
    }),
  ];
}

function pistonsOnPad(caliper: CaliperPart, pad: PadPart): Finding[] {
  const area = caliper.pistons.reduce((sum, piston) => sum + (Math.PI / 4) * piston.value ** 2, 0);
  const widest = caliper.pistons.reduce((most, piston) => (piston.value > most.value ? piston : most));
  const { radialHeight: height, area: padArea } = pad.facts;
  if (widest.value > 1.6 * height.value) {
    return [
      contradiction({
        known: widest,
        kind: 'bore',
        why: `far wider than the pad "${pad.id}" is high, ${amount(height.value, 'part-length')}`,
        accepted: atMost(1.6 * height.value, 'bore'),
      }),
    ];
  }
  if (area <= padArea.value) return [];
  return [
    contradiction({
      known: padArea,
      kind: 'part-area',
      why: `smaller than the pistons of "${caliper.id}" that press on it (pistons are counted on ONE side)`,
      accepted: atLeast(area, 'part-area'),
    }),
  ];
}

/** Drum and wall must leave room to the rim. */
function drumInWheel(drum: DrumPart, tire: TirePart): Finding[] {
  const { diameter, wallThickness } = drum.facts;
  const most =
    (tire.size?.rimDiameter ?? 2 * 0.85 * tire.facts.rollingRadius.value) - 2 * wallThickness.value;
  if (diameter.value < most) return [];
  return [
    contradiction({
      known: diameter,
      kind: 'part-length',
      why: `too large for the wheel inside the tire "${tire.id}"`,
      accepted: `less than ${amount(most, 'part-length')}`,
    }),
  ];
}

/** Inside the bead seat where the tire's size is known, else well inside the tire. */
function rotorInWheel(rotor: RotorPart, tire: TirePart): Finding[] {
  const diameter = rotor.facts.outerDiameter;
  const radius = tire.facts.rollingRadius;
  const most = tire.size?.rimDiameter ?? 2 * 0.85 * radius.value;
  if (diameter.value < most) return [];
  const wheel =
    tire.size === null
      ? `rolling radius ${amount(radius.value, 'car-length')}`
      : `size ${tire.size.written}, rim ${amount(most, 'part-length')}`;
  return [
    contradiction({
      known: diameter,
      kind: 'part-length',
      why: `too large for the wheel inside the tire "${tire.id}" (${wheel})`,
      accepted: `less than ${amount(most, 'part-length')}`,
    }),
  ];
}
