import { quantityKinds, unitsOf, type QuantityKind, type UnitPreferences } from '@standstill/units';

const key = 'standstill.units';

export const usualPreferences: UnitPreferences = { system: 'us' };

/** The choice of this person on this device; anything that can't be read counts as no choice. */
export function readPreferences(text: string | null): UnitPreferences {
  try {
    const kept = JSON.parse(text ?? 'null') as Partial<UnitPreferences> | null;
    if (kept?.system !== 'us' && kept?.system !== 'metric') return usualPreferences;
    const own = Object.entries(kept.own ?? {}).filter(([kind, unit]) => isUnitOf(kind, unit));
    return own.length > 0 ? { system: kept.system, own: Object.fromEntries(own) } : { system: kept.system };
  } catch {
    return usualPreferences;
  }
}

function isUnitOf(kind: string, unit: string | undefined): boolean {
  return (
    kind in quantityKinds &&
    unit !== undefined &&
    unitsOf(quantityKinds[kind as QuantityKind].dimension).includes(unit)
  );
}

export function loadPreferences(): UnitPreferences {
  try {
    return readPreferences(localStorage.getItem(key));
  } catch {
    return usualPreferences;
  }
}

export function keepPreferences(preferences: UnitPreferences): void {
  try {
    localStorage.setItem(key, JSON.stringify(preferences));
  } catch {
    // Storage is blocked: the choice holds for this visit.
  }
}
