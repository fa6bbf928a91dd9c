import type { Prediction } from '@standstill/workshop';
import { Link } from 'wouter';
import { useJobPart } from '../job/job-context.ts';
import { useUnits } from '../units/unit-choice.tsx';

/** What the figures of a page stand on: the stop that was asked about, the draws, and how much was assumed. */
export function Basis({ prediction }: { readonly prediction: Prediction }) {
  const id = useJobPart((state) => state.id);
  const { speed, force } = useUnits();
  return (
    <p className="small soft">
      From {speed.exact(prediction.speed_m_s)} at {force.exact(prediction.pedalForce_N)} on the pedal,{' '}
      {prediction.surface} road. Intervals hold 95 % of {prediction.draws} draws of all that is uncertain
      (seed {prediction.seed});{' '}
      <Link href={`/jobs/${id}/survey`}>
        <span className="assumed">{prediction.assumed.length} values are assumed</span>
      </Link>
      .
    </p>
  );
}
