import { requireRange } from '@standstill/numerics';

/**
 * Answers how much of a total each of its causes carries, whatever the order in which they are put in: the Shapley value.
 *
 * Equation: φ_i = Σ over sets S without i of |S|! (n − |S| − 1)! / n! · (v(S ∪ i) − v(S)).
 * Assumes: `value` gives the same answer for the same set; each of the 2^n sets is asked for once.
 * Valid: 0 to 16 players.
 *
 * @param players - n, how many
 * @param value - v: total with the players whose bits are set in its argument, any unit
 * @returns one share per player, in the unit of v; they sum to v(all) − v(none); negative ones are real
 * @throws OutOfRangeError where n is outside
 * Source: [shapley-1953]
 * @example
 * shapley(2, (set) => (set === 3 ? 10 : set === 1 ? 4 : 0))[0] // => 7
 */
export function shapley(players: number, value: (set: number) => number): Float64Array {
  const count = requireRange('number of players', players, '', 0, 16);
  const values = new Float64Array(2 ** count);
  for (let set = 0; set < values.length; set += 1) values[set] = value(set);
  const weights = orderWeights(count);
  const shares = new Float64Array(count);
  for (let player = 0; player < count; player += 1) {
    const bit = 1 << player;
    let share = 0;
    for (let set = 0; set < values.length; set += 1) {
      if ((set & bit) === 0) share += weights[members(set)]! * (values[set | bit]! - values[set]!);
    }
    shares[player] = share;
  }
  return shares;
}

/** |S|! (n − |S| − 1)! / n! for |S| from 0 to n − 1. */
function orderWeights(count: number): Float64Array {
  const weights = new Float64Array(Math.max(1, count));
  weights[0] = 1 / Math.max(1, count);
  for (let size = 1; size < count; size += 1) weights[size] = (weights[size - 1]! * size) / (count - size);
  return weights;
}

function members(set: number): number {
  let rest = set;
  let count = 0;
  while (rest !== 0) {
    rest &= rest - 1;
    count += 1;
  }
  return count;
}
