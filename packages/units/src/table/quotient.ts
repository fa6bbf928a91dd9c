import type { Unit } from './unit.ts';

/**
 * The unit that is one unit per one or more others, with the spellings of all: W/(m·K), W/m/K, W/mK, W·m⁻¹·K⁻¹.
 *
 * @param top - what is divided
 * @param bottoms - what it is divided by, in printed order
 * @returns the row of the quotient
 */
export function quotient(top: Unit, ...bottoms: readonly Unit[]): Unit {
  const symbols = bottoms.map((bottom) => bottom.symbol).join('·');
  return {
    symbol: bottoms.length > 1 ? `${top.symbol}/(${symbols})` : `${top.symbol}/${symbols}`,
    times: bottoms.reduce((times, bottom) => times * bottom.over, top.times),
    over: bottoms.reduce((over, bottom) => over * bottom.times, top.over),
    zero: 0,
    spellings: [top.symbol, ...top.spellings].flatMap((start) =>
      under(bottoms).map((end) => `${start}${end}`),
    ),
  };
}

/** Every way to write "per these", from '/(m·K)' to '·m⁻¹·K⁻¹'. */
function under(bottoms: readonly Unit[]): string[] {
  const choices = combinations(bottoms.map((bottom) => [bottom.symbol, ...bottom.spellings]));
  const ways = choices.flatMap((names) => {
    const swapped = [...names].reverse();
    const slashes = `/${names.join('/')}`;
    const inverses = names.map((name) => `·${inverse(name)}`).join('');
    return [`/${names.join('·')}`, `/${swapped.join('·')}`, slashes, `/${names.join('')}`, inverses];
  });
  return [...new Set(ways)];
}

function combinations(lists: readonly (readonly string[])[]): string[][] {
  return lists.reduce<string[][]>(
    (rows, list) => rows.flatMap((row) => list.map((name) => [...row, name])),
    [[]],
  );
}

/** 'm²' becomes 'm⁻²', 'K' becomes 'K⁻¹'. */
function inverse(name: string): string {
  const power = /^(.*?)([²³])$/u.exec(name);
  return power ? `${power[1]}⁻${power[2]}` : `${name}⁻¹`;
}
