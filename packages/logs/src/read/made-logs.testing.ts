import { madeDriveSpeed } from './nmea/made-nmea.testing.ts';

/** s since 1970 of 2026-03-01T12:00:00Z. */
export const madeEpoch = 1_772_366_400;

const moments = Array.from({ length: 112 }, (_, i) => i / 10);

/** m along the made drive of `madeDriveSpeed`. */
function wayAt(t: number): number {
  if (t < 3) return 20 * t;
  return t < 7 ? 60 + 20 * (t - 3) - 2.5 * (t - 3) ** 2 : 100;
}

/** Degrees north of the made drive, which goes north from 48°. */
export function madeLatitude(t: number): number {
  return 48 + (wayAt(t) / 6_371_008.8) * (180 / Math.PI);
}

/** One point of a made track; `inner` stands beside its time. */
export function trackPoint(t: number, inner = ''): string {
  const time = new Date((madeEpoch + t) * 1000).toISOString();
  return `<trkpt lat="${madeLatitude(t).toFixed(9)}" lon="11.0"><ele>500</ele><time>${time}</time>${inner}</trkpt>`;
}

/** A GPX file around points. */
export function gpxAround(points: string, version = '1.1'): string {
  const namespace = `http://www.topografix.com/GPX/${version.replace('.', '/')}`;
  return `<?xml version="1.0"?>\n<gpx version="${version}" xmlns="${namespace}"><trk><trkseg>\n${points}\n</trkseg></trk></gpx>\n`;
}

/** The made drive as a track at 10 Hz with speeds. */
export function madeGpx(speedOf = (v: number): string => `<speed>${v.toFixed(3)}</speed>`): string {
  return gpxAround(moments.map((t) => trackPoint(t, speedOf(madeDriveSpeed(t)))).join('\n'), '1.0');
}

/** A description of the made CAN drive. */
export const madeDbc = [
  'VERSION ""',
  'BO_ 176 SPEEDS: 4 ECU',
  ' SG_ SPEED : 7|16@0+ (0.01,0) [0|300] "km/h" ECU',
  ' SG_ BRAKE_PRESSED : 16|1@1+ (1,0) [0|1] "" ECU',
  `BO_ ${0x80000000 + 0x18ff0100} WHEELS: 8 ECU`,
  ' SG_ WHEEL_SPEED_L : 0|16@1+ (0.01,0) [0|300] "km/h" ECU',
  ' SG_ WHEEL_SPEED_R : 16|16@1+ (0.01,0) [0|300] "km/h" ECU',
  ' SG_ PAGE M : 32|8@1+ (1,0) [0|0] "" ECU',
  ' SG_ TEMPERATURE m1 : 40|16@1- (0.1,0) [0|0] "degC" ECU',
].join('\n');

function hex(bytes: readonly number[]): string {
  return bytes
    .map((byte) => byte.toString(16).padStart(2, '0'))
    .join('')
    .toUpperCase();
}

/** Identifier and bytes of the frames of the made drive at one moment. */
export function madeFrames(t: number): readonly { readonly id: string; readonly data: readonly number[] }[] {
  const raw = Math.round(madeDriveSpeed(t) * 360);
  const [high, low] = [raw >> 8, raw & 255];
  const isPage = Math.round(t * 10) % 2;
  return [
    { id: '0B0', data: [high, low, t >= 3 ? 1 : 0, 0] },
    { id: '18FF0100', data: [low, high, low, high, isPage, 0xe8, 0x03, 0] },
  ];
}

/** The made drive as candump logs it. */
export function madeCandump(): string {
  return moments
    .flatMap((t) =>
      madeFrames(t).map(({ id, data }) => `(${(madeEpoch + t).toFixed(6)}) can0 ${id}#${hex(data)}`),
    )
    .join('\n');
}

/** The made drive as a numbered trace. */
export function madeTrace(): string {
  const head = ';$FILEVERSION=1.1\n;$STARTTIME=46082.5\n;made\n';
  const lines = moments.flatMap((t) => madeFrames(t).map((frame) => ({ t, ...frame })));
  return (
    head +
    lines
      .map(({ t, id, data }, index) => {
        const bytes = data.map((byte) => byte.toString(16).padStart(2, '0').toUpperCase()).join(' ');
        return `${String(index + 1).padStart(6)})${(t * 1000).toFixed(1).padStart(12)}  Rx         ${id.padStart(4, '0')}  ${data.length}  ${bytes} `;
      })
      .join('\r\n')
  );
}

/** The made drive as named records. */
export function madeRecords(): string {
  const lines = moments.flatMap((t) => [
    `${(t * 1000).toFixed(0)}$GVVEHSP;1;${(madeDriveSpeed(t) * 3.6).toFixed(4)}`,
    `${(t * 1000 + 3).toFixed(0)}$GVODO,1,${(wayAt(t) * 1000).toFixed(0)}`,
    `${(t * 1000 + 5).toFixed(0)}$GVGYRO,0,-12.9,0`,
  ]);
  return ['# made', ...lines].join('\n');
}

/** The made drive as JSON objects. */
export function madeJson(): string {
  return moments
    .flatMap((t) => [
      {
        name: 'vehicle_speed',
        value: Number((madeDriveSpeed(t) * 3.6).toFixed(3)),
        timestamp: madeEpoch + t,
      },
      { name: 'brake_pedal_status', value: t >= 3, timestamp: madeEpoch + t },
      { name: 'gear', value: 'third', timestamp: madeEpoch + t + 0.01 },
    ])
    .map((event) => JSON.stringify(event))
    .join('\n');
}
