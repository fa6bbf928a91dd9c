import type { Estimate, SetUpDifference, SetUpPrediction } from '@standstill/workshop';
import { lockWords } from '../../shared/picture/balance-picture.tsx';
import type { Measure } from '../../shared/units/measure.ts';
import { useUnits } from '../../shared/units/unit-choice.tsx';

export interface SideBySideProps {
  readonly a: SetUpPrediction;
  readonly b: SetUpPrediction;
  readonly difference: SetUpDifference;
}

/** The figures of both set-ups and their differences, each with its interval. */
export function SideBySide({ a, b, difference }: SideBySideProps) {
  const units = useUnits();
  const last = a.repeatedStops.length;
  return (
    <div className="table-wrap" tabIndex={0} role="region" aria-label="Both set-ups in figures">
      <table className="side-by-side">
        <thead>
          <tr>
            <th scope="col">
              <span className="unseen">Figure</span>
            </th>
            <th scope="col">{a.title}</th>
            <th scope="col">{b.title}</th>
            <th scope="col">Difference</th>
          </tr>
        </thead>
        <tbody>
          <Line
            name="Stopping distance"
            of={[a.distance_m, b.distance_m]}
            change={difference.distance_m}
            measure={units.distance}
          />
          {last > 1 && <LastStop a={a} b={b} difference={difference} />}
          <Line
            name="Pedal travel"
            of={[a.pedalTravel_m, b.pedalTravel_m]}
            change={difference.pedalTravel_m}
            measure={units.travel}
          />
          <Line
            name="Pedal force at which the tires are the limit"
            of={[a.pedalForceAtLimit_N, b.pedalForceAtLimit_N]}
            change={difference.pedalForceAtLimit_N}
            measure={units.force}
          />
          <Line
            name="Front line pressure"
            of={[a.frontLinePressure_Pa, b.frontLinePressure_Pa]}
            measure={units.pressure}
          />
          <Line
            name="Front rotor, hottest face, one stop"
            of={[a.frontRotorPeak_C, b.frontRotorPeak_C]}
            measure={units.temperature}
          />
          <Line
            name="Rear rotor, hottest face, one stop"
            of={[a.rearRotorPeak_C, b.rearRotorPeak_C]}
            measure={units.temperature}
          />
          <WordLine name="Limited by" words={[a.limitedBy, b.limitedBy]} />
          <WordLine name="Lock order" words={[lockWords(a.balance), lockWords(b.balance)]} />
        </tbody>
      </table>
    </div>
  );
}

interface LineProps {
  readonly name: string;
  readonly of: readonly [Estimate | null, Estimate | null];
  readonly change?: Estimate | null;
  readonly measure: Measure;
}

function Line({ name, of: [a, b], change, measure }: LineProps) {
  return (
    <tr>
      <th scope="row">{name}</th>
      <Cell estimate={a} measure={measure} />
      <Cell estimate={b} measure={measure} />
      <td>{change ? <Change change={change} measure={measure} /> : ''}</td>
    </tr>
  );
}

function Cell({ estimate, measure }: { readonly estimate: Estimate | null; readonly measure: Measure }) {
  if (estimate === null) return <td>not reached</td>;
  return (
    <td>
      <span className="number">{measure.text(estimate)}</span>{' '}
      <span className="number soft">({measure.range(estimate)})</span>
    </td>
  );
}

function Change({ change, measure }: { readonly change: Estimate; readonly measure: Measure }) {
  return (
    <>
      <strong className="number">{measure.signed(change)}</strong>{' '}
      <span className="number soft">({measure.range(change)})</span>
    </>
  );
}

/** The last of the stops in a row: central values for the two, the difference with its interval. */
function LastStop({ a, b, difference }: SideBySideProps) {
  const { distance } = useUnits();
  const [lastA, lastB] = [a.repeatedStops.at(-1), b.repeatedStops.at(-1)];
  return (
    <tr>
      <th scope="row">Stop {lastA?.stop} in a row</th>
      <td>{lastA && distance.text(lastA.distance_m)}</td>
      <td>{lastB && distance.text(lastB.distance_m)}</td>
      <td>
        <Change change={difference.lastRepeatedStop_m} measure={distance} />
      </td>
    </tr>
  );
}

function WordLine({ name, words }: { readonly name: string; readonly words: readonly [string, string] }) {
  return (
    <tr>
      <th scope="row">{name}</th>
      <td>{words[0]}</td>
      <td>{words[1]}</td>
      <td />
    </tr>
  );
}
