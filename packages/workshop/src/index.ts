export * from './results/estimate.ts';
export * from './results/warning.ts';
export * from './results/assumed-value.ts';
export * from './results/problem.ts';
export * from './results/prediction.ts';
export * from './results/log-report.ts';
export type * from './ports/store.ts';
