import { wrenchTolerance } from '@standstill/braking';
import { published } from '../published.ts';

published(
  {
    id: '6-18',
    source: 'iso-6789',
    quantity: 'how far a setting wrench of class A may be off at 110 N·m',
    printed: 4.4,
    unit: 'N·m',
    tolerance: 0.05,
    basis: 'R',
    evidence: 'transcription',
    note: 'Our code holds the 4 % itself.',
  },
  () => wrenchTolerance(110),
);
