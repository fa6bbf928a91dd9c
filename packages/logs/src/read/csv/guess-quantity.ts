import type { ChannelQuantity } from '../../channels/channel-table.ts';
import { headingWords } from './heading-words.ts';

/** What a column may be: a channel's quantity or the time base. */
export type ColumnRole = ChannelQuantity | 'time';

/** One rule: every group of `all` must be met by a word of the heading, none of `none` may stand in it. */
interface GuessRule {
  readonly role: ColumnRole;
  readonly all: readonly (readonly string[])[];
  readonly none?: readonly string[];
}

const speed = ['speed', 'velocity', 'vel', 'spd', 'vss', 'sog', 'geschwindigkeit', 'vitesse', 'velocidad'];
const brake = ['brake', 'brakes', 'braking', 'bremse', 'brk', 'frein', 'freno'];
const acceleration = ['acceleration', 'accel', 'acc', 'accelerometer', 'beschleunigung'];
const otherSpeeds = [
  'engine',
  'motor',
  'wind',
  'fan',
  'turbo',
  'shaft',
  'limit',
  'target',
  'set',
  'cruise',
  'accuracy',
  'error',
  'source',
  'type',
  'status',
  'valid',
  'vertical',
  'yaw',
  'rate',
  'pump',
  'idle',
  'trap',
  'average',
  'avg',
  'mean',
  'max',
  'maximum',
  'min',
];

/** First match wins, so the narrower rules stand first. */
const rules: readonly GuessRule[] = [
  { role: 'brake-pressure', all: [brake, ['pressure', 'press', 'druck', 'pressione', 'pression']] },
  {
    role: 'pedal-force',
    all: [
      [...brake, 'pedal'],
      ['force', 'kraft', 'effort'],
    ],
    none: ['accelerator'],
  },
  { role: 'pedal-travel', all: [brake, ['travel', 'stroke', 'position', 'pos', 'weg']] },
  {
    role: 'brake-switch',
    all: [
      brake,
      ['switch', 'light', 'lamp', 'on', 'status', 'state', 'pressed', 'flag', 'active', 'applied'],
    ],
  },
  { role: 'temperature', all: [['temp', 'temperature', 'temperatur', 'temps']] },
  { role: 'wheel-speed', all: [['wheel', 'whl', 'ws', 'rad'], speed], none: ['steering'] },
  { role: 'wheel-speed', all: [['wheelspeed', 'whlspd']] },
  {
    role: 'acceleration-forward',
    all: [acceleration, ['x', 'long', 'longitudinal', 'longitudinale', 'forward', 'fwd', 'lon']],
    none: ['pedal', 'event'],
  },
  {
    role: 'acceleration-lateral',
    all: [acceleration, ['y', 'lat', 'lateral', 'side']],
    none: ['pedal', 'event'],
  },
  { role: 'acceleration-vertical', all: [acceleration, ['z', 'vert', 'vertical']], none: ['pedal', 'event'] },
  { role: 'speed', all: [speed], none: [...otherSpeeds, 'wheel', 'whl'] },
  { role: 'latitude', all: [['lat', 'latitude', 'breite']], none: ['g', 'accel', 'acc'] },
  { role: 'longitude', all: [['lon', 'lng', 'longitude']], none: ['g', 'accel', 'acc'] },
  { role: 'altitude', all: [['alt', 'altitude', 'elevation', 'height']] },
  { role: 'heading', all: [['heading', 'course', 'cog', 'bearing']] },
  { role: 'distance', all: [['distance', 'dist', 'odometer', 'odo', 'strecke']] },
  { role: 'fix-quality', all: [['fix']] },
  {
    role: 'time',
    all: [
      [
        'time',
        'timestamp',
        'zeit',
        'uhrzeit',
        'utc',
        'elapsed',
        'clock',
        'epoch',
        'temps',
        'datetime',
        'secs',
        'seconds',
      ],
    ],
    none: ['lap', 'zone', 'offset', 'gap', 'interval', 'delta'],
  },
];

const wholeNames: Readonly<Record<string, ColumnRole>> = {
  t: 'time',
  v: 'speed',
  s: 'unknown',
  ax: 'acceleration-forward',
};

/**
 * Guesses what a column measures from its heading alone. A guess is shown to the person and can be overruled.
 *
 * @param name - the heading without its unit
 * @returns the quantity; 'unknown' where no rule fits
 * @example
 * guessQuantity('Vehicle Speed Sensor') // => 'speed'
 * guessQuantity('Accelerator Pedal Position D') // => 'unknown'
 */
export function guessQuantity(name: string): ColumnRole {
  const words = headingWords(name);
  const whole = wholeNames[words.join(' ')];
  if (whole !== undefined) return whole;
  const rule = rules.find(
    ({ all, none = [] }) =>
      all.every((group) => group.some((word) => words.includes(word))) &&
      !none.some((word) => words.includes(word)),
  );
  return rule?.role ?? 'unknown';
}

/** Whether a heading says just 'brake': a switch or a level, which only its values can tell. */
export function isBareBrake(name: string): boolean {
  const words = headingWords(name);
  return words.length > 0 && words.every((word) => brake.includes(word) || word === 'pedal');
}
