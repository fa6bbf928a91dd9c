import { areaUnits } from './area-units.ts';
import { massUnits } from './mass-units.ts';
import { product } from './product.ts';

/** Moments of inertia. */
export const momentOfInertiaUnits = {
  kilogramSquareMeter: product(massUnits.kg, areaUnits.m2),
  kilogramSquareCentimeter: product(massUnits.kg, areaUnits.cm2),
  poundSquareFoot: product(massUnits.lb, areaUnits.ft2),
  poundSquareInch: product(massUnits.lb, areaUnits.in2),
  slugSquareFoot: product(massUnits.slug, areaUnits.ft2),
};
