/** How the ranges of a report came about, said alike by every command. */
export function intervalWords(draws: number, seed: number, how = ''): string {
  return `Ranges hold 95 % of ${draws} draws${how} (seed ${seed}); each draw takes what is not sure anew within its spread.`;
}
