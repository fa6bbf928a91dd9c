const symbols = [
  'm',
  'mm',
  'cm',
  'km',
  'in',
  'ft',
  'kg',
  'g',
  'lb',
  's',
  'ms',
  'min',
  'h',
  'A',
  'K',
  '°C',
  '°F',
  'N',
  'kN',
  'lbf',
  'Pa',
  'kPa',
  'MPa',
  'GPa',
  'bar',
  'psi',
  'J',
  'kJ',
  'W',
  'kW',
  'Hz',
  'rad',
  '°',
  'deg',
  'kn',
  'mph',
  'km/h',
  'cc',
  'L',
  'bytes',
  '%',
  '1',
].map((symbol) => symbol.replaceAll('/', '\\/'));

const factor = `(?:${symbols.join('|')})[²³⁴⁰¹⁵⁶⁷⁸⁹⁻]*(?:\\^[-\\d.]+)?`;
const unit = new RegExp(
  `(?:^|[\\s(,;:\`])${factor}(?:[\\s·*/.]*(?:\\()?${factor}\\)?)*(?=$|[\\s,;:.)\`])`,
  'u',
);

/** Words that say what a number without a symbol is. */
const words =
  /\b(?:dimensionless|no unit|unit of|units of|unit|count|number of|how many|index|fraction|share|ratio|probability|radians?|degrees?|seconds?|meters?|samples?|rows?|runs?|draws?|seed|same as|counts?|squared|order|per )\b/i;

/** True where a text says in which unit a number is: by a symbol, by 'unit' or by what is counted. */
export function namesUnit(text) {
  return unit.test(text) || words.test(text);
}
