import { speedOffNominal } from '@standstill/logs';
import { quantile } from '@standstill/numerics';
import type { UnitSystem } from '@standstill/units';
import type { LogReport } from '../results/log-report.ts';

/** The speed that the stops of two sets are compared at, or why there is none. */
export type NominalSpeed =
  | {
      readonly ok: true;
      /** m/s. */
      readonly speed: number;
      /** True where nobody stated it. */
      readonly guessed: boolean;
    }
  | { readonly ok: false; readonly code: 'nominal-speeds-differ' | 'no-stop-counts' };

interface NominalSpeedInput {
  readonly reports: readonly LogReport[];
  /** m/s, as stated for the comparison. */
  readonly stated: number | undefined;
  readonly units: UnitSystem;
}

/** As stated for the comparison, else as the reports agree, else the round speed under the usual entry speed. */
export function nominalSpeedOf({ reports, stated, units }: NominalSpeedInput): NominalSpeed {
  if (stated !== undefined) return { ok: true, speed: stated, guessed: false };
  const known = reports.flatMap(({ nominalSpeed_m_s: speed }) => (speed === null ? [] : [speed]));
  const [first] = known;
  if (known.some((speed) => Math.abs(speed - (first ?? 0)) > 1e-6))
    return { ok: false, code: 'nominal-speeds-differ' };
  if (first !== undefined) return { ok: true, speed: first, guessed: false };
  const entries = reports.flatMap(({ stops }) =>
    stops.filter((stop) => stop.counted).map((stop) => stop.entrySpeed_m_s),
  );
  return entries.length === 0
    ? { ok: false, code: 'no-stop-counts' }
    : { ok: true, speed: roundSpeed(entries, units), guessed: true };
}

/** The highest round speed (5 mph or 10 km/h) that the usual entry was fast enough for. */
function roundSpeed(entries: readonly number[], units: UnitSystem): number {
  const step = units === 'us' ? 5 * 0.44704 : 10 / 3.6;
  const usual = quantile(entries, 0.5);
  const above = Math.ceil(usual / step) * step;
  return speedOffNominal(usual, above) === 'within' ? above : Math.max(step, above - step);
}
