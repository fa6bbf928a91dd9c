/** m, mean radius of the earth; along the ellipsoid a distance may differ by 0.3 % from this sphere's. */
const earthRadius = 6_371_008.8;

/**
 * How far apart two places are along the earth's surface.
 *
 * Equation: d = 2 R asin √(sin²(Δφ/2) + cos φ1 cos φ2 sin²(Δλ/2))
 * Assumes: a sphere of the mean radius.
 *
 * @param latitude1 - rad
 * @param longitude1 - rad
 * @param latitude2 - rad
 * @param longitude2 - rad
 * @returns m
 */
export function greatCircle(
  latitude1: number,
  longitude1: number,
  latitude2: number,
  longitude2: number,
): number {
  const north = Math.sin((latitude2 - latitude1) / 2);
  const east = Math.sin((longitude2 - longitude1) / 2);
  const square = north * north + Math.cos(latitude1) * Math.cos(latitude2) * east * east;
  return 2 * earthRadius * Math.asin(Math.min(1, Math.sqrt(square)));
}
