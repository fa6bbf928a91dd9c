import { stopKinds, type StopKind } from './drawn-stops.testing.ts';
import { errorSizes, quickErrors } from './quick-error.testing.ts';

/** The seed of the published table. Nothing has been tuned on it; whoever tunes on it takes another one here. */
export const tableSeed = 20_261_130;

/** The kinds whose equal shares make up the thousand; the driver's comes on top. */
export const sharedKinds = stopKinds.filter((kind) => kind !== 'driver at the limit');

export interface ErrorTable {
  readonly byKind: Readonly<Record<StopKind, readonly number[]>>;
  /** Of the shared kinds together. */
  readonly all: readonly number[];
}

export function errorTable(perKind: number): ErrorTable {
  const pairs = stopKinds.map((kind) => [kind, quickErrors(kind, perKind, tableSeed)] as const);
  const byKind = Object.fromEntries(pairs) as Record<StopKind, readonly number[]>;
  return { byKind, all: sharedKinds.flatMap((kind) => byKind[kind]) };
}

function percent(share: number): string {
  return (100 * share).toFixed(2);
}

function row(name: string, errors: readonly number[]): string {
  const { median, high, greatest, signed } = errorSizes(errors);
  const cells = [name, errors.length, percent(median), percent(high), percent(greatest), percent(signed)];
  return `| ${cells.join(' | ')} |`;
}

/** The page docs/quick-against-full.md. */
export function errorPage({ byKind, all }: ErrorTable): string {
  return `# The quick stop against the full stop

How far the distance of \`quickStop\` is from that of \`fullStop\` on the same car, road and foot, in percent of the full one.
The cars are invented and drawn from the ranges below by a seed (${tableSeed}) that nothing was tuned on.
\`npm run test:long\` draws them again and fails where a figure has moved by more than 0.1; with \`STANDSTILL_WRITE=1\` in the
environment it writes this page instead.

| kind of stop | cars | median size | 95th percentile | greatest | median with its sign |
| --- | --- | --- | --- | --- | --- |
${stopKinds.map((kind) => row(kind, byKind[kind])).join('\n')}
${row(`all but the driver`, all)}

Plus is a quick stop that is too long. Wanted: median under 1.5, 95th percentile under 4, over all and in every kind.

## Where the antilock's efficiency comes from

The full stop has none: its control cycles, and what that uses of the peak comes out. The quick stop is given
\`antilockEfficiency(road)\`, which was fitted ONCE, so that half of the quick stops are longer than the full ones and half
shorter, on 400 other cars on dry roads (0.956) and 400 on wet ones (0.961), drawn from the same ranges by the seed 2024.
The full stop's control knows the car's speed exactly and the road is even; a real one may well use less.

## What is left

- Locked: the quick stop lets a wheel slide the moment that its brake asks for more than the peak; in the full stop it has to
  slow down first, through the peak, and which axle goes first can turn out the other way.
- Driver at the limit: the full stop's driver feels four wheels whose load arrives with the pitch.
- Antilock: one efficiency for all cars; each car's own lies about 0.02 around it.
- One full stop with antilock is a little by chance (about 0.1 %), see \`meanFullStop\`; the table has single ones.

## Ranges

Each figure evenly between its bounds, as \`drawStop\` has them: mass 700 to 2300 kg, wheelbase 2.2 to 3 m, center of gravity
0.42 to 0.65 m high, 42 to 64 % of the weight in front and 47 to 53 % on the left, drag area 0.45 to 0.95 m², lift areas -0.3
to 0.15 m², wheel inertia 0.7 to 1.8 kg m², clutch out or driveline 0.5 to 4 kg m² and engine drag 10 to 80 N m, pitch 1.1
to 2.2 Hz with damping 0.2 to 0.5. Tires: peak friction 0.85 to 1.25, load exponent 0.04 to 0.18, slide over peak 0.7 to 0.88,
peak slip 0.07 to 0.15, stiffness times peak slip 2.1 to 3, relaxation 0.1 to 0.35 m. Brakes 0.9 to 1.15 times a size
that goes with the mass; no booster, vacuum or hydraulic; proportioning valve or none. Speed 14 to 45 m/s, ramp 0.08 to
0.5 s, grade -4 to 4 %, rotors 20 to 150 °C. Dry: surface factor 0.9 to 1.05. Wet: 0.6 to 0.85, or 0.1 to 1 mm of water.
Torque-limited and fading: 40 to 90 % of what the first axle could take; all others 120 to 220 %. Fading: the front rotors start at
250 to 480 °C, on pads that have lost 10 to 30 % of their friction at 450 °C and 35 to 55 % at 700 °C.
`;
}
