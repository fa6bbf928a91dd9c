import { preferredUnit, quantityKinds, unitsOf, type QuantityKind, type UnitSystem } from '@standstill/units';
import { useUnits } from './unit-choice.tsx';

const systems: readonly { readonly id: UnitSystem; readonly title: string }[] = [
  { id: 'us', title: 'US trade mix: ft, mph, lbf, psi, °F' },
  { id: 'metric', title: 'Metric: m, km/h, N, bar, °C' },
];

/** The kinds that people most often want otherwise than their mix. */
const kinds: readonly { readonly kind: QuantityKind; readonly title: string }[] = [
  { kind: 'stopping-distance', title: 'Stopping distance' },
  { kind: 'speed', title: 'Speed' },
  { kind: 'deceleration', title: 'Deceleration' },
  { kind: 'force', title: 'Pedal force' },
  { kind: 'line-pressure', title: 'Line pressure' },
  { kind: 'temperature', title: 'Temperature' },
  { kind: 'travel', title: 'Pedal travel' },
];

export function UnitSwitches() {
  const { preferences, choose } = useUnits();
  return (
    <fieldset>
      <legend>Units</legend>
      {systems.map(({ id, title }) => (
        <label key={id} className="choice">
          <input
            type="radio"
            name="units"
            checked={preferences.system === id}
            onChange={() => choose({ system: id })}
          />
          {title}
        </label>
      ))}
      <details>
        <summary>Each kind by itself</summary>
        <div className="fields">
          {kinds.map((row) => (
            <KindSwitch key={row.kind} {...row} />
          ))}
        </div>
      </details>
    </fieldset>
  );
}

function KindSwitch({ kind, title }: { readonly kind: QuantityKind; readonly title: string }) {
  const { preferences, choose } = useUnits();
  const id = `unit-${kind}`;
  return (
    <div className="field">
      <label htmlFor={id}>{title}</label>
      <select
        id={id}
        value={preferredUnit(kind, preferences)}
        onChange={(event) =>
          choose({ ...preferences, own: { ...preferences.own, [kind]: event.target.value } })
        }
      >
        {unitsOf(quantityKinds[kind].dimension).map((unit) => (
          <option key={unit}>{unit}</option>
        ))}
      </select>
    </div>
  );
}
