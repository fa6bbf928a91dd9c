/**
 * The word of a list that a typing slip most likely meant.
 *
 * @param word - what was typed
 * @param words - what could have been meant
 * @returns the nearest word; null where none is near enough to be worth a suggestion
 */
export function nearestWord(word: string, words: readonly string[]): string | null {
  const typed = flat(word);
  let best: string | null = null;
  let bestDistance = Math.max(2, Math.floor(typed.length / 3)) + 1;
  for (const candidate of words) {
    const distance = editDistance(typed, flat(candidate));
    if (distance < bestDistance && distance < Math.max(flat(candidate).length, 1)) {
      best = candidate;
      bestDistance = distance;
    }
  }
  return best;
}

function flat(word: string): string {
  return word.toLowerCase().replace(/[\s_-]/g, '');
}

/** Insertions, deletions, changes and swaps of neighbors that turn one word into the other. */
function editDistance(from: string, to: string): number {
  if (Math.abs(from.length - to.length) > 12) return Infinity;
  let beforeLast: number[] = [];
  let last = Array.from({ length: to.length + 1 }, (_, index) => index);
  for (let i = 1; i <= from.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= to.length; j += 1) {
      const change = from[i - 1] === to[j - 1] ? 0 : 1;
      let cost = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + change);
      const swapped = i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1];
      if (swapped) cost = Math.min(cost, (beforeLast[j - 2] ?? 0) + 1);
      row.push(cost);
    }
    beforeLast = last;
    last = row;
  }
  return last[to.length] ?? Infinity;
}
