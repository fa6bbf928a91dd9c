import { carFacts, partFacts, type Fact, type JobDocument } from '@standstill/workshop';
import { readFieldText, withOrigin } from '../../shared/quantity/field-text.ts';
import { markAssumed } from '../../shared/quantity/mark-assumed.ts';
import { setAt } from '../../shared/job/set-at.ts';

/** One of the facts that a job begins with: a field of the form, a place in the document. */
export interface FirstFact {
  readonly name: string;
  readonly path: string;
  readonly fact: Fact;
}

/** The facts that change an answer the most and that a tape measure or the papers of the car give. */
export const firstFacts: readonly FirstFact[] = [
  { name: 'mass', path: 'car.mass', fact: carFacts.mass },
  { name: 'wheelbase', path: 'car.wheelbase', fact: carFacts.wheelbase },
  {
    name: 'frontRotor',
    path: 'parts.front-rotor.outerDiameter',
    fact: { ...partFacts.rotorFacts.outerDiameter, title: 'Front rotor, outer diameter' },
  },
  {
    name: 'rearRotor',
    path: 'parts.rear-rotor.outerDiameter',
    fact: { ...partFacts.rotorFacts.outerDiameter, title: 'Rear rotor, outer diameter' },
  },
  {
    name: 'frontPiston',
    path: 'parts.front-caliper.pistons.0',
    fact: { ...partFacts.pistonFact, title: 'Front caliper piston' },
  },
];

/** What the form holds, all as typed. */
export interface FirstFactTexts {
  readonly title: string;
  readonly carName: string;
  readonly tireSize: string;
  readonly facts: Readonly<Record<string, string>>;
}

/** The starting document with the typed facts in it; everything that nobody typed is marked as assumed. */
export function beginJob(start: JobDocument, texts: FirstFactTexts): JobDocument {
  const { mass, wheelbase } = start.car;
  const guessed: JobDocument = {
    ...start,
    title: texts.title.trim(),
    car: {
      ...start.car,
      name: texts.carName.trim() || texts.title.trim(),
      mass: withOrigin(mass, 'assumed'),
      wheelbase: withOrigin(wheelbase, 'assumed'),
    },
    parts: Object.fromEntries(Object.entries(start.parts).map(([id, part]) => [id, markAssumed(part)])),
  };
  const { complaint: _placeholder, ...document } = guessed;
  const sized =
    texts.tireSize.trim() === '' ? document : setAt(document, 'parts.tires.size', texts.tireSize.trim());
  return firstFacts.reduce(
    (result, { name, path, fact }) => withTyped(result, path, fact, texts.facts[name] ?? ''),
    sized,
  );
}

function withTyped(document: JobDocument, path: string, fact: Fact, text: string): JobDocument {
  if (text.trim() === '') return document;
  const reading = readFieldText(text, fact, undefined);
  return reading.ok ? setAt(document, path, reading.input) : document;
}
