/** Prints one part of the page alone: the style sheet hides the others while the mark stands on the document. */
export function printPart(part: string): void {
  const root = document.documentElement;
  root.dataset['print'] = part;
  const clear = () => {
    delete root.dataset['print'];
    window.removeEventListener('afterprint', clear);
  };
  window.addEventListener('afterprint', clear);
  window.print();
}
