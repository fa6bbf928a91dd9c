/** Thrown where measured points cannot be used on a set-up: says where, what and what would be accepted. */
export class PedalPointsError extends Error {
  override readonly name = 'PedalPointsError';
}
