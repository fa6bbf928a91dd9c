import type { Speaker, StopResult } from '@standstill/workshop';
import { ink } from '../look/ink.ts';
import type { PictureLook } from '../look/picture-look.ts';
import { rulerDepth } from '../road/road-ruler.ts';
import type { Block } from '../sheet/block.ts';
import { straight } from '../svg/stroke.ts';
import { words } from '../svg/words.ts';
import { decelerationChart } from './deceleration-chart.ts';
import { developedPart } from './developed-part.ts';
import { speedChart } from './speed-chart.ts';
import { stopCourse } from './stop-course.ts';
import { stopRoad } from './stop-road.ts';
import type { StopScales } from './stop-scales.ts';
import { startWords } from './stop-words.ts';

/** px from the top of a stop's charts. */
const heights = { speed: [34, 174], deceleration: [204, 284], seconds: 300, road: 372 } as const;

/** One stop: speed and deceleration over time, and the same stop along the road. */
export function stopBlock(
  stop: StopResult,
  scales: StopScales,
  look: PictureLook & { readonly say: Speaker },
): Block {
  const course = stopCourse(stop);
  const part = developedPart(course, stop.entrySpeed_m_s);
  return {
    height: heights.road + rulerDepth + 26,
    draw: (top) => {
      const between = ([from, to]: readonly [number, number]) => ({ top: top + from, bottom: top + to });
      return [
        ...speedChart(course, part, scales, between(heights.speed), look),
        ...decelerationChart(stop, { course, part }, scales, between(heights.deceleration), look),
        ...secondsAxis(scales, top),
        ...moments(stop, scales, top),
        ...stopRoad(stop, part, scales.road, top + heights.road, look.say),
      ];
    },
  };
}

function secondsAxis({ time }: StopScales, top: number): readonly string[] {
  const y = top + heights.deceleration[1];
  const [left = 0, right = 0] = time.range();
  const marks = time.ticks(9);
  return [
    straight([left, y], [right, y]),
    ...marks.flatMap((mark, index) => [
      straight([time(mark), y], [time(mark), y + 5]),
      words(index === marks.length - 1 ? `${mark} s` : String(mark).replace('-', '−'), [time(mark), y + 18], {
        anchor: 'middle',
        soft: true,
        size: 12,
      }),
    ]),
  ];
}

/** Where the stop begins and ends, through both charts. */
function moments(stop: StopResult, { time }: StopScales, top: number): readonly string[] {
  const [, last = 0] = time.domain();
  const [from, to] = [top + heights.speed[0] - 16, top + heights.deceleration[1]];
  const rest = stop.duration_s;
  return [
    straight([time(0), from], [time(0), to], { width: 1.5 }),
    words(startWords[stop.startBy], [time(0) + 6, from + 4], { size: 12 }),
    ...(rest > last
      ? [words(`goes on to ${rest.toFixed(1)} s`, [time(last), from + 4], { anchor: 'end', size: 12 })]
      : [
          straight([time(rest), from], [time(rest), to], { color: ink.soft, dashes: '6 3' }),
          words('at rest', [time(rest) - 6, from + 4], { anchor: 'end', size: 12 }),
        ]),
  ];
}
