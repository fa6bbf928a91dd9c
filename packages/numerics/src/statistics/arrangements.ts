/**
 * In how many ways k of n things can be picked.
 *
 * Equation: C(n, k) = n! / (k! (n - k)!)
 *
 * @param total - n, 1
 * @param picked - k, 1
 * @returns number of ways, 1; rounded beyond 2^53
 * @example
 * arrangements(10, 5) // => 252
 */
export function arrangements(total: number, picked: number): number {
  let ways = 1;
  for (let i = 1; i <= Math.min(picked, total - picked); i += 1) {
    ways = Math.round((ways * (total - i + 1)) / i);
  }
  return ways;
}
