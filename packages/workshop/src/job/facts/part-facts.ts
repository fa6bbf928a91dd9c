import type { Facts } from './fact.ts';

export const tireFacts = {
  rollingRadius: {
    title: 'Rolling radius',
    dimension: 'length',
    low: 0.15,
    high: 0.7,
    example: '12 in',
    spread: 'size',
  },
  peakFriction: {
    title: 'Peak friction on dry road',
    dimension: 'ratio',
    low: 0.1,
    high: 3,
    example: '1.05',
    spread: 'friction',
  },
  nominalLoad: {
    title: 'Load at which the peak friction holds',
    dimension: 'force',
    low: 300,
    high: 30000,
    example: '800 lbf',
    spread: 'property',
  },
  loadSensitivity: {
    title: 'Load sensitivity',
    dimension: 'ratio',
    low: 0,
    high: 0.5,
    example: '0.08',
    spread: 'property',
  },
  slideRatio: {
    title: 'Sliding over peak friction',
    dimension: 'ratio',
    low: 0.3,
    high: 1,
    example: '0.8',
    spread: 'share',
  },
  peakSlip: {
    title: 'Slip at the peak',
    dimension: 'ratio',
    low: 0.02,
    high: 0.4,
    example: '12 %',
    spread: 'property',
  },
  slipStiffness: {
    title: 'Slip stiffness over peak force',
    dimension: 'ratio',
    low: 3,
    high: 100,
    example: '20',
    spread: 'property',
  },
} as const satisfies Facts;

export const pedalFacts = {
  ratio: {
    title: 'Pedal ratio',
    dimension: 'ratio',
    low: 1,
    high: 12,
    example: '4.1',
    required: true,
    spread: 'size',
  },
  efficiency: {
    title: 'Pedal efficiency',
    dimension: 'ratio',
    low: 0.5,
    high: 1,
    example: '0.95',
    spread: 'share',
  },
  freePlay: {
    title: 'Free play and dead stroke at the pedal',
    dimension: 'length',
    low: 0,
    high: 0.08,
    example: '0.3 in',
    spread: 'property',
  },
  flex: {
    title: 'Flex of pedal box and bulkhead at the pedal',
    dimension: 'length-per-force',
    low: 0,
    high: 1e-4,
    example: '5 mm/kN',
    spread: 'compliance',
  },
  availableTravel: {
    title: 'Pedal travel to the stop',
    dimension: 'length',
    low: 0.02,
    high: 0.35,
    example: '5.5 in',
    spread: 'size',
  },
} as const satisfies Facts;

export const boosterFacts = {
  gain: { title: 'Booster gain', dimension: 'ratio', low: 1, high: 15, example: '4.5', spread: 'property' },
  jumpInForce: {
    title: 'Jump-in output force',
    dimension: 'force',
    low: 0,
    high: 2500,
    example: '90 lbf',
    spread: 'property',
  },
  diaphragmDiameter: {
    title: 'Effective diaphragm diameter',
    dimension: 'length',
    low: 0.08,
    high: 0.4,
    example: '9 in',
    spread: 'size',
  },
  vacuum: {
    title: 'Vacuum available at sea level',
    dimension: 'pressure',
    low: 1e4,
    high: 1e5,
    example: '20 inHg',
    spread: 'property',
  },
  efficiency: {
    title: 'Booster efficiency',
    dimension: 'ratio',
    low: 0.5,
    high: 1,
    example: '0.95',
    spread: 'share',
  },
  greatestAssist: {
    title: 'Greatest assist force',
    dimension: 'force',
    low: 0,
    high: 20000,
    example: '1200 lbf',
    spread: 'property',
  },
} as const satisfies Facts;

export const masterCylinderFacts = {
  bore: {
    title: 'Master cylinder bore',
    dimension: 'length',
    low: 0.01,
    high: 0.05,
    example: '7/8 in',
    spread: 'size',
  },
  frontBore: {
    title: 'Front cylinder bore',
    dimension: 'length',
    low: 0.01,
    high: 0.05,
    example: '3/4 in',
    spread: 'size',
  },
  rearBore: {
    title: 'Rear cylinder bore',
    dimension: 'length',
    low: 0.01,
    high: 0.05,
    example: '3/4 in',
    spread: 'size',
  },
  frontForceShare: {
    title: 'Share of the rod force on the front cylinder',
    dimension: 'ratio',
    low: 0.1,
    high: 0.9,
    example: '50 %',
    spread: 'share',
  },
  stroke: {
    title: 'Stroke of the cylinder',
    dimension: 'length',
    low: 0.01,
    high: 0.08,
    example: '1.4 in',
    spread: 'size',
  },
  efficiency: {
    title: 'Cylinder efficiency',
    dimension: 'ratio',
    low: 0.5,
    high: 1,
    example: '0.95',
    spread: 'share',
  },
} as const satisfies Facts;

