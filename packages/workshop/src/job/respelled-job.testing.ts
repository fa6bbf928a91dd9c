import { quantityKinds, toUnit, unitsOf } from '@standstill/units';
import type { JobDocument } from './document/job-document.ts';
import type { QuantityInput } from './document/quantity-input.ts';
import { readQuantity } from './document/read-quantity.ts';
import { carFacts } from './facts/car-facts.ts';
import { conditionsFacts } from './facts/conditions-facts.ts';
import type { Fact } from './facts/fact.ts';
import * as facts from './facts/part-facts.ts';
import { runFacts } from './facts/run-facts.ts';
import { testFacts } from './facts/test-facts.ts';
import type { Job } from './job.ts';
import { readJobDocument } from './reading/read-job-document.ts';

type Facts = Readonly<Record<string, Fact>>;

const factsOfKind: Readonly<Record<string, Facts>> = {
  tire: facts.tireFacts,
  pedal: facts.pedalFacts,
  booster: facts.boosterFacts,
  'master-cylinder': facts.masterCylinderFacts,
  'rear-valve': facts.rearValveFacts,
  fluid: facts.fluidFacts,
  caliper: facts.caliperFacts,
  pad: facts.padFacts,
  rotor: facts.rotorFacts,
  hose: facts.hoseFacts,
};

/**
 * A job with every stated quantity of its car, conditions and parts written in a unit picked for it.
 *
 * @param original - the job's document
 * @param picks - which of the units to take, one number a quantity
 * @returns the document in other units, with all digits
 */
export function respelled(original: JobDocument, picks: Iterator<number>): JobDocument {
  const parts = Object.fromEntries(
    Object.entries(original.parts).map(([id, part]) => [
      id,
      inOtherUnits(part, factsOfKind[part.kind] ?? {}, picks),
    ]),
  );
  const car = inOtherUnits(original.car, carFacts, picks);
  const conditions = inOtherUnits(original.conditions ?? {}, conditionsFacts, picks);
  const runs = (original.runs ?? []).map((run) =>
    inOtherUnits(run, { ...runFacts, nominalSpeed: conditionsFacts.speed }, picks),
  );
  const test = inOtherUnits(original.test ?? {}, testFacts, picks);
  return { ...original, car, conditions, parts, runs, test };
}

/** A document that must be a sound job. */
export function soundJob(value: unknown): Job {
  const reading = readJobDocument(value);
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return reading.job;
}

function inOtherUnits<T extends object>(values: T, known: Facts, picks: Iterator<number>): T {
  const changed = Object.entries(values).map(([key, input]: [string, unknown]) => {
    const fact = known[key];
    return [key, fact === undefined ? input : inOtherUnit(input as QuantityInput, fact, picks)] as const;
  });
  return { ...values, ...Object.fromEntries(changed) };
}

function inOtherUnit(input: QuantityInput, fact: Fact, picks: Iterator<number>): QuantityInput {
  const reading = readQuantity(input, fact);
  if (!reading.ok) throw new Error(reading.message);
  const { dimension } = quantityKinds[fact.kind];
  const units = unitsOf(dimension);
  const pick: number = picks.next().value ?? 0;
  const unit = units[pick % units.length] ?? '';
  const value = toUnit(reading.value, unit, dimension);
  const spread =
    reading.spread === null ? {} : { spread: `${toUnit(reading.spread, unit, dimension)} ${unit}` };
  return { value, unit: unit === '1' ? '' : unit, origin: reading.origin, ...spread };
}
