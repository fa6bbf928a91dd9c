import { lengthUnits } from './length-units.ts';
import { quotient } from './quotient.ts';
import type { Unit } from './unit.ts';
import { volumeUnits } from './volume-units.ts';

const cubicMetersPerMeter = quotient(volumeUnits.m3, lengthUnits.m);
const cubicMillimetersPerMillimeter = quotient(volumeUnits.mm3, lengthUnits.mm);

/** Volumes per length, such as the growth of a hose; a volume per length is an area, so 'm²' and 'mm²' are read too. */
export const volumePerLengthUnits = {
  cubicCentimetersPerFoot: quotient(volumeUnits.cm3, lengthUnits.ft),
  cubicCentimetersPerMeter: quotient(volumeUnits.cm3, lengthUnits.m),
  cubicMetersPerMeter: { ...cubicMetersPerMeter, spellings: [...cubicMetersPerMeter.spellings, 'm²'] },
  cubicMillimetersPerMillimeter: {
    ...cubicMillimetersPerMillimeter,
    spellings: [...cubicMillimetersPerMillimeter.spellings, 'mm²'],
  },
  cubicInchesPerFoot: quotient(volumeUnits.in3, lengthUnits.ft),
} satisfies Record<string, Unit>;
