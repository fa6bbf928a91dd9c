import { threadStressArea, type MetricThread } from './thread-stress-area.ts';

/** Property classes of steel bolts, as marked on their heads. */
export type PropertyClass = '4.6' | '5.8' | '8.8' | '10.9' | '12.9';

/** S_p, Pa, up to a diameter of 16 mm and above it. */
const proofStresses: Readonly<Record<PropertyClass, readonly [number, number]>> = {
  '4.6': [225e6, 225e6],
  '5.8': [380e6, 380e6],
  '8.8': [580e6, 600e6],
  '10.9': [830e6, 830e6],
  '12.9': [970e6, 970e6],
};

export interface ProofLoadInput {
  readonly thread: MetricThread;
  readonly propertyClass: PropertyClass;
}

/**
 * Answers the load that a bolt must bear without staying longer.
 *
 * Equation: F_p = S_p A_s; S_p 580 MPa for class 8.8 up to 16 mm and 600 MPa above, 830 MPa for 10.9, 970 MPa for 12.9.
 * Assumes: a whole thread in engagement, in a nut or hole of matching strength.
 * Valid: as `threadStressArea`.
 *
 * @param input - thread with d and P, m; property class
 * @returns F_p, N
 * @throws OutOfRangeError where an input cannot be
 * Source: [iso-898-1]
 * @example
 * proofLoad({ thread: { diameter: 0.01, pitch: 0.0015 }, propertyClass: '8.8' }) // => 33633.9
 */
export function proofLoad({ thread, propertyClass }: ProofLoadInput): number {
  const [thin, thick] = proofStresses[propertyClass];
  return (thread.diameter <= 0.016 ? thin : thick) * threadStressArea(thread);
}
