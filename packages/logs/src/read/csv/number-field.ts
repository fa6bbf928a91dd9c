const gapWords = new Set(['', 'na', 'n/a', '#n/a', 'nan', 'null', 'none', '-', '--', '---', 'inf', '-inf']);
const grouped = { point: /^[+-]?\d{1,3}(,\d{3})+\.\d+$/, comma: /^[+-]?\d{1,3}(\.\d{3})+,\d+$/ };
const plain = /^[+-]?(\d+(\.\d*)?|\.\d+)([eE][+-]?\d+)?$/;
const powers = Float64Array.from({ length: 23 }, (_, exponent) => 10 ** exponent);

/**
 * The number in a field, read as strictly as a measured value deserves: no prefix of a word, no hexadecimal, no
 * guess: '1,234' in a file with decimal points may be one or a thousand, so it is neither. Plain decimals take a short way that gives the same bits as the language's own reading: up to 15 digits
 * over an exact power of ten round correctly in one division.
 *
 * @param text - the field
 * @param decimalComma - whether the file writes 1,5 for one and a half
 * @returns the number; NaN where the field holds none
 * @example
 * numberField('12,50', true) // => 12.5
 * numberField('1e3', false) // => 1000
 */
export function numberField(text: string, decimalComma: boolean): number {
  const length = text.length;
  const mark = decimalComma ? 44 : 46;
  let at = 0;
  const first = text.charCodeAt(0);
  if (first === 45 || first === 43) at = 1;
  let digits = 0;
  let mantissa = 0;
  let decimals = -1;
  for (; at < length; at += 1) {
    const code = text.charCodeAt(at);
    if (code >= 48 && code <= 57) {
      mantissa = mantissa * 10 + (code - 48);
      digits += 1;
      if (decimals >= 0) decimals += 1;
    } else if (code === mark && decimals < 0) decimals = 0;
    else return unusualNumber(text, decimalComma);
  }
  if (digits === 0 || digits > 15) return unusualNumber(text, decimalComma);
  const size = decimals > 0 ? mantissa / powers[decimals]! : mantissa;
  return first === 45 ? -size : size;
}

/** Whether a field says that there is no value. */
export function isGapWord(text: string): boolean {
  const first = text.charCodeAt(0);
  if (first >= 48 && first <= 57) return false;
  return text === '' || gapWords.has(text.trim().toLowerCase());
}

function unusualNumber(text: string, decimalComma: boolean): number {
  const trimmed = text.trim().replace('\u2212', '-');
  if (trimmed === '') return NaN;
  if ((decimalComma ? grouped.comma : grouped.point).test(trimmed))
    return Number(decimalComma ? trimmed.replaceAll('.', '').replace(',', '.') : trimmed.replaceAll(',', ''));
  if (!decimalComma) return plainNumber(trimmed);
  return trimmed.includes('.') ? NaN : plainNumber(trimmed.replace(',', '.'));
}

function plainNumber(text: string): number {
  if (!plain.test(text)) return NaN;
  const value = Number(text);
  return Number.isFinite(value) ? value : NaN;
}
