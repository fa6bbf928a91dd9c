/** s that a section begins before the first stop that counts in it may end: the longest stop and what is looked at before. */
const lead = 120;
/** s that a section goes on behind the last stop that counts in it, so that the rest is seen to be one. */
const tail = 30;
/** s; no stop ends so near to where a section is cut, so that both sections agree on whose it is. */
const apart = 5;

/** Where one section ends and the next begins. */
export interface SectionCut {
  /** s; stops that end before it belong to this section, the others to the next. */
  readonly moment: number;
  /** Index of the first row that the next section needs. */
  readonly firstRow: number;
}

/**
 * Cuts a section off: not near the end of a stop, and with an overlap in which the next section sees every stop of its
 * own whole. In a short section lead and tail are shorter, a third and a tenth of it at most.
 *
 * @param time - s, the rows of the section
 * @param ends - s, ends of the stops that were found in it
 * @returns the cut; the next section needs three quarters of the rows at most
 */
export function sectionCut(time: Float64Array, ends: readonly number[]): SectionCut {
  const last = time[time.length - 1]!;
  const span = last - time[0]!;
  const before = Math.min(lead, span / 3);
  const latest = last - Math.min(tail, span / 10);
  const step = Math.min(apart, span / 60);
  let moment = latest;
  while (latest - moment < before && ends.some((end) => Math.abs(end - moment) <= step)) moment -= step / 2;
  const first = time.findIndex((at) => at >= moment - before);
  return { moment, firstRow: Math.max(first, Math.ceil(time.length / 4)) };
}
