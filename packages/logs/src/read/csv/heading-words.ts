/**
 * The words of a heading in lower case: split at blanks, marks and the humps of a camel ('wheelSpeedFL' gives
 * wheel, speed, fl).
 */
export function headingWords(name: string): readonly string[] {
  return name
    .replace(/([a-z0-9])([A-Z])/g, '$1 $2')
    .replace(/([A-Z])([A-Z][a-z])/g, '$1 $2')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '');
}
