/** A sentence with its checksum. */
export function sentence(body: string): string {
  let sum = 0;
  for (let i = 0; i < body.length; i += 1) sum ^= body.charCodeAt(i);
  return `$${body}*${sum.toString(16).toUpperCase().padStart(2, '0')}`;
}

function two(value: number): string {
  return String(Math.floor(value)).padStart(2, '0');
}

/** hhmmss.ss of seconds since midnight. */
export function nmeaTime(seconds: number): string {
  const at = seconds % 86_400;
  return two(at / 3600) + two((at / 60) % 60) + (at % 60).toFixed(2).padStart(5, '0');
}

/** RMC with a speed in m/s. */
export function rmc(seconds: number, speed: number, status = 'A', date = '010326', talker = 'GP'): string {
  const knots = (speed / 0.5144444444).toFixed(3);
  return sentence(
    `${talker}RMC,${nmeaTime(seconds)},${status},4800.0000,N,01100.0000,E,${knots},90.0,${date},,,A`,
  );
}

/** A made stop at 5 Hz: 3 s at 20 m/s, 5 m/s² to rest, 4 s at rest. */
export function madeDriveSpeed(seconds: number): number {
  return Math.max(0, Math.min(20, 20 - 5 * (seconds - 3)));
}

/** The made stop as RMC sentences from a time of day on. */
export function madeNmea(from: number, of: (seconds: number, speed: number) => string = rmc): string[] {
  return Array.from({ length: 56 }, (_, i) => of(from + i / 5, madeDriveSpeed(i / 5)));
}
