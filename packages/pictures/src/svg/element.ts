import { escapeText } from './escape-text.ts';

export type Attributes = Readonly<Record<string, string | number | undefined>>;

/**
 * One element as text. Numbers are rounded to a hundredth of a pixel, so that the same picture has the same bytes
 * wherever it is drawn.
 */
export function element(name: string, attributes: Attributes, ...inside: readonly string[]): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(
      ([key, value]) =>
        ` ${key}="${typeof value === 'number' ? coordinate(value) : escapeText(value ?? '')}"`,
    )
    .join('');
  return inside.length === 0 ? `<${name}${written}/>` : `<${name}${written}>${inside.join('')}</${name}>`;
}

/** Never an exponent and never a minus before zero. */
function coordinate(value: number): string {
  const rounded = Math.round(value * 100) / 100;
  return String(rounded === 0 ? 0 : rounded);
}
