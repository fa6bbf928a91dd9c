import fc from 'fast-check';
import { drumClasses } from '../library/drum-classes.ts';
import type { DrumBrake } from '../set-up/drum-brake.ts';
import { exampleDrum } from '../set-up/example-set-up.ts';
import { anyHose } from '../set-up/any-set-up.testing.ts';
import { evenly } from '../set-up/evenly.testing.ts';

/** Drum brakes over a wide range, none of them impossible and none that grabs. */
export const anyDrum: fc.Arbitrary<DrumBrake> = fc
  .record({
    drumClass: fc.constantFrom(drumClasses.simplex, drumClasses.duplex, drumClasses.duoServo),
    level: evenly(0.7, 1.4),
    radius: evenly(0.08, 0.18),
    width: evenly(0.025, 0.08),
    wallThickness: evenly(0.005, 0.015),
    cylinderBore: evenly(0.015, 0.03),
    pushOutPressure: evenly(0, 1e6),
    efficiency: evenly(0.85, 1),
    shoeClearance: evenly(0, 0.0006),
    compressibility: evenly(0, 4e-11),
    frictions: fc.tuple(evenly(0.2, 0.48), evenly(0.2, 0.48), evenly(0.15, 0.48)),
    hose: anyHose,
  })
  .map(({ drumClass, level, frictions, ...rest }) => ({
    ...exampleDrum,
    ...rest,
    arrangement: drumClass.arrangement,
    shoes: drumClass.shoes,
    brakeFactor: level * drumClass.brakeFactor.value,
    liningArea: 1.9 * rest.radius * rest.width,
    frictionTemperatures: [20, 150, 400],
    frictions,
  }));
