import type { TestPlan } from '../../results/test-plan.ts';

/** What to write down of every set, and why: what is not written down can't be told from the change afterwards. */
export function conditionsToWriteDown(): TestPlan['conditions'] {
  return [
    { what: 'Date, time, who drove, who wrote', why: 'Days and drivers differ as much as brakes do.' },
    {
      what: 'Tires: which, how old, pressure cold and warm',
      why: 'They hold the car; a change of tires passes for one of brakes.',
    },
    { what: 'Tire temperature before the first and after the last stop', why: 'Tires warm within a set.' },
    {
      what: 'Rotor temperature before each stop',
      why: 'Pads grip otherwise cold and hot; stops outside the window do not count.',
    },
    {
      what: 'Surface: which stretch, dry or damp, and its temperature',
      why: 'Grip changes with the road and with its temperature.',
    },
    { what: 'Direction of each run, out or back', why: 'Grade and wind cancel over both and not over one.' },
    { what: 'Air temperature, wind and its direction', why: 'A head wind shortens every stop.' },
    { what: 'Fuel, people and load', why: 'Mass and where it sits change distance and lock order.' },
    {
      what: 'ABS: working or not, and whether it cycled',
      why: 'With it the tires decide, without it the foot.',
    },
    {
      what: 'Logger, its rate, where it is mounted, what tells the brake',
      why: 'Another logger has another delay between brake and speed.',
    },
    {
      what: 'Anything odd in a stop, at once',
      why: 'A stop is rejected by a reason that was known before its distance.',
    },
  ];
}
