import type { UnitPreferences } from '@standstill/units';
import { createContext, useContext, useMemo, useState, type ReactNode } from 'react';
import { measure, type Measure } from './measure.ts';
import { keepPreferences, loadPreferences, usualPreferences } from './unit-preferences.ts';

/** The measures that the pages print, in this person's units. */
export interface Units {
  readonly preferences: UnitPreferences;
  readonly choose: (preferences: UnitPreferences) => void;
  readonly distance: Measure;
  readonly speed: Measure;
  readonly deceleration: Measure;
  readonly force: Measure;
  readonly pressure: Measure;
  readonly temperature: Measure;
  readonly travel: Measure;
  readonly share: Measure;
  readonly time: Measure;
}

const UnitContext = createContext<Units>(unitsFor(usualPreferences, () => {}));

export function useUnits(): Units {
  return useContext(UnitContext);
}

export function UnitChoiceProvider({ children }: { readonly children: ReactNode }) {
  const [preferences, setPreferences] = useState(loadPreferences);
  const units = useMemo(
    () =>
      unitsFor(preferences, (next) => {
        keepPreferences(next);
        setPreferences(next);
      }),
    [preferences],
  );
  return <UnitContext.Provider value={units}>{children}</UnitContext.Provider>;
}

function unitsFor(preferences: UnitPreferences, choose: Units['choose']): Units {
  return {
    preferences,
    choose,
    distance: measure('stopping-distance', preferences),
    speed: measure('speed', preferences),
    deceleration: measure('deceleration', preferences),
    force: measure('force', preferences),
    pressure: measure('line-pressure', preferences),
    temperature: measure('temperature', preferences),
    travel: measure('travel', preferences),
    share: measure('share', preferences),
    time: measure('time', preferences),
  };
}