export const rearValveFacts = {
  kneePressure: {
    title: 'Knee pressure',
    dimension: 'pressure',
    low: 1e5,
    high: 2e7,
    example: '400 psi',
    spread: 'property',
  },
  slope: {
    title: 'Slope above the knee',
    dimension: 'ratio',
    low: 0,
    high: 1,
    example: '0.35',
    spread: 'share',
  },
} as const satisfies Facts;

export const antilockFacts = {
  efficiency: {
    title: 'Mean used over peak friction while it cycles',
    dimension: 'ratio',
    low: 0.5,
    high: 1,
    example: '92 %',
    spread: 'share',
  },
  minimumSpeed: {
    title: 'Speed below which it is off',
    dimension: 'speed',
    low: 0,
    high: 10,
    example: '4 mph',
    spread: 'property',
  },
} as const satisfies Facts;

export const fluidFacts = {
  bulkModulus: {
    title: 'Bulk modulus',
    dimension: 'pressure',
    low: 2e8,
    high: 5e9,
    example: '1.6 GPa',
    spread: 'property',
  },
  volume: {
    title: 'Fluid under pressure',
    dimension: 'volume',
    low: 2e-5,
    high: 3e-3,
    example: '0.35 L',
    spread: 'property',
  },
  trappedAir: {
    title: 'Trapped air at atmospheric pressure',
    dimension: 'volume',
    low: 0,
    high: 2e-4,
    example: '1 cm³',
    spread: 'property',
  },
  dryBoilingPoint: {
    title: 'Dry boiling point',
    dimension: 'temperature',
    low: 150,
    high: 400,
    example: '446 °F',
    spread: 'temperature',
  },
  wetBoilingPoint: {
    title: 'Wet boiling point',
    dimension: 'temperature',
    low: 100,
    high: 350,
    example: '311 °F',
    spread: 'temperature',
  },
} as const satisfies Facts;

/** Each piston of one side. */
export const pistonFact = {
  title: 'Piston diameter',
  dimension: 'length',
  low: 0.015,
  high: 0.1,
  example: '54 mm',
  required: true,
  spread: 'size',
} as const satisfies Facts[string];

export const caliperFacts = {
  pushOutPressure: {
    title: 'Push-out pressure',
    dimension: 'pressure',
    low: 0,
    high: 1e6,
    example: '7 psi',
    spread: 'property',
  },
  efficiency: {
    title: 'Caliper efficiency',
    dimension: 'ratio',
    low: 0.5,
    high: 1,
    example: '0.98',
    spread: 'share',
  },
  volumeCompliance: {
    title: 'Stretch of one caliper',
    dimension: 'volume-per-pressure',
    low: 0,
    high: 1e-12,
    example: '0.01 cm³/bar',
    spread: 'compliance',
  },
  runningClearance: {
    title: 'Gap between one pad and the rotor at rest',
    dimension: 'length',
    low: 0,
    high: 0.002,
    example: '0.1 mm',
    spread: 'property',
  },
  mass: {
    title: 'Mass of one caliper without pads',
    dimension: 'mass',
    low: 0.2,
    high: 25,
    example: '6 lb',
    spread: 'mass',
  },
} as const satisfies Facts;

export const padFacts = {
  area: {
    title: 'Friction face of one pad',
    dimension: 'area',
    low: 5e-4,
    high: 0.03,
    example: '6.2 in²',
    required: true,
    spread: 'size',
  },
  radialHeight: {
    title: 'Radial height of the friction face',
    dimension: 'length',
    low: 0.01,
    high: 0.15,
    example: '45 mm',
    required: true,
    spread: 'size',
  },
  thickness: {
    title: 'Friction material left',
    dimension: 'length',
    low: 0.001,
    high: 0.03,
    example: '10 mm',
    spread: 'size',
  },
  compressibility: {
    title: 'Squeeze of one pad per face pressure',
    dimension: 'length-per-pressure',
    low: 0,
    high: 1e-10,
    example: '1.5 µm/bar',
    spread: 'compliance',
  },
  mass: {
    title: 'Mass of one pad with its plate',
    dimension: 'mass',
    low: 0.03,
    high: 5,
    example: '0.9 lb',
    spread: 'mass',
  },
  specificHeat: {
    title: 'Specific heat of the pad',
    dimension: 'specific-heat',
    low: 300,
    high: 3000,
    example: '1000 J/(kg·K)',
    spread: 'property',
  },
  conductivity: {
    title: 'Conductivity of the pad',
    dimension: 'conductivity',
    low: 0.1,
    high: 100,
    example: '2 W/(m·K)',
    spread: 'property',
  },
  density: {
    title: 'Density of the friction material',
    dimension: 'density',
    low: 800,
    high: 8000,
    example: '2400 kg/m³',
    spread: 'property',
  },
} as const satisfies Facts;

