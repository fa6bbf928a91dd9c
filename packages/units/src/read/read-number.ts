/** A number at the start of a text and what follows it, or why there is none. */
export type ReadNumber =
  | { readonly ok: true; readonly number: number; readonly rest: string }
  | { readonly ok: false; readonly code: 'bad-number' | 'ambiguous-number' | 'not-finite' };

const fraction = /^(?:(\d+)(?: |-))?(\d+)\/(\d+)(?![\d.,/])/u;
const spacedThousands = /^\d{1,3}(?: \d{3})+(?:[.,]\d+)?(?![\d.,/])/u;
const decimal = /^(?:\d[\d.,]*|[.,]\d+)(?:[eE][+-]?\d+)?/u;

/**
 * Reads the number at the start of a text the way people write it.
 *
 * Reads 14, 0.5, 0,5, .5, 5/8, 1 1/2, 1-1/2, 1½, 1,300 (thousands: one to three digits not starting with 0, then
 * threes), 1 300, 1,300.5, 1.5e-3, −3. Refuses 1.300,5 and 1,30,000 as ambiguous.
 *
 * @param text - starts with the number, perhaps with a sign
 * @returns the number and the rest of the text, or the code of the trouble
 */
export function readNumber(text: string): ReadNumber {
  const plain = plainText(text);
  const sign = /^[+-] ?/u.exec(plain)?.[0] ?? '';
  const body = plain.slice(sign.length);
  const read = readFraction(body) ?? readSpacedThousands(body) ?? readDecimal(body);
  if (!read.ok) return read;
  if (!Number.isFinite(read.number)) return { ok: false, code: 'not-finite' };
  if (/^ ?[\d.,]/u.test(read.rest) && !/^ ?1\//u.test(read.rest)) return { ok: false, code: 'bad-number' };
  return { ...read, number: sign.startsWith('-') ? -read.number : read.number };
}

/** One kind of space, one kind of minus, fractions spelled out ('1½' is '1 1/2'). */
function plainText(text: string): string {
  return text
    .replace(/[¼-¾⅐-⅞]/gu, (sign) => ` ${sign.normalize('NFKC')}`)
    .replace(/\u2044/gu, '/')
    .replace(/[\s\u00a0\u2007\u2009\u202f]+/gu, ' ')
    .replace(/^ *[\u2010-\u2015\u2212]/u, '-')
    .trim();
}

function readFraction(text: string): ReadNumber | undefined {
  const found = fraction.exec(text);
  if (!found) return undefined;
  const [all, whole, top, bottom] = found;
  if (Number(bottom) === 0) return { ok: false, code: 'bad-number' };
  const number = Number(whole ?? 0) + Number(top) / Number(bottom);
  return { ok: true, number, rest: text.slice(all.length) };
}

function readSpacedThousands(text: string): ReadNumber | undefined {
  const found = spacedThousands.exec(text)?.[0];
  if (found === undefined) return undefined;
  return {
    ok: true,
    number: Number(found.replaceAll(' ', '').replace(',', '.')),
    rest: text.slice(found.length),
  };
}

function readDecimal(text: string): ReadNumber {
  const found = decimal.exec(text)?.[0];
  if (found === undefined) return { ok: false, code: 'bad-number' };
  const [digits = '', exponent] = found.split(/[eE]/u);
  const plain = withDecimalPoint(digits);
  if (plain === undefined) {
    const several = /[.,].*[.,]/u.test(digits);
    return { ok: false, code: several ? 'ambiguous-number' : 'bad-number' };
  }
  const number = Number(exponent === undefined ? plain : `${plain}e${exponent}`);
  return { ok: true, number, rest: text.slice(found.length) };
}

/** The digits with thousands commas gone and a point for a decimal comma; undefined where that is a guess. */
function withDecimalPoint(digits: string): string | undefined {
  if (/^(?:\d+\.?\d*|\.\d+)$/u.test(digits)) return digits;
  if (/^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d*)?$/u.test(digits)) return digits.replaceAll(',', '');
  if (/^\d*,\d+$/u.test(digits)) return digits.replace(',', '.');
  return undefined;
}
