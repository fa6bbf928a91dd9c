import type { ClassCurve } from './class-value.ts';

export interface HoseClass {
  readonly title: string;
  /** Pa, pressures at which the expansion is stated (1000, 1500 and 2900 psi). */
  readonly pressures: readonly number[];
  /** m³ per m of length at those pressures. */
  readonly expansions: ClassCurve;
}

/** 1 cc/ft in m³/m. */
const cubicCentimeterPerFoot = 1e-6 / 0.3048;
const statedPressures: readonly number[] = [1000, 1500, 2900].map((psi) => psi * 6894.757);

function perMeter(...cubicCentimetersPerFoot: readonly number[]): readonly number[] {
  return cubicCentimetersPerFoot.map((value) => value * cubicCentimeterPerFoot);
}

/**
 * What the hoses of a class expand by. The two limits are the most that the US rule allows for a bore of 1/8 in
 * (3 mm) or less: real hoses stay well below them.
 *
 * Source: [fmvss-106]
 */
export const hoseClasses = {
  rubber: {
    title: 'Rubber hose, as measured',
    pressures: statedPressures,
    expansions: {
      values: perMeter(0.136, 0.15, 0.29),
      factorSpread: 0.25,
      known: 'read',
      note: 'One measured ordinary rubber hose, 36 to 48 % of the low-expansion limit (public test note of 2005). The spread over other hoses is assumed.',
    },
  },
  rubberLowExpansion: {
    title: 'Rubber hose of low expansion',
    pressures: statedPressures,
    expansions: {
      values: perMeter(0.1, 0.115, 0.215),
      factorSpread: 0.35,
      known: 'assumed',
      note: 'Taken as three quarters of the measured ordinary hose, two tight plies of fabric; no published figure found. Ask the maker or measure.',
    },
  },
  braided: {
    title: 'PTFE hose with a steel braid',
    pressures: statedPressures,
    expansions: {
      values: perMeter(0.06, 0.08, 0.14),
      factorSpread: 0.4,
      known: 'assumed',
      note: 'Taken as about half of the measured rubber hose; no published figure found. Ask the maker or measure.',
    },
  },
  rubberRegularLimit: {
    title: 'Rubber hose at the limit for regular hoses',
    pressures: statedPressures,
    expansions: {
      values: perMeter(0.66, 0.79, 1.02),
      factorSpread: 0,
      known: 'from memory',
      note: '49 CFR 571.106 table I, regular hose, bore 3 mm or less: a legal limit, not a typical hose.',
    },
  },
  rubberLowExpansionLimit: {
    title: 'Rubber hose at the limit for low-expansion hoses',
    pressures: statedPressures,
    expansions: {
      values: perMeter(0.33, 0.42, 0.61),
      factorSpread: 0,
      known: 'read',
      note: '49 CFR 571.106 table I, low-expansion hose, bore 3 mm or less, as quoted in a public test note of 2005: a legal limit, not a typical hose.',
    },
  },
} as const satisfies Readonly<Record<string, HoseClass>>;
