import pc from 'picocolors';
import { expect, it } from 'vitest';
import { textTable } from './text-table.ts';

const colors = pc.createColors(false);
const head = ['Stop', 'from', 'distance'];
const rows = [
  ['1', '60 mph', '150 ft'],
  ['2', '61 mph', '155 ft'],
];

it('is a table where it fits, to the last character', () => {
  const table = textTable(head, rows, { colors, width: 22 });
  expect(table).toBe('Stop  from    distance\n1     60 mph  150 ft\n2     61 mph  155 ft');
  expect(textTable(head, rows, { colors, width: 21 })).not.toBe(table);
});

it('becomes one block for each row', () => {
  expect(textTable(head, rows, { colors, width: 20 }, 'rows')).toBe(
    'Stop 1\n  from 60 mph; distance 150 ft\nStop 2\n  from 61 mph; distance 155 ft',
  );
});

it('becomes one block for each column under the labels of the rows', () => {
  const figures = [
    ['Distance', '150 ft', '140 ft'],
    ['Time', '3 s', '2.9 s'],
  ];
  expect(textTable(['', 'As found', 'Front kit'], figures, { colors, width: 20 })).toBe(
    'As found\n  Distance: 150 ft\n  Time: 3 s\n\nFront kit\n  Distance: 140 ft\n  Time: 2.9 s',
  );
});
