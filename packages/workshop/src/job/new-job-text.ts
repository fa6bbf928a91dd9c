export function newJobText(_title: string): string {
  throw new Error('not written yet');
}
