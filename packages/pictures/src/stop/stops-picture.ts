import type { LogReport } from '@standstill/workshop';
import { speaker } from '@standstill/workshop';
import type { PictureLook } from '../look/picture-look.ts';
import { paragraph } from '../sheet/paragraph.ts';
import { sheet } from '../sheet/sheet.ts';
import { stopBlock } from './stop-block.ts';
import { stopScales } from './stop-scales.ts';
import { stopSentence, verdictWords } from './stop-words.ts';

const legend =
  'v₀: speed at the start. Between 0.8 and 0.1 v₀ the deceleration counts as fully developed. Gray band: 95 % interval of the speed. The bracket on the road: 95 % interval of the place of rest. All stops of this sheet have the same scales.';

/**
 * Draws stops below each other, to one scale: speed with its band and deceleration over time, and each stop along the
 * road.
 *
 * @param reports - the logs whose stops are drawn, in order; m and m/s
 * @param look - units of the figures
 * @returns an SVG document; one that says so where there is no stop
 */
export function stopsPicture(reports: readonly LogReport[], look: PictureLook): string {
  const say = speaker(look.units);
  const stops = reports.flatMap(({ source, stops: found, nominalSpeed_m_s }) =>
    found.map((stop) => ({ stop, name: source.name, nominalSpeed: nominalSpeed_m_s })),
  );
  const scales = stopScales(
    stops.map(({ stop }) => stop),
    look.units,
  );
  const told = stops.map(({ stop, name, nominalSpeed }) => ({
    stop,
    heading: `Stop ${stop.number} in ${fileName(name)}${stop.clock === null ? '' : `, ${stop.clock}`}`,
    sentence: stopSentence(stop, nominalSpeed, say),
    verdict: verdictWords(stop),
  }));
  const answer = reports.map(({ sentence }) => sentence).join(' ');
  const title = told.length === 1 ? (told[0]?.heading ?? '') : `Measured stops: ${told.length}`;
  const description = [
    answer,
    ...told.map(({ heading, sentence, verdict }) => `${heading}: ${sentence} ${verdict}`),
  ];
  return sheet({ title, description: description.join(' ') }, [
    paragraph(answer, { size: 17, bold: true, after: 10 }),
    ...told.flatMap(({ stop, heading, sentence, verdict }) => [
      paragraph(heading, { size: 15, bold: true, after: 2 }),
      paragraph(sentence === answer ? verdict : `${sentence} ${verdict}`, { after: 8 }),
      stopBlock(stop, scales, { ...look, say }),
    ]),
    paragraph(stops.length === 0 ? '' : legend, { soft: true, size: 12 }),
  ]);
}

/**
 * Draws one stop of a log by itself.
 *
 * @param report - the log; m and m/s
 * @param number - of the stop, 1 for the first
 * @param look - units of the figures
 * @returns an SVG document; null where the log has no such stop
 */
export function stopPicture(report: LogReport, number: number, look: PictureLook): string | null {
  const stop = report.stops.find((each) => each.number === number);
  if (stop === undefined) return null;
  const sentence = stopSentence(stop, report.nominalSpeed_m_s, speaker(look.units));
  return stopsPicture([{ ...report, sentence, stops: [stop] }], look);
}

/** Whatever folder the log lies in. */
function fileName(path: string): string {
  return path.split(/[\\/]/u).at(-1) ?? path;
}
