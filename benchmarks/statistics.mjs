// How fast two sets of twelve stops are drawn anew 10,000 times and compared in full, against a plain bootstrap with
// Math.random and an ordinary sort.
import { compareStopSets } from '@standstill/logs';
import { bootstrapDifference, permutationTest, randomStream } from '@standstill/numerics';

const rounds = 15;
const draws = 10_000;
const count = 12;

export default function statistics() {
  const stream = randomStream(1, 'benchmark');
  const before = Array.from({ length: count }, () => 45 + stream.normal());
  const after = Array.from({ length: count }, () => 43 + stream.normal());
  const plain = timed(() => plainBootstrap(after, before));
  const ours = timed((round) => bootstrapDifference(after, before, { seed: round, draws }));
  agree(plainBootstrap(after, before), bootstrapDifference(after, before, { seed: 1, draws }));
  const sampled = timed((round) => permutationTest(after, before, { seed: round }));
  const whole = timed((round) => compared(before, after, round));
  const reference = 'plain bootstrap, Math.random and sort';
  const row = (name, value) => ({ name, value, unit: 'ms', reference, ratio: value / plain });
  return [
    row('plain bootstrap of two sets of 12, 10,000 draws', plain),
    row('bootstrap of two sets of 12, 10,000 seeded draws', ours),
    row('permutation test of two sets of 12, 20,000 drawn orders', sampled),
    row('two sets of 12 stops compared in full', whole),
  ];
}

function compared(before, after, seed) {
  return compareStopSets({
    before: { name: 'before', stops: before.map(stopOf) },
    after: { name: 'after', stops: after.map(stopOf) },
    nominalSpeed: 26.8224,
    definition: 'application',
    seed,
  });
}

function stopOf(distance, index) {
  return {
    number: index + 1,
    startTime: 60 * index,
    endTime: 60 * index + 3,
    entrySpeed: 26.8224,
    applicationDistance: distance,
    correctedDistance: distance,
    gateDistance: distance,
    distanceStandardError: 0.1,
    startDelayError: 0,
    flags: [],
    temperatures: [],
  };
}

function plainBootstrap(first, second) {
  const differences = [];
  for (let draw = 0; draw < draws; draw += 1) differences.push(redrawn(first) - redrawn(second));
  differences.sort((a, b) => a - b);
  return { low: differences[Math.round(0.025 * draws)], high: differences[Math.round(0.975 * draws)] };
}

function redrawn(values) {
  let sum = 0;
  for (let i = 0; i < values.length; i += 1) sum += values[Math.floor(Math.random() * values.length)];
  return sum / values.length;
}

/** Both must answer the same question, or the ratio means nothing. */
function agree(plain, ours) {
  for (const end of ['low', 'high'])
    if (Math.abs(plain[end] - ours[end]) > 0.1)
      throw new Error(`the bootstraps differ: ${plain[end]} and ${ours[end]}`);
}

/** Median of the rounds, ms, after two that warm up. */
function timed(work) {
  const times = Array.from({ length: rounds + 2 }, (_, round) => {
    const start = performance.now();
    work(round);
    return performance.now() - start;
  });
  return times.slice(2).toSorted((a, b) => a - b)[Math.floor(rounds / 2)];
}
