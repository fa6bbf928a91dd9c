import { ink } from '../look/ink.ts';
import { element } from './element.ts';

/** How a line looks; dashes tell lines apart in black and white. */
export interface StrokeLook {
  readonly color?: string;
  /** px; 1 where absent. */
  readonly width?: number;
  readonly dashes?: string;
  readonly fill?: string;
}

/** A path without fill, unless one is given. */
export function stroke(path: string, look: StrokeLook = {}): string {
  const { color = ink.strong, width = 1, dashes, fill = 'none' } = look;
  return element('path', {
    d: path,
    fill,
    stroke: color,
    'stroke-width': width,
    'stroke-dasharray': dashes,
    'stroke-linejoin': 'round',
  });
}

/** A straight line. */
export function straight(
  [x1, y1]: readonly [number, number],
  [x2, y2]: readonly [number, number],
  look: StrokeLook = {},
): string {
  const { color = ink.strong, width = 1, dashes } = look;
  return element('line', {
    x1,
    y1,
    x2,
    y2,
    stroke: color,
    'stroke-width': width,
    'stroke-dasharray': dashes,
  });
}
