import type { RandomStream } from '@standstill/numerics';

/** Pieces that logs break on: signs of every format, numbers that are too much, ends of lines. */
const pieces = [
  '"', '\n', '\r', '\r\n', ',', ';', '.', ':', '-', '0', '$', '*', '#', '##', '(', ')', '<', '>', '&', '</', '/>',
  '{', '}', '[', ']', '1e308', '-1', 'NaN', '99999999999999999999', '\u0000', '\uFEFF', '\uFFFD', '∞', ' ', 'V', 'R',
]; // prettier-ignore

type Damage = (text: string, random: RandomStream, other: string) => string;

function at(text: string, random: RandomStream): number {
  return random.below(Math.max(1, text.length));
}

/** Damage to characters, as of a bad line or a bad disk. */
const toCharacters: readonly Damage[] = [
  (text, random) => {
    const place = at(text, random);
    return text.slice(0, place) + String.fromCharCode(random.below(256)) + text.slice(place + 1);
  },
  (text, random) => {
    const place = at(text, random);
    return text.slice(0, place) + pieces[random.below(pieces.length)]! + text.slice(place + random.below(2));
  },
  (text, random) => {
    const place = at(text, random);
    return text.slice(0, place) + text.slice(place + random.below(60));
  },
  (text, random) => {
    const place = at(text, random);
    return text.slice(0, place + random.below(60)) + text.slice(place);
  },
  (text, random) => text.slice(0, at(text, random)),
  (text, random, other) => {
    const place = at(text, random);
    const from = at(other, random);
    return text.slice(0, place) + other.slice(from, from + random.below(200)) + text.slice(place);
  },
];

/** Damage to lines, as of a logger that stalls or a person who edits. */
const toLines: readonly Damage[] = [
  (text, random) => {
    const lines = text.split('\n');
    lines.splice(random.below(lines.length), 1 + random.below(5));
    return lines.join('\n');
  },
  (text, random) => {
    const lines = text.split('\n');
    const [from, to] = [random.below(lines.length), random.below(lines.length)];
    lines.splice(to, 0, ...lines.splice(from, 1 + random.below(3)));
    return lines.join('\n');
  },
  (text, random) => {
    const lines = text.split('\n');
    const place = random.below(lines.length);
    lines.splice(place, 0, lines[place]!);
    return lines.join('\n');
  },
  (text, random) => {
    const lines = text.split('\n');
    const place = random.below(Math.max(1, lines.length - 1));
    lines.splice(place, 2, lines.slice(place, place + 2).join(''));
    return lines.join('\n');
  },
];

/**
 * Damages a log in one to eight ways.
 *
 * @param text - the whole log
 * @param random - where the damage comes from
 * @param other - a log of another format, of which pieces may get in
 * @returns the damaged log
 */
export function damaged(text: string, random: RandomStream, other: string): string {
  let changed = text;
  for (let change = 1 + random.below(8); change > 0; change -= 1) {
    const kinds = random.below(3) === 0 ? toLines : toCharacters;
    changed = kinds[random.below(kinds.length)]!(changed, random, other);
  }
  return changed;
}
