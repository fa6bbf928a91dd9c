/**
 * What held a stop back: the tires (antilock or a rear limit held them), brakes that ask less than the tires could give,
 * or without antilock the axle that locks first.
 */
export type StopLimit = 'tire grip' | 'brake torque' | 'front lock' | 'rear lock';
