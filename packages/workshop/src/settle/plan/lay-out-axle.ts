import type { AxleBrake, Caliper, Hose, Pad, Rotor, Tube } from '@standstill/braking';
import type {
  CaliperPart,
  DrumPart,
  HosePart,
  Job,
  JobSetUp,
  KnownTable,
  PadPart,
  RotorPart,
  TubePart,
} from '../../job/job.ts';
import { partIn, partOrNone } from '../part-in.ts';
import { rotorRing } from '../rotor-ring.ts';
import type { Draft } from './draft.ts';
import { layOutDrum } from './lay-out-drum.ts';
import type { Refill } from './refill.ts';
import type { SharedRecords } from './shared-records.ts';

interface LayOutAxleInput {
  readonly job: Job;
  readonly setUp: JobSetUp;
  readonly axle: 'front' | 'rear';
  /** With the central values. */
  readonly fresh: AxleBrake;
  readonly shared: SharedRecords;
  readonly refill: Refill;
}

/** Puts the brakes of an axle down for refilling. */
export function layOutAxle({ job, setUp, axle, fresh, shared, refill }: LayOutAxleInput): AxleBrake {
  const drum = axle === 'rear' ? partOrNone(job, setUp, 'rearDrum', 'drum') : null;
  if (drum !== null) return layOutDrumAxle(drum, { job, setUp, axle, fresh, shared, refill });
  const caliper = partIn(job, setUp, `${axle}Caliper`, 'caliper');
  const pad = partIn(job, setUp, `${axle}Pad`, 'pad');
  const rotor = partIn(job, setUp, `${axle}Rotor`, 'rotor');
  const hose = partIn(job, setUp, `${axle}Hose`, 'hose');
  const tube = partIn(job, setUp, `${axle}Tube`, 'tube');
  const parts = [caliper, pad, rotor, hose, tube];
  return shared.one(`axle ${parts.map(({ id }) => JSON.stringify(id)).join(' ')}`, () => {
    const brake: AxleBrake = {
      ...fresh,
      caliper: shared.one(caliper.id, () => layOutCaliper(caliper, fresh.caliper, refill)),
      pad: shared.one(pad.id, () => layOutPad(pad, fresh.pad, refill)),
      rotor: shared.one(rotor.id, () => layOutRotor(rotor, fresh.rotor, refill)),
      hose: shared.one(hose.id, () => layOutHose(hose, fresh.hose, refill)),
      tube: shared.one(tube.id, () => layOutTube(tube, fresh.tube, refill)),
    };
    refill.take(caliper.facts.runningClearance, brake, 'runningClearance');
    if (fresh.heatPath !== undefined) {
      refill.takeFacts(caliper.heat, fresh.heatPath);
      refill.takeFacts(pad.heat, fresh.heatPath);
      refill.takeFacts(rotor.heat, fresh.heatPath);
    }
    return brake;
  });
}

function layOutDrumAxle(
  drum: DrumPart,
  { job, setUp, axle, fresh, shared, refill }: LayOutAxleInput,
): AxleBrake {
  const hosePart = partIn(job, setUp, `${axle}Hose`, 'hose');
  const tubePart = partIn(job, setUp, `${axle}Tube`, 'tube');
  const parts = [drum, hosePart, tubePart];
  return shared.one(`axle ${parts.map(({ id }) => JSON.stringify(id)).join(' ')}`, () => {
    const hose = shared.one(hosePart.id, () => layOutHose(hosePart, fresh.hose, refill));
    const tube = shared.one(tubePart.id, () => layOutTube(tubePart, fresh.tube, refill));
    return layOutDrum({ drum, fresh, hose, tube, refill });
  });
}

function layOutTube(part: TubePart, tube: Tube, refill: Refill): Tube {
  refill.takeFacts(part.facts, tube);
  return tube;
}

function layOutCaliper(part: CaliperPart, caliper: Caliper, refill: Refill): Caliper {
  const { runningClearance: _ofTheAxle, ...facts } = part.facts;
  refill.takeFacts(facts, caliper);
  part.pistons.forEach((piston, place) => refill.take(piston, caliper.pistonDiameters, place));
  return caliper;
}

function layOutPad(part: PadPart, pad: Pad, refill: Refill): Pad {
  refill.takeFacts(part.facts, pad);
  layOutTable(part.friction, pad.frictions, refill);
  return pad;
}

function layOutHose(part: HosePart, hose: Hose, refill: Refill): Hose {
  refill.take(part.facts.length, hose, 'length');
  layOutTable(part.expansion, hose.expansions, refill);
  return hose;
}

function layOutTable({ values, factor }: KnownTable, into: readonly number[], refill: Refill): void {
  const list = into as number[];
  const by = { value: factor.value };
  refill.take(factor, by, 'value');
  refill.workOut([factor], () => {
    for (let i = 0; i < values.length; i += 1) list[i] = values[i]! * by.value;
  });
}

function layOutRotor(part: RotorPart, rotor: Draft<Rotor>, refill: Refill): Rotor {
  const { sweptOuterDiameter, cheekThickness, ringMass, ...facts } = part.facts;
  refill.takeFacts(facts, rotor);
  const drawn = {
    ...rotor,
    sweptOuterDiameter: sweptOuterDiameter.value,
    cheekThickness: cheekThickness.value,
    ringMass: ringMass.value,
  };
  refill.takeFacts({ sweptOuterDiameter, cheekThickness, ringMass }, drawn);
  const { outerDiameter, thickness, mass } = part.facts;
  const from = [sweptOuterDiameter, cheekThickness, ringMass, outerDiameter, thickness, mass];
  refill.workOut(from, () => {
    drawn.outerDiameter = rotor.outerDiameter;
    drawn.thickness = rotor.thickness;
    drawn.mass = rotor.mass;
    const ring = rotorRing(part.type, drawn);
    rotor.cheekThickness = ring.cheekThickness;
    rotor.ringMass = ring.ringMass;
    rotor.sweptOuterRadius = ring.sweptOuterRadius;
  });
  return rotor;
}
