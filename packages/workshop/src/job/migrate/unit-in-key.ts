/**
 * Units as version 1 wrote them at the end of a key, and as version 2 writes them in the value: `mass_lb: 2450` became
 * `mass: "2450 lb"`.
 */
const unitSuffixes: Readonly<Record<string, string>> = {
  lb: 'lb',
  kg: 'kg',
  in: 'in',
  ft: 'ft',
  mm: 'mm',
  m: 'm',
  in2: 'in²',
  cm2: 'cm²',
  m2: 'm²',
  cm3: 'cm³',
  mph: 'mph',
  km_h: 'km/h',
  m_s: 'm/s',
  lbf: 'lbf',
  N: 'N',
  psi: 'psi',
  bar: 'bar',
  F: '°F',
  C: '°C',
  s: 's',
  percent: '%',
};

/**
 * Splits a version 1 key into its name and unit.
 *
 * @param key - such as `wheelbase_in`
 * @returns name and unit; null where the key carries no unit
 */
export function unitInKey(key: string): { readonly name: string; readonly unit: string } | null {
  const cut = key.indexOf('_');
  if (cut <= 0) return null;
  const unit = unitSuffixes[key.slice(cut + 1)];
  return unit === undefined ? null : { name: key.slice(0, cut), unit };
}
