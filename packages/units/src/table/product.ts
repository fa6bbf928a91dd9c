import type { Unit } from './unit.ts';

/**
 * The unit that is one unit times another, with every spelling of both, in both orders, joined or run together.
 *
 * @param first - printed first
 * @param second - printed second
 * @param others - spellings that do not follow from the parts
 * @returns the row of the product
 */
export function product(first: Unit, second: Unit, ...others: string[]): Unit {
  const spellings: string[] = [];
  for (const a of [first.symbol, ...first.spellings]) {
    for (const b of [second.symbol, ...second.spellings])
      spellings.push(`${a}·${b}`, `${b}·${a}`, `${a}${b}`);
  }
  return {
    symbol: `${first.symbol}·${second.symbol}`,
    times: first.times * second.times,
    over: first.over * second.over,
    zero: 0,
    spellings: [...spellings, ...others],
  };
}
