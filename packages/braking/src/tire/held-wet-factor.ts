import { requireRange } from '@standstill/numerics';
import type { Road } from '../set-up/road.ts';
import type { Tire } from '../set-up/tire.ts';
import { deepestTread, waterSpeeds, wetPeakFactor, wornTread } from './wet-peak-factor.ts';

export interface TireOnWater {
  readonly tire: Tire;
  readonly road: Road;
  /** v, m/s. */
  readonly speed: number;
}

/**
 * Answers how much of its dry peak friction a tire keeps on the water of a road, at any speed and with any tread.
 *
 * Equation: as `wetPeakFactor`; beyond 130 km/h the row of 130 km/h is held, under 1.6 mm of tread the worn one.
 * Assumes: as `wetPeakFactor`. What is held lies outside the range of the source (`isBeyondWaterSource` says so), and is
 * on the high side: a faster or balder tire has no more grip.
 * Valid: speed up to 150 m/s, depth of water up to 2 mm, tread up to 30 mm; 1 on a dry road.
 *
 * @param input - tire with its tread left, m; road with its depth of water, m; v, speed, m/s
 * @returns 1, factor on the dry peak friction
 * @throws OutOfRangeError where an input cannot be, and for water deeper than the source's
 * Source: [bosch-handbook]
 * @example
 * heldWetFactor({ tire: exampleSetUp.frontTire, road: { ...exampleRoad, waterDepth: 0.0005 }, speed: 50 }) // => 0.499306
 */
export function heldWetFactor({ tire, road, speed }: TireOnWater): number {
  requireRange('speed', speed, 'm/s', 0, 150);
  const treadDepth = requireRange('tread left', tire.treadDepth, 'm', 0, deepestTread);
  return wetPeakFactor({
    speed: Math.min(speed, waterSpeeds[2]),
    waterDepth: road.waterDepth,
    treadDepth: Math.max(treadDepth, wornTread),
  });
}

/**
 * Answers whether a tire on the water of a road is driven outside the range of the source of `wetPeakFactor`.
 *
 * Equation: water on the road, and a speed above 130 km/h or a tread under 1.6 mm.
 *
 * @param input - tire with its tread left, m; road with its depth of water, m; v, speed, m/s
 * @returns true where `heldWetFactor` holds an end of the source's table; never on a dry road
 * Source: [bosch-handbook]
 * @example
 * isBeyondWaterSource({ tire: exampleSetUp.frontTire, road: { ...exampleRoad, waterDepth: 0.0005 }, speed: 50 }) // => true
 */
export function isBeyondWaterSource({ tire, road, speed }: TireOnWater): boolean {
  if (road.waterDepth === 0) return false;
  return speed > waterSpeeds[2] * (1 + 1e-9) || tire.treadDepth < wornTread * (1 - 1e-9);
}