/** One friction coefficient of a pad's table. */
export const padFrictionFact = {
  title: 'Pad friction',
  dimension: 'ratio',
  low: 0.05,
  high: 1,
  example: '0.40',
  spread: 'friction',
} as const satisfies Facts[string];
export const padTemperatureFact = {
  title: 'Interface temperature',
  dimension: 'temperature',
  low: -50,
  high: 1200,
  example: '400 °F',
  spread: 'chosen',
} as const satisfies Facts[string];

export const rotorFacts = {
  outerDiameter: {
    title: 'Outer diameter',
    dimension: 'length',
    low: 0.12,
    high: 0.5,
    example: '11.8 in',
    required: true,
    spread: 'size',
  },
  thickness: {
    title: 'Thickness',
    dimension: 'length',
    low: 0.004,
    high: 0.06,
    example: '25 mm',
    required: true,
    spread: 'size',
  },
  cheekThickness: {
    title: 'Thickness of one cheek',
    dimension: 'length',
    low: 0.002,
    high: 0.03,
    example: '7 mm',
    spread: 'size',
  },
  sweptOuterDiameter: {
    title: 'Outer diameter of the swept band',
    dimension: 'length',
    low: 0.1,
    high: 0.5,
    example: '11.7 in',
    spread: 'size',
  },
  mass: {
    title: 'Mass of one rotor',
    dimension: 'mass',
    low: 0.5,
    high: 40,
    example: '14 lb',
    spread: 'mass',
  },
  ringMass: {
    title: 'Mass of the swept ring',
    dimension: 'mass',
    low: 0.3,
    high: 35,
    example: '10 lb',
    spread: 'mass',
  },
  density: {
    title: 'Density',
    dimension: 'density',
    low: 1500,
    high: 9000,
    example: '7200 kg/m³',
    spread: 'property',
  },
  specificHeat: {
    title: 'Specific heat at 20 °C',
    dimension: 'specific-heat',
    low: 300,
    high: 1500,
    example: '480 J/(kg·K)',
    spread: 'property',
  },
  conductivity: {
    title: 'Conductivity',
    dimension: 'conductivity',
    low: 5,
    high: 300,
    example: '48 W/(m·K)',
    spread: 'property',
  },
  emissivity: {
    title: 'Emissivity of the faces',
    dimension: 'ratio',
    low: 0,
    high: 1,
    example: '0.5',
    spread: 'property',
  },
} as const satisfies Facts;

export const hoseFacts = {
  length: {
    title: 'Free length',
    dimension: 'length',
    low: 0.05,
    high: 2.5,
    example: '14 in',
    spread: 'size',
  },
} as const satisfies Facts;

/** One growth of a hose's table. */
export const hoseExpansionFact = {
  title: 'Expansion',
  dimension: 'volume-per-length',
  low: 0,
  high: 2e-5,
  example: '0.3 cm³/ft',
  spread: 'compliance',
} as const satisfies Facts[string];
export const hosePressureFact = {
  title: 'Pressure of the expansion',
  dimension: 'pressure',
  low: 1e5,
  high: 3e7,
  example: '1000 psi',
  spread: 'chosen',
} as const satisfies Facts[string];

export const tubeFacts = {
  length: { title: 'Length', dimension: 'length', low: 0, high: 8, example: '5 ft', spread: 'property' },
  innerDiameter: {
    title: 'Inner diameter',
    dimension: 'length',
    low: 0.001,
    high: 0.01,
    example: '3.35 mm',
    spread: 'size',
  },
  wallThickness: {
    title: 'Wall thickness',
    dimension: 'length',
    low: 0.0003,
    high: 0.003,
    example: '0.7 mm',
    spread: 'size',
  },
  elasticModulus: {
    title: "Young's modulus",
    dimension: 'pressure',
    low: 1e9,
    high: 4e11,
    example: '206 GPa',
    spread: 'property',
  },
} as const satisfies Facts;
