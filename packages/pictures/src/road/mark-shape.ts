import { ink } from '../look/ink.ts';
import { element } from '../svg/element.ts';
import { stroke } from '../svg/stroke.ts';

/** Round: counts by its flags. Square: a person decided. Crossed: does not count. Diamond: not measured but computed. */
export type MarkShape = 'dot' | 'square' | 'cross' | 'crossed-square' | 'diamond';

export interface MarkLook {
  readonly shape: MarkShape;
  readonly filled: boolean;
}

/** px from the middle of a mark to its edge. */
export const markRadius = 5;

/** One run or figure as a mark; open or filled tells two sets apart. */
export function mark({ shape, filled }: MarkLook, [x, y]: readonly [number, number]): string {
  const look = {
    stroke: filled ? ink.accent : ink.strong,
    'stroke-width': 1.5,
    fill: filled ? ink.accent : ink.paper,
  };
  const r = markRadius;
  if (shape === 'dot') return element('circle', { cx: x, cy: y, r, ...look });
  const box = { x: x - r, y: y - r, width: 2 * r, height: 2 * r };
  if (shape === 'square') return element('rect', { ...box, ...look });
  const at = `M${(x - r).toFixed(2)} ${(y - r).toFixed(2)}`;
  const crossed = stroke(`${at}l${2 * r} ${2 * r}m0 ${-2 * r}l${-2 * r} ${2 * r}`, {
    width: 1.5,
    color: look.stroke,
  });
  if (shape === 'cross') return crossed;
  if (shape === 'crossed-square')
    return element('g', {}, element('rect', { ...box, ...look, fill: ink.paper }), crossed);
  const wide = r + 1.5;
  const path = `M${(x - wide).toFixed(2)} ${y.toFixed(2)}l${wide} ${-wide}l${wide} ${wide}l${-wide} ${wide}Z`;
  return element('path', { d: path, ...look });
}
