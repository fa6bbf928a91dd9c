import type { FadeReport, FadeSetResult } from '@standstill/workshop';
import { MeasuredFadePicture } from '../../../shared/picture/measured-fade-picture.tsx';
import { FactFigure, Figure, Figures } from '../../../shared/ui/figures.tsx';
import { WarningBox } from '../../../shared/ui/warnings.tsx';
import { useUnits, type Units } from '../../../shared/units/unit-choice.tsx';

/** Stops in a row: the picture, how much longer each gets, and what the heat has to do with it. */
export default function FadeResult({ report }: { readonly report: FadeReport }) {
  const { distance } = useUnits();
  const { set, against, slopeDifference_m_per_stop: difference, expectation } = report;
  return (
    <div className="stack">
      {report.warnings.map((warning) => (
        <WarningBox key={warning} severity="caution">
          {warning}
        </WarningBox>
      ))}
      <MeasuredFadePicture report={report} />
      <Figures>
        <SetFigures set={set} />
        {against && <SetFigures set={against} />}
        {difference && (
          <Figure
            name={`From stop to stop, ${against?.name ?? 'second'} less ${set.name}`}
            estimate={difference}
            measure={distance}
          />
        )}
        {expectation && (
          <Figure
            name={`Expected growth, ${expectation.setUp}`}
            estimate={expectation.growth_m}
            measure={distance}
          />
        )}
      </Figures>
      {expectation && <p>{expectation.sentence}</p>}
    </div>
  );
}

function SetFigures({ set }: { readonly set: FadeSetResult }) {
  const units = useUnits();
  return (
    <>
      <Figure
        name={`Longer from stop to stop, ${set.name}`}
        estimate={set.slope_m_per_stop}
        measure={units.distance}
        none="can not be told from under three stops"
        {...(set.bends ? { note: 'a straight line is not enough: it bends' } : {})}
      />
      <Figure
        name={`Last over first, ${set.name}`}
        estimate={set.growth_m}
        measure={units.distance}
        none="can not be told"
        {...(set.growthPercent ? { note: percent(set.growthPercent) } : {})}
      />
      {set.temperatures.map(({ channel, first_C, highest_C, distance_m_per_100K: per }) => (
        <FactFigure key={channel} name={`${channel}, ${set.name}`} note={perHeat(per, units)}>
          {units.temperature.text(first_C)} first, {units.temperature.text(highest_C)} hottest
        </FactFigure>
      ))}
    </>
  );
}

function percent({ low, high }: { readonly low: number; readonly high: number }): string {
  return `${whole(low)} to ${whole(high)} %`;
}

function whole(value: number): string {
  return value.toFixed(0).replace('-', '−');
}

/** 100 K are 180 °F: said in the degrees that the person reads. */
function perHeat(
  per: FadeSetResult['temperatures'][number]['distance_m_per_100K'],
  { distance, temperature }: Units,
): string {
  if (per === null) return 'varies too little to say what heat does';
  const degrees = temperature.symbol === '°F' ? '180 °F' : '100 °C';
  return `${distance.signed(per)} (${distance.range(per)}) for each ${degrees} hotter`;
}
