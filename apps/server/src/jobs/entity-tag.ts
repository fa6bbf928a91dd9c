import { RequestRefusal } from '../problems/request-refusal.ts';

/**
 * @param version - version of a job
 * @returns its entity tag, e.g. `"3"`
 */
export function entityTag(version: number): string {
  return `"${version}"`;
}

/**
 * Reads which version the author of a change saw (RFC 9110, If-Match). `*` names none, so it is no answer.
 *
 * @param header - the If-Match header
 * @returns the version
 * @throws RequestRefusal where it is missing or not one version
 */
export function versionFromIfMatch(header: string | undefined): number {
  if (header === undefined || header.trim() === '*')
    throw new RequestRefusal(
      'version-required',
      'Send the version that you changed as If-Match, e.g. If-Match: "3".',
    );
  const version = /^\s*"(\d{1,15})"\s*$/.exec(header)?.[1];
  if (version === undefined)
    throw new RequestRefusal(
      'version-not-understood',
      'If-Match takes one version in quotes, as the ETag gave it: "3".',
    );
  return Number(version);
}

/**
 * Answers whether the caller has what stands (RFC 9110, If-None-Match, compared weakly).
 *
 * @param header - the If-None-Match header
 * @param tag - entity tag of what stands
 * @returns whether nothing needs to be sent
 */
export function isAlreadyKnown(header: string | undefined, tag: string): boolean {
  if (header === undefined) return false;
  const known = new Set(header.split(',').map((each) => each.trim().replace(/^W\//, '')));
  return known.has('*') || known.has(tag);
}
