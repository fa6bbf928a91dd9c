/** `13 %`; a small share that is not nothing is `under 1 %`. */
export function percent(share: number): string {
  const rounded = Math.round(100 * share);
  return rounded === 0 && share > 0 ? 'under 1 %' : `${rounded} %`;
}
