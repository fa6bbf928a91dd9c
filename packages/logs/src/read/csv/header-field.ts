/** A column's heading taken apart. */
export interface HeaderField {
  /** The part that names the quantity. */
  readonly name: string;
  /** The part that is a unit; '' where there is none. */
  readonly unit: string;
}

const bracketed = /^(.*?)\s*(?:\[([^\]]*)\]|\(([^)]*)\)|\{([^}]*)\}|<([^>]*)>)\s*$/s;
const endings: readonly RegExp[] = [
  /^(.+?)\s*[,;:/|]\s*(\S+)$/s,
  /^(.+?)\s+in\s+(\S+)$/s,
  /^(.+)\s+(\S+)$/s,
  /^(.+)[_.-]([A-Za-z]+_[A-Za-z]+2?)$/s,
  /^(.+)[_.-]([A-Za-z%°][A-Za-z0-9]*)$/s,
  /^([A-Za-z]+)(Kmh|KMH|Kph|KPH|Mph|MPH|Mps|MPS|Ms|Kn)$/s,
];
/** Single letters behind a name are rather front, right, cylinder or axis than a unit. */
const trustedLetters = new Set(['s', 'm', 'g']);

/**
 * Takes a heading apart into name and unit: 'Vehicle Speed [km/h]', 'speed_mph', 'v (m/s)', 'Speed km/h'. What stands
 * in square brackets is a unit even where nobody knows it; elsewhere it must fit what the name measures.
 *
 * @param heading - the heading as read
 * @param fits - whether a text is a unit of what a name measures
 * @returns the parts
 */
export function headerField(heading: string, fits: (name: string, unit: string) => boolean): HeaderField {
  const inBrackets = bracketed.exec(heading);
  if (inBrackets !== null && inBrackets[1] !== '') {
    const [, name = '', square, ...round] = inBrackets;
    if (square !== undefined) return { name, unit: square.trim() };
    const unit = (round.find((text) => text !== undefined) ?? '').trim();
    if (fits(name, unit)) return { name, unit };
  }
  for (const ending of endings) {
    const [, name = '', unit = ''] = ending.exec(heading) ?? [];
    if (unit === '' || (unit.length === 1 && !trustedLetters.has(unit))) continue;
    if (fits(name, unit)) return { name, unit };
  }
  return { name: heading, unit: '' };
}
