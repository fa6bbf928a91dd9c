/**
 * Share of the draws in which a flag is up; draws without an answer count for nothing.
 *
 * @param flags - 1, 0 or NaN
 * @param none - what to answer where no draw has an answer
 * @returns 0 to 1
 */
export function shareOf(flags: Float64Array, none = 0): number {
  const told = flags.filter((flag) => !Number.isNaN(flag));
  return told.length === 0 ? none : told.reduce((sum, flag) => sum + flag, 0) / told.length;
}
