import { formatQuantity, preferredUnit, quantityKinds } from '@standstill/units';
import type { QuantityKind } from '@standstill/units';
import type { CaliperPart, FluidPart, Job, JobPart, JobSetUp, PadPart, RotorPart, TirePart } from '../job.ts';
import type { Known } from '../known.ts';
import type { Finding } from '../reading/finding.ts';

/** What is set against each other. */
type Facts = Pick<Job, 'car' | 'parts' | 'setUps'>;

/**
 * Facts that can each be true but not together: named once each, however many set-ups share the parts.
 *
 * @param facts - car, parts and set-ups
 * @param spoiled - what has a mistake of its own (`car`, `parts.kit-pad`, `setUps.front-kit`): nothing is said of it
 * @returns the contradictions
 */
export function contradictions(facts: Facts, spoiled: ReadonlySet<string> = new Set()): Finding[] {
  const parts = Object.values(facts.parts).filter(({ id }) => !spoiled.has(`parts.${id}`));
  const sound = Object.fromEntries(parts.map((part) => [part.id, part]));
  const setUps = facts.setUps.filter(({ id }) => !spoiled.has(`setUps.${id}`));
  const found = [
    ...(spoiled.has('car') ? [] : ofCar(facts)),
    ...parts.flatMap((part) =>
      part.kind === 'rotor' ? ofRotor(part) : part.kind === 'fluid' ? ofFluid(part) : [],
    ),
    ...setUps.flatMap((setUp) => [...ofAxle(sound, setUp, 'front'), ...ofAxle(sound, setUp, 'rear')]),
  ];
  return found.filter((one, index) => found.findIndex((other) => other.message === one.message) === index);
}

function ofCar({ car: { facts } }: Facts): Finding[] {
  const { centerOfGravityHeight: height, wheelbase } = facts;
  return height.value <= 0.6 * wheelbase.value
    ? []
    : [
        contradiction(
          height,
          `is ${print(height, 'car-length')}, more than 60 % of the wheelbase of ${print(wheelbase, 'car-length')}`,
        ),
      ];
}

function ofRotor(rotor: RotorPart): Finding[] {
  const {
    outerDiameter,
    sweptOuterDiameter: swept,
    thickness,
    cheekThickness: cheek,
    mass,
    ringMass,
  } = rotor.facts;
  const found: Finding[] = [];
  if (swept.value > outerDiameter.value + 1e-9) {
    found.push(
      contradiction(
        swept,
        `is ${print(swept, 'part-length')}, outside the rotor of ${print(outerDiameter, 'part-length')}`,
      ),
    );
  }
  if (rotor.type === 'vented' && 2 * cheek.value >= thickness.value) {
    found.push(
      contradiction(
        cheek,
        `is ${print(cheek, 'part-length')}: two cheeks fill the whole thickness of ${print(thickness, 'part-length')} and leave no vent`,
      ),
    );
  }
  if (ringMass.value > mass.value) {
    found.push(
      contradiction(
        mass,
        `is ${print(mass, 'part-mass')}, less than its swept ring of ${print(ringMass, 'part-mass')}`,
      ),
    );
  }
  return found;
}

function ofFluid({ facts: { dryBoilingPoint: dry, wetBoilingPoint: wet } }: FluidPart): Finding[] {
  if (wet.value < dry.value) return [];
  return [
    contradiction(
      wet,
      `is ${print(wet, 'temperature')}, not below the dry boiling point of ${print(dry, 'temperature')}`,
    ),
  ];
}

function ofAxle(parts: Facts['parts'], setUp: JobSetUp, axle: 'front' | 'rear'): Finding[] {
  const [rotor, pad, caliper, tire] = [
    partOf(parts, setUp.slots[`${axle}Rotor`], 'rotor'),
    partOf(parts, setUp.slots[`${axle}Pad`], 'pad'),
    partOf(parts, setUp.slots[`${axle}Caliper`], 'caliper'),
    partOf(parts, setUp.slots[`${axle}Tire`], 'tire'),
  ];
  return [
    ...(pad !== null && rotor !== null ? padOnRotor(pad, rotor) : []),
    ...(caliper !== null && pad !== null ? pistonsOnPad(caliper, pad) : []),
    ...(rotor !== null && tire !== null ? rotorInWheel(rotor, tire) : []),
  ];
}

/** The part in a slot; null where it is not there, of another kind or spoiled. */
function partOf<K extends JobPart['kind']>(
  parts: Facts['parts'],
  id: string | null,
  kind: K,
): Extract<JobPart, { kind: K }> | null {
  const part = id !== null && Object.hasOwn(parts, id) ? parts[id] : undefined;
  return part?.kind === kind ? (part as Extract<JobPart, { kind: K }>) : null;
}

/** The effective radius must lie on the rotor, so the pad's inner edge must lie well outside the hub. */
function padOnRotor(pad: PadPart, rotor: RotorPart): Finding[] {
  const height = pad.facts.radialHeight;
  const outer = rotor.facts.sweptOuterDiameter.value / 2;
  if (outer - height.value > 0.35 * outer) return [];
  const most = formatLength(0.65 * outer);
  return [
    contradiction(
      height,
      `is ${print(height, 'part-length')}, more than fits between hub and edge of the rotor "${rotor.id}"; accepted there is at most ${most}`,
    ),
  ];
}

function pistonsOnPad(caliper: CaliperPart, pad: PadPart): Finding[] {
  const area = caliper.pistons.reduce((sum, piston) => sum + (Math.PI / 4) * piston.value ** 2, 0);
  const widest = caliper.pistons.reduce((most, piston) => (piston.value > most.value ? piston : most));
  const height = pad.facts.radialHeight;
  if (widest.value > 1.6 * height.value) {
    return [
      contradiction(
        widest,
        `is ${print(widest, 'bore')}, far wider than the pad "${pad.id}" is high (${print(height, 'part-length')})`,
      ),
    ];
  }
  if (area <= pad.facts.area.value) return [];
  const { area: padArea } = pad.facts;
  return [
    contradiction(
      padArea,
      `is ${print(padArea, 'part-area')}, smaller than the pistons of "${caliper.id}" that press on it (pistons are counted on ONE side)`,
    ),
  ];
}

function rotorInWheel(rotor: RotorPart, tire: TirePart): Finding[] {
  const diameter = rotor.facts.outerDiameter;
  const radius = tire.facts.rollingRadius;
  if (diameter.value / 2 < 0.85 * radius.value) return [];
  return [
    contradiction(
      diameter,
      `is ${print(diameter, 'part-length')}, too large for the wheel inside the tire "${tire.id}" (rolling radius ${print(radius, 'car-length')})`,
    ),
  ];
}

function contradiction(known: Known, what: string): Finding {
  const path = known.path.split(/[.[\]]+/).filter((step) => step !== '');
  const steps = path.map((step) => (/^\d+$/.test(step) ? Number(step) : step));
  const message = `${known.path} ${what}`;
  return {
    code: 'contradiction',
    path: steps,
    at: 'value',
    found: what.replace(/^is ([^,:]*).*$/, '$1'),
    accepted: 'facts that agree',
    message,
  };
}

function print(known: Known, kind: QuantityKind): string {
  const unit = preferredUnit(kind, { system: 'us' });
  return formatQuantity(known.value, unit, quantityKinds[kind].dimension, { significantDigits: 3 });
}

function formatLength(value: number): string {
  return formatQuantity(value, 'in', 'length', { significantDigits: 3 });
}
