import type { Problem } from '@standstill/workshop';

/** `car.yaml:12:9: car.wheelbase: …` as editors and terminals make it a link. */
export function problemLine(file: string, { line, column, path, message }: Problem): string {
  const place = [file, line, line === null ? null : column].filter((part) => part !== null).join(':');
  return path === '' || message.startsWith(path) ? `${place}: ${message}` : `${place}: ${path}: ${message}`;
}
