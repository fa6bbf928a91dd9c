/**
 * What makes a real stop longer (or shorter) than the ideal one. Each has a defined off state:
 *
 * - `build-up`: off, the held pressure is there from the first instant;
 * - `torque`: off, the brakes are as much stronger, front and rear alike, as both axles need to reach their tires' peak;
 * - `balance`: off, the brake force is shared in proportion to what each axle's tires can take at that instant;
 * - `lock control`: off, tires are held exactly at their peak, down to rest, by antilock or driver;
 * - `load sensitivity`: off, each tire keeps the peak friction of its static load;
 * - `heat`: off, pad friction stays what it is at the start.
 */
export type StopEffect = 'build-up' | 'torque' | 'balance' | 'lock control' | 'load sensitivity' | 'heat';

/** All effects, in the order in which they are shown. */
export const stopEffects: readonly StopEffect[] = [
  'build-up',
  'torque',
  'balance',
  'lock control',
  'load sensitivity',
  'heat',
];
