import { fluidClasses } from '@standstill/braking';
import { toUnit } from '@standstill/units';
import { published } from '../published.ts';

/** Least boiling points as printed in °F beside the °C that our classes hold. */
for (const [letters, name, dry, wet] of [
  ['ab', 'dot3', 401, 284],
  ['cd', 'dot4', 446, 311],
  ['ef', 'dot51', 500, 356],
] as const) {
  const { title, dryBoilingPoint, wetBoilingPoint } = fluidClasses[name];
  for (const [letter, state, printed, temperature] of [
    [letters[0], 'dry', dry, dryBoilingPoint.value],
    [letters[1], 'wet', wet, wetBoilingPoint.value],
  ] as const)
    published(
      {
        id: `5-10${letter}`,
        source: 'fmvss-116',
        quantity: `least ${state} boiling point of ${title}`,
        printed,
        unit: '°F',
        tolerance: 0.5,
        basis: 'R',
        evidence: 'transcription',
      },
      () => toUnit(temperature, '°F', 'temperature'),
    );
}
