import type { Reconciliation } from '@standstill/workshop';
import { ExpectedPicture, type ExpectedOf } from '../../../shared/picture/expected-picture.tsx';
import { Figure, Figures } from '../../../shared/ui/figures.tsx';
import { Warnings } from '../../../shared/ui/warnings.tsx';
import { useUnits } from '../../../shared/units/unit-choice.tsx';
import { LearnedTable } from './learned-table.tsx';
import { ObservationTable } from './observation-table.tsx';

/** The model held against the stops: the change first, then what was learned, and what these stops can't tell. */
export default function ModelResult({ result }: { readonly result: Reconciliation }) {
  const { change, notToldApart, beyondTheBrakes } = result;
  const pictured = picturedSets(result);
  return (
    <div className="stack">
      <Warnings warnings={result.warnings} />
      {pictured.length > 0 && <ExpectedPicture sets={pictured} />}
      {change && <ChangeFigures change={change} />}
      {beyondTheBrakes.length > 0 && (
        <>
          <h3>What may be behind the rest</h3>
          <Lines lines={beyondTheBrakes} />
        </>
      )}
      <h3>What the stops before teach</h3>
      <p>{result.fit.sentence}</p>
      <LearnedTable learned={result.learned} />
      {notToldApart.length > 0 && (
        <>
          <h3>What these stops can not tell apart</h3>
          <Lines
            lines={notToldApart.map(({ sentence, toTellApart }) =>
              toTellApart === null ? sentence : `${sentence} ${toTellApart}`,
            )}
          />
        </>
      )}
      <ObservationTable observations={result.observations} />
    </div>
  );
}

function Lines({ lines }: { readonly lines: readonly string[] }) {
  return (
    <ul>
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}

function ChangeFigures({ change }: { readonly change: NonNullable<Reconciliation['change']> }) {
  const { distance, share } = useUnits();
  return (
    <Figures>
      <Figure name="Expected change, by the job alone" estimate={change.byJob_m} measure={distance} />
      <Figure name="Expected after learning" estimate={change.expected_m} measure={distance} />
      <Figure
        name="Measured change"
        estimate={change.measured_m}
        measure={distance}
        none="no stops after yet"
      />
      <Figure
        name="Share that the brakes can explain"
        estimate={change.share}
        measure={share}
        none="can not be told: the measured change may be zero, or is not there"
      />
      {change.unexplained_m && (
        <Figure name="Left unexplained" estimate={change.unexplained_m} measure={distance} />
      )}
    </Figures>
  );
}

/** The distances of the sets that were driven. */
function picturedSets({ observations, before, after }: Reconciliation): readonly ExpectedOf[] {
  const distances = observations.filter(({ quantity }) => quantity === 'stopping-distance');
  return distances.map(({ set, measured, byJob, learned }) => ({
    title: set === 'before' ? before.title : (after?.title ?? 'after'),
    measured,
    byJob,
    learned,
  }));
}
