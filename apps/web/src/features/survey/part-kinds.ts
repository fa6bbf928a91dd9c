import { partFacts, type Fact, type Facts, type PartDocument, type PartKind } from '@standstill/workshop';

/** A choice of a part that is no quantity. */
export interface PartChoice {
  readonly key: string;
  readonly title: string;
  readonly options: readonly { readonly id: string; readonly title: string }[];
}

export interface PartForm {
  readonly title: string;
  readonly choices: readonly PartChoice[];
  readonly facts: Facts;
}

const typeOf = (...options: readonly (readonly [string, string])[]): PartChoice => ({
  key: 'type',
  title: 'Type',
  options: options.map(([id, title]) => ({ id, title })),
});

const contact: PartChoice = {
  key: 'contact',
  title: 'Pressure over the face',
  options: [
    { id: 'uniform-wear', title: 'even wear (bedded)' },
    { id: 'uniform-pressure', title: 'even pressure (new)' },
  ],
};

const operatedBy: PartChoice = {
  key: 'operatedBy',
  title: 'Pulled by',
  options: [
    { id: 'hand', title: 'hand' },
    { id: 'foot', title: 'foot' },
  ],
};

/** What the survey asks about each kind of part, in the order of the document. */
export const partForms: Readonly<Record<PartKind, PartForm>> = {
  tire: { title: 'tire', choices: [], facts: partFacts.tireFacts },
  pedal: { title: 'pedal', choices: [], facts: partFacts.pedalFacts },
  booster: {
    title: 'booster',
    choices: [typeOf(['vacuum', 'vacuum'], ['hydraulic', 'hydraulic'])],
    facts: { ...partFacts.boosterFacts, ...partFacts.boosterDetailsFacts },
  },
  'master-cylinder': {
    title: 'master cylinder',
    choices: [typeOf(['tandem', 'tandem'], ['balance-bar', 'two with balance bar'])],
    facts: { ...partFacts.masterCylinderFacts, ...partFacts.masterCylinderDetailsFacts },
  },
  'rear-valve': { title: 'rear valve', choices: [], facts: partFacts.rearValveFacts },
  antilock: { title: 'ABS', choices: [], facts: partFacts.antilockFacts },
  fluid: { title: 'fluid', choices: [], facts: partFacts.fluidFacts },
  caliper: {
    title: 'caliper',
    choices: [typeOf(['floating', 'floating'], ['fixed', 'fixed'])],
    facts: partFacts.caliperFacts,
  },
  pad: { title: 'pad', choices: [contact], facts: partFacts.padFacts },
  rotor: {
    title: 'rotor',
    choices: [typeOf(['solid', 'solid'], ['vented', 'vented'])],
    facts: partFacts.rotorFacts,
  },
  hose: { title: 'hose', choices: [], facts: partFacts.hoseFacts },
  tube: { title: 'line', choices: [], facts: partFacts.tubeFacts },
  drum: {
    title: 'drum',
    choices: [
      typeOf(
        ['simplex', 'leading and trailing shoe'],
        ['duplex', 'two leading shoes'],
        ['duo-servo', 'duo-servo'],
      ),
    ],
    facts: partFacts.drumFacts,
  },
  'parking-brake': {
    title: 'parking brake',
    choices: [
      typeOf(
        ['drum-in-hat', 'shoes in the hat'],
        ['caliper', 'on the caliper'],
        ['drum', 'in the rear drum'],
      ),
      operatedBy,
    ],
    facts: partFacts.parkingBrakeFacts,
  },
};

/** Facts that only one type of the part has. */
const onlyFor: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  booster: {
    vacuum: [
      'gain',
      'jumpInForce',
      'diaphragmDiameter',
      'vacuum',
      'efficiency',
      ...Object.keys(partFacts.boosterDetailsFacts),
    ],
    hydraulic: ['gain', 'greatestAssist'],
  },
  'master-cylinder': {
    tandem: ['bore', 'stroke', 'efficiency', ...Object.keys(partFacts.masterCylinderDetailsFacts)],
    'balance-bar': ['frontBore', 'rearBore', 'frontForceShare', 'stroke', 'efficiency', 'reservoirVolume'],
  },
  'parking-brake': {
    'drum-in-hat': Object.keys(partFacts.parkingBrakeFacts).filter((key) => key !== 'clampRatio'),
    caliper: ['force', 'leverRatio', 'cableEfficiency', 'clampRatio'],
    drum: ['force', 'leverRatio', 'cableEfficiency', 'shoeLeverRatio'],
  },
  rotor: {
    solid: Object.keys(partFacts.rotorFacts).filter((key) => key !== 'cheekThickness'),
  },
};

/** The quantities to ask of a part of this kind and type. */
export function factsOf(kind: PartKind, partType: string | undefined): readonly (readonly [string, Fact])[] {
  const entries: readonly (readonly [string, Fact])[] = Object.entries(partForms[kind].facts);
  const usual = partForms[kind].choices.find(({ key }) => key === 'type')?.options[0]?.id;
  const wanted = onlyFor[kind]?.[partType ?? usual ?? ''];
  return wanted ? entries.filter(([key]) => wanted.includes(key)) : entries;
}

/** The part with another type: facts that mean nothing on it are taken out, since a job that states them is refused. */
export function keepWhatApplies(part: PartDocument, type: string): object {
  const apply = new Set(factsOf(part.kind, type).map(([key]) => key));
  const quantities = new Set(Object.keys(partForms[part.kind].facts));
  const kept = Object.entries(part).filter(([key]) => !quantities.has(key) || apply.has(key));
  return { ...Object.fromEntries(kept), type };
}
