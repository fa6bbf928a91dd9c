import { element } from '../svg/element.ts';
import { escapeText } from '../svg/escape-text.ts';
import { ink } from '../look/ink.ts';
import type { Block } from './block.ts';
import { sheetSize } from './sheet-size.ts';

export interface SheetText {
  /** What the picture is of. */
  readonly title: string;
  /** The picture in words, with its figures, for those who do not see it. */
  readonly description: string;
}

/** Blocks one below the other on white paper, with title and text twin, as one SVG document. */
export function sheet({ title, description }: SheetText, blocks: readonly Block[]): string {
  const { width, margin } = sheetSize;
  let top: number = margin;
  const drawn = blocks.flatMap((block) => {
    const parts = block.draw(top);
    top += block.height;
    return parts;
  });
  const height = top + margin;
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width,
      height,
      viewBox: `0 0 ${width} ${Math.round(height * 100) / 100}`,
      role: 'img',
      'font-family': 'sans-serif',
      'font-size': 13,
    },
    element('title', {}, escapeText(title)),
    element('desc', {}, escapeText(description)),
    element('rect', { width: '100%', height: '100%', fill: ink.paper }),
    ...drawn.map((part) => `\n${part}`),
    '\n',
  );
}
