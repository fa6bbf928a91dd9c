import { fluidClasses, hoseClasses, padClasses, rotorMaterials, tireClasses } from '@standstill/braking';
import { carClasses, type PartKind } from '@standstill/workshop';

export interface ClassOption {
  readonly id: string;
  readonly title: string;
}

const optionsOf = (classes: Readonly<Record<string, { readonly title: string }>>): readonly ClassOption[] =>
  Object.entries(classes).map(([id, { title }]) => ({ id, title }));

/** The stated classes that fill what is left out, by kind of part. */
export const partClasses: { readonly [K in PartKind]?: readonly ClassOption[] } = {
  tire: optionsOf(tireClasses),
  pad: optionsOf(padClasses),
  rotor: optionsOf(rotorMaterials),
  fluid: optionsOf(fluidClasses),
  hose: optionsOf(hoseClasses),
};

export const carClassOptions: readonly ClassOption[] = optionsOf(carClasses);
