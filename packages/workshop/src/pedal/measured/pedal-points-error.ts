/** Thrown where measured points cannot be used on a set-up: says where, what and what would be accepted. */
export class PedalPointsError extends Error {
  readonly code = 'pedal-points-unusable';
  override readonly name = 'PedalPointsError';
}
