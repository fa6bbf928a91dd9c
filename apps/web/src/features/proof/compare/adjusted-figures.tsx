import type { Comparison } from '@standstill/workshop';
import { Figure, Figures } from '../../../shared/ui/figures.tsx';
import { useUnits } from '../../../shared/units/unit-choice.tsx';

const controls = { repeat: 'the repeat', 'reference-car': 'the reference car' } as const;

/** The difference with something taken out that was not the change: by a control, by trend and conditions. */
export function AdjustedFigures({ comparison }: { readonly comparison: Comparison }) {
  const { distance } = useUnits();
  const { control, adjusted } = comparison;
  if (control === null && adjusted === null) return null;
  return (
    <div className="stack expectation">
      <h3>{control ? 'With the day taken out' : 'With run order and conditions taken out'}</h3>
      {control && <p>{control.sentence}</p>}
      {adjusted && <p>{adjusted.sentence}</p>}
      <Figures>
        {control && (
          <>
            <Figure
              name={`Moved without the change, by ${controls[control.kind]}`}
              estimate={control.drift_m}
              measure={distance}
              note={`${control.count} stops`}
            />
            <Figure name="Difference less that" estimate={control.difference_m} measure={distance} />
          </>
        )}
        {adjusted && (
          <Figure
            name="Difference at like conditions"
            estimate={adjusted.difference_m}
            measure={distance}
            note={`taken out: ${adjusted.takenOut.map(({ what }) => what).join(', ')}`}
          />
        )}
      </Figures>
      {adjusted && adjusted.takenOut.length > 0 && <TakenOut taken={adjusted.takenOut} />}
    </div>
  );
}

type Taken = NonNullable<Comparison['adjusted']>['takenOut'];

function TakenOut({ taken }: { readonly taken: Taken }) {
  return (
    <details>
      <summary>Effect of each</summary>
      <ul className="small">
        {taken.map(({ what, effect, unit }) => (
          <li key={what}>
            {what}: {three(effect.value)} ({three(effect.low)} to {three(effect.high)}) {unit}
          </li>
        ))}
      </ul>
    </details>
  );
}

function three(value: number): string {
  return String(Number(value.toPrecision(2))).replace('-', '−');
}
