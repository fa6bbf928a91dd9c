export * from './refuse/out-of-range-error.ts';
export * from './refuse/require-range.ts';
