export type ResultKind = 'prediction' | 'log-report' | 'log-refusal' | 'comparison' | 'comparison-refusal' | 'problem';

export function resultJsonSchema(_kind: ResultKind): Record<string, unknown> {
  throw new Error('not written yet');
}
