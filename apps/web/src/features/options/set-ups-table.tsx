import type { Prediction, SetUpPrediction } from '@standstill/workshop';
import { dangersFirst, dangerWords } from '../../shared/ui/danger-words.ts';
import { useUnits, type Units } from '../../shared/units/unit-choice.tsx';
import './side-by-side.css';

const columns = [
  'First lock',
  'Danger',
  'One stop',
  'Last in a row',
  'Force at the tires’ limit',
  'Pedal travel',
] as const;

/** Every set-up of the job in one line, the dangerous ones first. */
export function SetUpsTable({ prediction }: { readonly prediction: Prediction }) {
  const units = useUnits();
  const reference = prediction.setUps[0];
  return (
    <div className="table-wrap" tabIndex={0} role="group" aria-label="All set-ups in figures">
      <table className="side-by-side all-set-ups">
        <caption>
          One stop and last stop in a row as differences to “{reference?.title}”, which has its distances.
          Touchy: less than half of its force brings the wheels to their limit; a foot used to the old pedal
          is too hard.
        </caption>
        <thead>
          <tr>
            <th scope="col">Set-up</th>
            {columns.map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {dangersFirst(prediction.setUps, prediction.warnings).map((setUp) => {
            const dangers = dangerWords(prediction.warnings, setUp.id);
            const cells = [
              firstLock(setUp, units),
              dangers.length > 0 ? (
                <strong className="danger-word">DANGER: {dangers.join('; ')}</strong>
              ) : (
                'none found'
              ),
              oneStop(prediction, setUp, units),
              lastStop(prediction, setUp, units),
              limitForce(setUp, reference, units),
              `${units.travel.text(setUp.pedalTravel_m)}, ${units.share.text(setUp.pedalTravelShare)} of it`,
            ];
            return (
              <tr key={setUp.id} className={dangers.length > 0 ? 'in-danger' : undefined}>
                <th scope="row">{setUp.title}</th>
                {cells.map((cell, index) => (
                  <td key={columns[index]} data-column={columns[index]}>
                    {cell}
                  </td>
                ))}
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}

function firstLock({ balance: { firstToLock, lockDeceleration_g: lock } }: SetUpPrediction, units: Units) {
  if (firstToLock === 'none' || lock === null) return 'none by foot';
  const where = units.deceleration.text(lock.value * 9.80665);
  return firstToLock === 'both' ? `both at ${where}` : `${firstToLock} at ${where}`;
}

function differenceOf({ differences }: Prediction, { id }: SetUpPrediction) {
  return differences.find((one) => one.id === id);
}

function oneStop(prediction: Prediction, setUp: SetUpPrediction, { distance }: Units) {
  const change = differenceOf(prediction, setUp)?.distance_m;
  if (!change) return `${distance.text(setUp.distance_m)} (${distance.range(setUp.distance_m)})`;
  return `${distance.signed(change)} (${distance.range(change)})`;
}

function lastStop(prediction: Prediction, setUp: SetUpPrediction, { distance }: Units) {
  const last = setUp.repeatedStops.at(-1);
  if (!last || setUp.repeatedStops.length < 2) return 'not asked about';
  const difference = differenceOf(prediction, setUp);
  if (!difference) return distance.text(last.distance_m);
  const change = difference.lastRepeatedStop_m;
  return change === null ? 'does not come to rest' : `${distance.signed(change)} (${distance.range(change)})`;
}

/** Below this share of the force as found, a foot that has learned the old pedal locks the wheels (assumed). */
const touchy = 0.5;

/** Where the tires' limit comes at much less force than before, that is said with the figure; the caption says what it means. */
function limitForce(
  { pedalForceAtLimit_N: limit }: SetUpPrediction,
  reference: SetUpPrediction | undefined,
  { force }: Units,
) {
  if (limit === null) return 'not reached';
  const before = reference?.pedalForceAtLimit_N;
  if (!before || limit.value > touchy * before.value) return force.text(limit);
  return <strong>{force.text(limit)}: touchy</strong>;
}
