import { leastSquares, linearFit } from '@standstill/numerics';
import { published } from '../published.ts';

/** Norris: ozone by one instrument (y) against another (x); pairs y, x. */
const norris = [
  [0.1, 0.2],
  [338.8, 337.4],
  [118.1, 118.2],
  [888, 884.6],
  [9.2, 10.1],
  [228.1, 226.5],
  [668.5, 666.3],
  [998.5, 996.3],
  [449.1, 448.6],
  [778.9, 777],
  [559.2, 558.2],
  [0.3, 0.4],
  [0.1, 0.6],
  [778.1, 775.5],
  [668.8, 666.9],
  [339.3, 338],
  [448.9, 447.5],
  [10.8, 11.6],
  [557.7, 556],
  [228.3, 228.1],
  [998, 995.8],
  [888.8, 887.6],
  [119.6, 120.2],
  [0.3, 0.3],
  [0.6, 0.3],
  [557.6, 556.8],
  [339.3, 339.1],
  [888, 887.2],
  [998.5, 999],
  [778.9, 779],
  [10.2, 11.1],
  [117.6, 118.3],
  [228.9, 229.2],
  [668.4, 669.1],
  [449.2, 448.9],
  [0.2, 0.5],
] as const;

/** Longley: employment (first) and six figures of the economy that nearly are mixes of each other. */
const longley = [
  [60_323, 83, 234_289, 2356, 1590, 107_608, 1947],
  [61_122, 88.5, 259_426, 2325, 1456, 108_632, 1948],
  [60_171, 88.2, 258_054, 3682, 1616, 109_773, 1949],
  [61_187, 89.5, 284_599, 3351, 1650, 110_929, 1950],
  [63_221, 96.2, 328_975, 2099, 3099, 112_075, 1951],
  [63_639, 98.1, 346_999, 1932, 3594, 113_270, 1952],
  [64_989, 99, 365_385, 1870, 3547, 115_094, 1953],
  [63_761, 100, 363_112, 3578, 3350, 116_219, 1954],
  [66_019, 101.2, 397_469, 2904, 3048, 117_388, 1955],
  [67_857, 104.6, 419_180, 2822, 2857, 118_734, 1956],
  [68_169, 108.4, 442_769, 2936, 2798, 120_445, 1957],
  [66_513, 110.8, 444_546, 4681, 2637, 121_950, 1958],
  [68_655, 112.6, 482_704, 3813, 2552, 123_366, 1959],
  [69_564, 114.2, 502_601, 3931, 2514, 125_368, 1960],
  [69_331, 115.7, 518_173, 4806, 2572, 127_852, 1961],
  [70_551, 116.9, 554_894, 4007, 2827, 130_081, 1962],
] as const;

const line = linearFit(
  norris.map(([, x]) => x),
  norris.map(([y]) => y),
);
const pair = leastSquares(
  [norris.map(() => 1), norris.map(([, x]) => x)],
  norris.map(([y]) => y),
);
const plane = leastSquares(
  [longley.map(() => 1), ...[1, 2, 3, 4, 5, 6].map((column) => longley.map((row) => row[column] ?? 0))],
  longley.map(([employed]) => employed),
);

/** The certified digits are of exact decimals; doubles and their sums lose some, by how nearly terms are mixes. */
const certified = (id: string, quantity: string, printed: number, digits: number, ours: () => number): void =>
  published(
    {
      id,
      source: 'nist-strd',
      quantity,
      printed,
      unit: '',
      tolerance: Math.abs(printed) * 10 ** -digits,
      basis: 'R',
      note: `Tolerance ${digits} digits of the value: what doubles keep of the certified fifteen.`,
    },
    ours,
  );

certified('norris-a', 'Norris, line: intercept', -0.262323073774029, 11, () => line.intercept);
certified('norris-b', 'its standard error', 0.232818234301152, 11, () => line.interceptStandardError);
certified('norris-c', 'slope', 1.00211681802045, 13, () => line.slope);
certified('norris-d', 'its standard error', 0.000429796848199937, 11, () => line.slopeStandardError);
certified(
  'norris-e',
  'residual standard deviation',
  0.884796396144373,
  11,
  () => line.residualStandardDeviation,
);
certified('norris-f', 'R²', 0.999993745883712, 14, () => line.rSquared);
certified('norris-g', 'the same by several terms: slope', 1.00211681802045, 13, () => pair.coefficients[1]!);
certified('norris-h', 'its standard error', 0.000429796848199937, 11, () => pair.standardErrors[1]!);

const terms: readonly (readonly [number, number])[] = [
  [-3482258.63459582, 890420.383607373],
  [15.0618722713733, 84.9149257747669],
  [-0.035819179292591, 0.0334910077722432],
  [-2.02022980381683, 0.488399681651699],
  [-1.03322686717359, 0.214274163161675],
  [-0.0511041056535807, 0.22607320006937],
  [1829.15146461355, 455.478499142212],
];
terms.forEach(([coefficient, standardError], term) => {
  certified(
    `longley-${term}`,
    `Longley, seven terms: B${term}`,
    coefficient,
    9,
    () => plane.coefficients[term]!,
  );
  certified(`longley-${term}-se`, 'its standard error', standardError, 9, () => plane.standardErrors[term]!);
});
certified(
  'longley-s',
  'Longley, residual standard deviation',
  304.854073561965,
  10,
  () => plane.residualStandardDeviation,
);
