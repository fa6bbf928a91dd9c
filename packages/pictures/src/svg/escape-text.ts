const names: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Characters that no XML may hold: controls beside tab and line ends, halves of pairs, and two that are none. */
const refused = /[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu;

/** Text from a person or a file as XML takes it, between tags and in attributes. */
export function escapeText(text: string): string {
  return text.replace(refused, '\u{FFFD}').replace(/[&<>"']/gu, (sign) => names[sign] ?? sign);
}
