import { gaussianState, kalmanPredictor, kalmanUpdater, rtsSmoother } from '@standstill/numerics';
import type { GaussianState } from '@standstill/numerics';
import { published } from '../published.ts';

/** Yearly flow of the Nile at Aswan, 1871 to 1970, 10⁸ m³, as in the R dataset Nile; written from memory. */
const flow = [
  1120, 1160, 963, 1210, 1160, 1160, 813, 1230, 1370, 1140, 995, 935, 1110, 994, 1020, 960, 1180, 799, 958,
  1140, 1100, 1210, 1150, 1250, 1260, 1220, 1030, 1100, 774, 840, 874, 694, 940, 833, 701, 916, 692, 1020,
  1050, 969, 831, 726, 456, 824, 702, 1120, 1100, 832, 764, 821, 768, 845, 864, 862, 698, 845, 744, 796, 1040,
  759, 781, 865, 845, 944, 984, 897, 822, 1010, 771, 676, 649, 846, 812, 742, 801, 1040, 860, 874, 848, 890,
  744, 749, 838, 1050, 918, 986, 797, 923, 975, 815, 1020, 906, 901, 1170, 912, 746, 919, 718, 714, 740,
];
/** Variances of the readings and of the yearly step of the level, as estimated in the book. */
const ofReading = 15_099;
const ofStep = 1469.1;

const one = Float64Array.of(1);
const noise = Float64Array.of(ofStep);

/** The level that wanders and is read with an error, begun as in the book with nothing known. */
function localLevel(): { smoothed: GaussianState[]; filtered: GaussianState[]; logLikelihood: number } {
  const [predict, update, smooth] = [kalmanPredictor(1), kalmanUpdater(1), rtsSmoother(1)];
  const state = gaussianState(1);
  const filtered: GaussianState[] = [];
  const predicted: GaussianState[] = [];
  const copied = (): GaussianState => ({ mean: state.mean.slice(), covariance: state.covariance.slice() });
  let logLikelihood = -Math.log(2 * Math.PI) / 2;
  flow.forEach((value, year) => {
    if (year === 0) {
      state.mean[0] = value;
      state.covariance[0] = ofReading;
      predicted.push(copied());
    } else {
      predict(state, { transition: one, noise });
      predicted.push(copied());
      const { difference, variance } = update(state, { value, row: one, variance: ofReading });
      logLikelihood -= (Math.log(2 * Math.PI * variance) + difference ** 2 / variance) / 2;
    }
    filtered.push(copied());
  });
  const smoothed = filtered.map(({ mean, covariance }) => ({
    mean: mean.slice(),
    covariance: covariance.slice(),
  }));
  for (let i = smoothed.length - 2; i >= 0; i -= 1)
    smooth({
      transition: one,
      filtered: smoothed[i]!,
      predicted: predicted[i + 1]!,
      smoothed: smoothed[i + 1]!,
    });
  return { smoothed, filtered, logLikelihood };
}

const { smoothed, filtered, logLikelihood } = localLevel();
const shared = { source: 'durbin-koopman', unit: '' } as const;

published(
  {
    ...shared,
    id: 'nile-likelihood',
    quantity: 'log-likelihood of the Nile flows for a wandering level, as R package KFAS prints it',
    printed: -632.5456,
    tolerance: 0.00015,
    basis: 'R',
    note: 'Without the constant of the first year, as that package counts. Ours at the rounded variances 15 099 and 1469.1, theirs at its own optimum, which differs by less than the tolerance.',
  },
  () => logLikelihood + Math.log(2 * Math.PI) / 2,
);
published(
  {
    ...shared,
    id: 'nile-likelihood-all',
    quantity: 'the same with that constant, over 100 years, as R package statespacer prints it',
    printed: -6.334646,
    tolerance: 5e-7,
    basis: 'R',
  },
  () => logLikelihood / flow.length,
);
published(
  {
    ...shared,
    id: 'nile-forecast',
    quantity: 'level in 1970, which is the forecast',
    printed: 798.37,
    unit: '10⁸ m³',
    tolerance: 0.005,
    basis: 'M',
  },
  () => filtered[flow.length - 1]!.mean[0]!,
);
published(
  {
    ...shared,
    id: 'nile-filtered-variance',
    quantity: 'variance that the filter settles at',
    printed: 4032.16,
    unit: '10¹⁶ m⁶',
    tolerance: 0.005,
    basis: 'M',
  },
  () => filtered[flow.length - 1]!.covariance[0]!,
);
published(
  {
    ...shared,
    id: 'nile-smoothed-variance',
    quantity: 'variance of the smoothed level in mid-record',
    printed: 2326.76,
    unit: '10¹⁶ m⁶',
    tolerance: 0.005,
    basis: 'X',
    note: 'Worked out apart: information of the filter to the year, 1/P, and of the years after, 1/(P + Q), with P the settled variance.',
  },
  () => smoothed[50]!.covariance[0]!,
);
