import type { Estimate, SetUpDifference, SetUpPrediction } from '@standstill/workshop';
import type { ReactNode } from 'react';
import { lockWords } from '../../shared/picture/balance-picture.tsx';
import type { Measure } from '../../shared/units/measure.ts';
import { useUnits, type Units } from '../../shared/units/unit-choice.tsx';
import './side-by-side.css';

export interface SideBySideProps {
  readonly a: SetUpPrediction;
  readonly b: SetUpPrediction;
  readonly difference: SetUpDifference;
}

/** The figures of both set-ups and their differences, each with its interval. */
export function SideBySide({ a, b, difference }: SideBySideProps) {
  const units = useUnits();
  const columns = [a.title, b.title, 'Difference'];
  return (
    <div className="table-wrap" tabIndex={0} role="group" aria-label="Both set-ups in figures">
      <table className="side-by-side">
        <thead>
          <tr>
            <th scope="col">
              <span className="unseen">Figure</span>
            </th>
            {columns.map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rowsOf({ a, b, difference }, units).map(({ name, cells }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {cells.map((cell, index) => (
                <td key={columns[index]} data-column={columns[index]}>
                  {cell}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

interface Row {
  readonly name: string;
  readonly cells: readonly [ReactNode, ReactNode, ReactNode];
}

function rowsOf({ a, b, difference }: SideBySideProps, units: Units): readonly Row[] {
  const row = (
    name: string,
    measure: Measure,
    of: (setUp: SetUpPrediction) => Estimate | null,
    change?: Estimate | null,
  ): Row => ({
    name,
    cells: [figure(of(a), measure), figure(of(b), measure), change ? changed(change, measure) : null],
  });
  return [
    row('Stopping distance', units.distance, (setUp) => setUp.distance_m, difference.distance_m),
    ...lastStop({ a, b, difference }, units.distance),
    row('Pedal travel', units.travel, (setUp) => setUp.pedalTravel_m, difference.pedalTravel_m),
    row(
      'Pedal force at which the tires are the limit',
      units.force,
      (setUp) => setUp.pedalForceAtLimit_N,
      difference.pedalForceAtLimit_N,
    ),
    row('Front line pressure', units.pressure, (setUp) => setUp.frontLinePressure_Pa),
    row('Rear line pressure', units.pressure, (setUp) => setUp.rearLinePressure_Pa),
    row('Front rotor, hottest face, one stop', units.temperature, (setUp) => setUp.frontRotorPeak_C),
    row('Rear rotor, hottest face, one stop', units.temperature, (setUp) => setUp.rearRotorPeak_C),
    { name: 'Limited by', cells: [a.limitedBy, b.limitedBy, null] },
    { name: 'Lock order', cells: [lockWords(a.balance), lockWords(b.balance), null] },
  ];
}

/** The last of the stops in a row: central values for the two, the difference with its interval. */
function lastStop({ a, b, difference }: SideBySideProps, distance: Measure): readonly Row[] {
  const [lastA, lastB] = [a.repeatedStops.at(-1), b.repeatedStops.at(-1)];
  if (!lastA || !lastB || a.repeatedStops.length < 2) return [];
  const cells = [
    distance.text(lastA.distance_m),
    distance.text(lastB.distance_m),
    difference.lastRepeatedStop_m === null
      ? 'one does not come to rest'
      : changed(difference.lastRepeatedStop_m, distance),
  ] as const;
  return [{ name: `Stop ${lastA.stop} in a row`, cells }];
}

function figure(estimate: Estimate | null, measure: Measure): ReactNode {
  if (estimate === null) return 'not reached';
  return (
    <>
      <span className="number">{measure.text(estimate)}</span>{' '}
      <span className="number soft">({measure.range(estimate)})</span>
    </>
  );
}

function changed(change: Estimate, measure: Measure): ReactNode {
  return (
    <>
      <strong className="number">{measure.signed(change)}</strong>{' '}
      <span className="number soft">({measure.range(change)})</span>
    </>
  );
}
