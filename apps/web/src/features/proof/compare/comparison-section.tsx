import type { Comparison } from '@standstill/workshop';
import { RunsPicture } from '../../../shared/picture/runs-picture.tsx';
import { FactFigure, Figure, Figures } from '../../../shared/ui/figures.tsx';
import { Section } from '../../../shared/ui/section.tsx';
import { WarningBox } from '../../../shared/ui/warnings.tsx';
import { useUnits } from '../../../shared/units/unit-choice.tsx';
import { AdjustedFigures } from './adjusted-figures.tsx';
import { Confounders } from './confounders.tsx';
import { SetFigures } from './set-figures.tsx';
import { WhatToDrive } from './what-to-drive.tsx';
import type { StatedFact } from './stated-facts.ts';

export interface ComparisonSectionProps {
  readonly comparison: Comparison;
  /** What the runs say of their day. */
  readonly facts: readonly StatedFact[];
  /** The same in the words that went into the comparison: they are not told twice. */
  readonly said: readonly string[];
}

/** What both sets say together: every run on the road, the difference with its interval, what it does not show. */
export function ComparisonSection({ comparison, facts, said }: ComparisonSectionProps) {
  const { distance, speed } = useUnits();
  const { difference_m, differencePercent, permutation, welch, runsNeeded, expectation } = comparison;
  const definition =
    comparison.definition === 'application'
      ? 'from the first application of the brake'
      : 'from crossing the nominal speed';
  return (
    <Section
      title="Before and after"
      intro={`After minus before: ${distance.signed(difference_m)} (${distance.range(difference_m)}). Distances ${definition} to rest, nominal speed ${speed.exact(comparison.nominalSpeed_m_s)}; every counted run is a dot.`}
    >
      <div className="comparison">
        <WhatToDrive comparison={comparison} />
        <RunsPicture comparison={comparison} />
        {comparison.warnings.map((warning) => (
          <WarningBox key={warning} severity="caution">
            {warning}
          </WarningBox>
        ))}
        <Figures>
          <Figure
            name="Difference of the means"
            estimate={difference_m}
            measure={distance}
            note={percentRange(differencePercent)}
          />
          {comparison.bootstrap_m && (
            <Figure
              name="The same by drawing anew"
              estimate={comparison.bootstrap_m}
              measure={distance}
              note="both sets drawn from themselves 10,000 times; too narrow for small sets"
            />
          )}
          <FactFigure
            name="How often luck alone gives such a difference"
            note={`${permutation.exact ? 'all' : 'a sample of'} ${permutation.arrangements} arrangements of the runs${welch ? `; by Welch’s test ${probability(welch.p)}` : ''}`}
          >
            {probability(permutation.p)}
          </FactFigure>
          <FactFigure name="Best against best would say" note={bestNote(comparison, distance.text)}>
            {distance.signed(comparison.bestOfEach.difference_m)}
          </FactFigure>
          <FactFigure
            name={`Runs a set to see ${distance.text(Math.abs(runsNeeded.difference_m))}`}
            note="in 8 of 10 tries, at this spread"
          >
            {runsNeeded.runsPerSet ?? 'can not be told from so few runs'}
          </FactFigure>
        </Figures>
        <AdjustedFigures comparison={comparison} />
        <SetFigures comparison={comparison} />
        {expectation && <Expectation expectation={expectation} />}
        <Confounders facts={facts} recorded={comparison.confounders.filter((text) => !said.includes(text))} />
      </div>
    </Section>
  );
}

function percentRange({ low, high }: Comparison['differencePercent']): string {
  return `${wholePercent(low)} to ${wholePercent(high)} %`;
}

function wholePercent(value: number): string {
  return `${value < 0 ? '−' : ''}${Math.abs(value).toFixed(0)}`;
}

function probability(p: number): string {
  return p < 0.001 ? 'below 0.1 %' : `${(p * 100).toPrecision(2)} %`;
}

function bestNote({ bestOfEach }: Comparison, text: (meters: number) => string): string {
  const { expectedGainBefore_m: before, expectedGainAfter_m: after } = bestOfEach;
  if (before === null || after === null) return 'says nothing: taking a best gains by chance';
  return `taking a best gains by chance: ${text(before)} before, ${text(after)} after`;
}

function Expectation({ expectation }: { readonly expectation: NonNullable<Comparison['expectation']> }) {
  const { distance, share } = useUnits();
  return (
    <div className="stack expectation">
      <h3>Expected and measured</h3>
      <p>{expectation.sentence}</p>
      <p className="small soft">
        By the job alone. The part below learns from the stops before first, and so expects more closely.
      </p>
      <Figures>
        <Figure
          name={`Expected change, ${expectation.setUp}`}
          estimate={expectation.expected_m}
          measure={distance}
        />
        <Figure
          name="Share that the brakes can explain"
          estimate={expectation.explainedShare}
          measure={share}
        />
        <Figure name="Left unexplained" estimate={expectation.unexplained_m} measure={distance} />
      </Figures>
    </div>
  );
}
