import type { SensorResult } from '@standstill/workshop';
import { measure } from '../../../shared/units/measure.ts';
import { useUnits } from '../../../shared/units/unit-choice.tsx';
import { sensorTitle, sensorWords } from './sensor-words.ts';

/** What the stops of a log were measured with, sensor by sensor; the ones that were used first. */
export function SensorList({ sensors }: { readonly sensors: readonly SensorResult[] }) {
  const { preferences } = useUnits();
  const used = sensors.filter((sensor) => sensor.used);
  const print = {
    speed: measure('speed', preferences).text,
    acceleration: measure('deceleration', preferences).text,
  };
  if (sensors.length === 0) return null;
  return (
    <details className="sensors">
      <summary>
        Measured with {used.length === 1 ? 'one sensor' : `${used.length} sensors`}
        {used.length < sensors.length && ` of ${sensors.length}`}
      </summary>
      <ul className="small">
        {[...used, ...sensors.filter((sensor) => !sensor.used)].map((sensor) => (
          <li key={`${sensor.channel} ${sensor.quantity}`}>
            <strong>{sensorTitle(sensor)}</strong>: {sensorWords(sensor, print)}
          </li>
        ))}
      </ul>
    </details>
  );
}
