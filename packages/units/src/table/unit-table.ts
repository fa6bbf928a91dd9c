import type { Dimension } from '../dimension/dimension.ts';
import { accelerationUnits } from './acceleration-units.ts';
import { angleUnits } from './angle-units.ts';
import { angularSpeedUnits } from './angular-speed-units.ts';
import { areaUnits } from './area-units.ts';
import { conductivityUnits } from './conductivity-units.ts';
import { densityUnits } from './density-units.ts';
import { energyUnits } from './energy-units.ts';
import { flexUnits } from './flex-units.ts';
import { forceUnits } from './force-units.ts';
import { frequencyUnits } from './frequency-units.ts';
import { heatTransferCoefficientUnits } from './heat-transfer-coefficient-units.ts';
import { lengthUnits } from './length-units.ts';
import { lengthComplianceUnits } from './length-compliance-units.ts';
import { massUnits } from './mass-units.ts';
import { momentOfInertiaUnits } from './moment-of-inertia-units.ts';
import { powerUnits } from './power-units.ts';
import { pressureUnits } from './pressure-units.ts';
import { ratioUnits } from './ratio-units.ts';
import { specificHeatUnits } from './specific-heat-units.ts';
import { specificHeatSlopeUnits } from './specific-heat-slope-units.ts';
import { speedUnits } from './speed-units.ts';
import { stiffnessUnits } from './stiffness-units.ts';
import { temperatureUnits } from './temperature-units.ts';
import { temperatureDifferenceUnits } from './temperature-difference-units.ts';
import { timeUnits } from './time-units.ts';
import { torqueUnits } from './torque-units.ts';
import { volumeUnits } from './volume-units.ts';
import { volumeComplianceUnits } from './volume-compliance-units.ts';
import { volumePerLengthUnits } from './volume-per-length-units.ts';
import type { Unit } from './unit.ts';

/** Every unit that the program knows, by dimension; the likeliest to be meant first. */
export const unitTable: Readonly<Record<Dimension, readonly Unit[]>> = {
  length: Object.values(lengthUnits),
  mass: Object.values(massUnits),
  time: Object.values(timeUnits),
  speed: Object.values(speedUnits),
  acceleration: Object.values(accelerationUnits),
  force: Object.values(forceUnits),
  pressure: Object.values(pressureUnits),
  torque: Object.values(torqueUnits),
  area: Object.values(areaUnits),
  volume: Object.values(volumeUnits),
  temperature: Object.values(temperatureUnits),
  'temperature-difference': Object.values(temperatureDifferenceUnits),
  ratio: Object.values(ratioUnits),
  angle: Object.values(angleUnits),
  'angular-speed': Object.values(angularSpeedUnits),
  frequency: Object.values(frequencyUnits),
  energy: Object.values(energyUnits),
  power: Object.values(powerUnits),
  density: Object.values(densityUnits),
  conductivity: Object.values(conductivityUnits),
  'specific-heat': Object.values(specificHeatUnits),
  'specific-heat-slope': Object.values(specificHeatSlopeUnits),
  'heat-transfer-coefficient': Object.values(heatTransferCoefficientUnits),
  'moment-of-inertia': Object.values(momentOfInertiaUnits),
  'volume-per-length': Object.values(volumePerLengthUnits),
  'volume-compliance': Object.values(volumeComplianceUnits),
  'length-compliance': Object.values(lengthComplianceUnits),
  flex: Object.values(flexUnits),
  stiffness: Object.values(stiffnessUnits),
};
