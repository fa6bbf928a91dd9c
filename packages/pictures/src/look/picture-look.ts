import type { UnitSystem } from '@standstill/units';

/** How a picture is written for one person. */
export interface PictureLook {
  readonly units: UnitSystem;
}
