/** How a made CSV log is to be written. */
export interface CsvShape {
  readonly delimiter?: string;
  readonly decimal?: '.' | ',';
  readonly newline?: string;
  readonly header?: readonly string[];
  readonly units?: readonly string[];
  readonly preamble?: readonly string[];
  readonly time?: (seconds: number) => string;
  readonly quote?: boolean;
}

/** A made drive at 10 Hz: 2 s at 27.8 m/s, then 8 m/s² to rest, 3 s at rest. Speed in km/h. */
export function madeDrive(): readonly { readonly time: number; readonly speed: number }[] {
  return Array.from({ length: 90 }, (_, i) => {
    const time = i / 10;
    return { time, speed: 3.6 * Math.max(0, Math.min(27.8, 27.8 - 8 * (time - 2))) };
  });
}

/** The made drive as CSV text in any shape. */
export function madeCsv(shape: CsvShape = {}): string {
  const { delimiter = ',', decimal = '.', newline = '\n', quote = false } = shape;
  const number = (value: number): string => value.toFixed(3).replace('.', decimal);
  const time = shape.time ?? number;
  const cell = (text: string): string => (quote ? `"${text}"` : text);
  const row = (cells: readonly string[]): string => cells.map(cell).join(delimiter);
  const lines = [
    ...(shape.preamble ?? []),
    row(shape.header ?? ['Time (s)', 'Speed (km/h)', 'Note']),
    ...(shape.units === undefined ? [] : [row(shape.units)]),
    ...madeDrive().map((sample, i) => row([time(sample.time), number(sample.speed), String(i)])),
  ];
  return lines.join(newline) + newline;
}

/** UTF-8 bytes of a text. */
export function bytesOf(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}
