import { expect, test } from 'vitest';
import { parseQuantity } from './parse-quantity.ts';
import { quantityFrom } from './quantity-from.ts';

test('a number with its unit apart reads as the text does', () => {
  expect(quantityFrom(14, 'in', 'length')).toEqual(parseQuantity('14 in', 'length'));
  expect(quantityFrom(53, '%', 'ratio')).toEqual(parseQuantity('53 %', 'ratio'));
  expect(quantityFrom(0.53, '', 'ratio')).toEqual(parseQuantity('0.53', 'ratio'));
  expect(quantityFrom(85, 'lb-ft', 'torque')).toEqual(parseQuantity('85 lbf·ft', 'torque'));
});

test('and is refused as the text is', () => {
  expect(quantityFrom(94, 'inn', 'length')).toEqual(parseQuantity('94 inn', 'length'));
  expect(quantityFrom(14, 'in', 'pressure')).toEqual(parseQuantity('14 in', 'pressure'));
  expect(quantityFrom(14, ' ', 'length')).toMatchObject({ code: 'missing-unit', found: '14' });
  expect(quantityFrom(Number.NaN, 'in', 'length')).toMatchObject({ code: 'not-finite', found: 'NaN in' });
});
