import { heatReport, readLaps, reportHeat } from '@standstill/workshop';
import type { HeatSchedule, ReportHeatOptions } from '@standstill/workshop';
import { heatOptions, scheduleKind } from './heat-options.ts';
import type { HeatOptions } from './heat-options.ts';
import { jobQuestion } from './job-question.ts';
import type { OptionsReading } from './job-question.ts';
import { withoutUnits } from './without-units.ts';

/** Says what a schedule of stops does to the brakes. */
export const heatQuestion = jobQuestion({
  path: '/api/heat',
  summary:
    'What gets too hot first in a schedule of stops and in which, fade, and fluid against its boiling point',
  options: heatOptions,
  report: heatReport,
  read: readHeatOptions,
  compute: reportHeat,
});

function readHeatOptions(options: HeatOptions): OptionsReading<ReportHeatOptions> {
  const { count, interval, drop, grade, brakeShare, points, ...rest } = withoutUnits(options);
  const kind = scheduleKind(options);
  const asked = (schedule: HeatSchedule): OptionsReading<ReportHeatOptions> => ({
    ok: true,
    asked: { ...rest, schedule },
  });
  const counted = count === undefined ? {} : { count };
  if (kind === 'stops') return asked({ kind, ...counted, ...(interval === undefined ? {} : { interval }) });
  if (kind === 'descent')
    return asked({
      kind,
      ...(drop === undefined ? {} : { drop }),
      ...(grade === undefined ? {} : { grade }),
      ...(brakeShare === undefined ? {} : { brakeShare }),
    });
  if (kind !== 'laps') return asked({ kind });
  const reading = readLaps(points ?? '', null);
  if (!reading.ok) return reading;
  return asked({ kind, points: reading.points, ...counted });
}
