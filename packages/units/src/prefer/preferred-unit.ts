import { unitBySymbol } from '../convert/unit-by-symbol.ts';
import { quantityKinds, type QuantityKind } from './quantity-kinds.ts';

/** Which of the two mixes of units a person works in. */
export type UnitSystem = 'us' | 'metric';

/** A mix, and the kinds of quantity that this person wants otherwise. */
export interface UnitPreferences {
  readonly system: UnitSystem;
  readonly own?: { readonly [Kind in QuantityKind]?: string };
}

/**
 * The unit in which a person wants to see a kind of quantity.
 *
 * @param kind - kind of quantity
 * @param preferences - the person's mix and own choices
 * @returns symbol of the unit
 * @throws UnknownUnitError where an own choice is no unit of that kind
 * @example
 * preferredUnit('line-pressure', { system: 'us', own: { 'line-pressure': 'bar' } }) // => 'bar'
 */
export function preferredUnit(kind: QuantityKind, preferences: UnitPreferences): string {
  const row = quantityKinds[kind];
  const choice = preferences.own?.[kind];
  return choice === undefined ? row[preferences.system] : unitBySymbol(choice, row.dimension).symbol;
}
