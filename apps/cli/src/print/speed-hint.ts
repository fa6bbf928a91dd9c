import { preferredUnit, toUnit, type UnitSystem } from '@standstill/units';
import { hardestStop, type LogReport } from '@standstill/workshop';

/**
 * Which `--speed` fits the stop that a person most likely meant, where the stops before it don't count: none where the
 * first counts, or a fitting speed was given.
 */
export function speedHint({ stops, nominalSpeed_m_s }: LogReport, units: UnitSystem): string[] {
  const counted = stops.filter((stop) => stop.counted);
  const stop = hardestStop(counted.length > 0 ? counted : stops.filter(offNominalOnly));
  if (stop === undefined || stops[0]?.counted === true) return [];
  if (nominalSpeed_m_s !== null && stop.counted) return [];
  const unit = preferredUnit('speed', { system: units });
  // Rounded down, so that the entry speed is never too slow for it.
  const speed = Math.floor(toUnit(stop.entrySpeed_m_s, unit, 'speed'));
  return [`With --speed "${speed} ${unit}" the distance of stop ${stop.number} is corrected to that speed.`];
}

function offNominalOnly({ flags }: LogReport['stops'][number]): boolean {
  return flags.every(({ code, severity }) => severity === 'warns' || code === 'speed-off-nominal');
}
