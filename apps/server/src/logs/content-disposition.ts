/**
 * Says that a browser is to save an answer as a file (RFC 6266), with a plain name for old programs beside the real
 * one.
 *
 * @param name - name of the file, without halves of surrogate pairs
 * @returns the header's value
 */
export function contentDisposition(name: string): string {
  const plain = name.replace(/[^\x20-\x7e]|["\\%]/g, '_');
  const full = encodeURIComponent(name).replace(/['()*]/g, escapeMark);
  return `attachment; filename="${plain}"; filename*=UTF-8''${full}`;
}

function escapeMark(mark: string): string {
  return `%${mark.charCodeAt(0).toString(16).toUpperCase()}`;
}
