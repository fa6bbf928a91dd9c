import { CST, Lexer } from 'yaml';

const deepest = 40;

/**
 * Says whether a text nests deeper than any job does. Ten thousand opening brackets would end the whole process inside
 * a recursive parser, so this is asked of the flat token stream before anything is parsed.
 *
 * @param text - YAML or JSON
 * @returns offset of the token that goes too deep; null where none does
 */
export function tooDeep(text: string): number | null {
  const level = { flow: 0, inLine: 0 };
  let offset = 0;
  for (const lexeme of new Lexer().lex(text)) {
    count(CST.tokenType(lexeme), lexeme, level);
    if (level.flow + level.inLine > deepest) return offset;
    // The lexer marks scalars and documents with control characters that are not in the text.
    if (!/^[\u0002\u0018\u001f]$/.test(lexeme)) offset += lexeme.length;
  }
  return null;
}

function count(type: string | null, lexeme: string, level: { flow: number; inLine: number }): void {
  if (type === 'flow-seq-start' || type === 'flow-map-start') level.flow += 1;
  else if (type === 'flow-seq-end' || type === 'flow-map-end') level.flow -= 1;
  else if (type === 'newline') level.inLine = 0;
  else if (type === 'seq-item-ind' || type === 'explicit-key-ind') level.inLine += 1;
  else if (type === 'space') level.inLine += level.inLine === 0 ? Math.floor(lexeme.length / 8) : 0;
}
