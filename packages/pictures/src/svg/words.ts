import { ink } from '../look/ink.ts';
import { element } from './element.ts';
import { escapeText } from './escape-text.ts';

export interface WordsLook {
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly soft?: boolean;
  readonly bold?: boolean;
  /** px; 13 where absent. */
  readonly size?: number;
}

/** A line of text, its baseline at y. */
export function words(text: string, [x, y]: readonly [number, number], look: WordsLook = {}): string {
  const { anchor = 'start', soft = false, bold = false, size } = look;
  return element(
    'text',
    {
      x,
      y,
      fill: soft ? ink.soft : ink.strong,
      'text-anchor': anchor === 'start' ? undefined : anchor,
      'font-weight': bold ? 'bold' : undefined,
      'font-size': size,
    },
    escapeText(text),
  );
}
