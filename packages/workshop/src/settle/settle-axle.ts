import type { AxleBrake, Caliper, Hose, Pad, Rotor } from '@standstill/braking';
import type { CaliperPart, HosePart, Job, JobSetUp, KnownTable, PadPart, RotorPart } from '../job/job.ts';
import type { Draw } from './draw.ts';
import { partIn, partOrNone } from './part-in.ts';
import { rotorRing } from './rotor-ring.ts';
import { settleDrum } from './settle-drum.ts';
import { settleFacts } from './settle-facts.ts';
import { settleHeatPath } from './settle-heat-path.ts';

export function settleAxle(job: Job, setUp: JobSetUp, axle: 'front' | 'rear', draw: Draw): AxleBrake {
  const hose = settleHose(partIn(job, setUp, `${axle}Hose`, 'hose'), draw);
  const tube = settleFacts(partIn(job, setUp, `${axle}Tube`, 'tube').facts, draw);
  const drum = axle === 'rear' ? partOrNone(job, setUp, 'rearDrum', 'drum') : null;
  if (drum !== null) return settleDrum(drum, hose, tube, draw);
  const caliper = partIn(job, setUp, `${axle}Caliper`, 'caliper');
  const pad = partIn(job, setUp, `${axle}Pad`, 'pad');
  const rotor = partIn(job, setUp, `${axle}Rotor`, 'rotor');
  return {
    kind: 'disc',
    caliper: settleCaliper(caliper, draw),
    pad: settlePad(pad, draw),
    rotor: settleRotor(rotor, draw),
    heatPath: settleHeatPath({ caliper, pad, rotor }, draw),
    hose,
    tube,
    runningClearance: draw(caliper.facts.runningClearance),
    pressureAssumption: pad.contact,
  };
}

function settleCaliper(part: CaliperPart, draw: Draw): Caliper {
  const { runningClearance: _ofTheAxle, ...facts } = part.facts;
  return { kind: part.type, pistonDiameters: part.pistons.map(draw), ...settleFacts(facts, draw) };
}

function settlePad(part: PadPart, draw: Draw): Pad {
  const frictions = settleTable(part.friction, draw);
  return { ...settleFacts(part.facts, draw), frictionTemperatures: part.friction.at, frictions };
}

function settleRotor(part: RotorPart, draw: Draw): Rotor {
  const { sweptOuterDiameter, ...facts } = settleFacts(part.facts, draw);
  return { kind: part.type, ...facts, ...rotorRing(part.type, { ...facts, sweptOuterDiameter }) };
}

function settleHose(part: HosePart, draw: Draw): Hose {
  const expansions = settleTable(part.expansion, draw);
  return { length: draw(part.facts.length), pressures: part.expansion.at, expansions };
}

function settleTable({ values, factor }: KnownTable, draw: Draw): number[] {
  const by = draw(factor);
  return values.map((value) => value * by);
}
