import type { AssumedValue, Problem } from '@standstill/workshop';
import { useMemo } from 'react';
import { useJobDocument } from '../../shared/job/job-context.ts';
import { useJobReading } from '../../shared/job/use-job-reading.ts';
import { fieldText } from '../../shared/quantity/field-text.ts';
import { PageHead } from '../../shared/ui/page-head.tsx';
import { Section } from '../../shared/ui/section.tsx';
import { Trouble } from '../../shared/ui/trouble.tsx';
import { AssumedSection } from './assumed-section.tsx';
import { CarSection } from './car-section.tsx';
import { ConditionsSection } from './conditions-section.tsx';
import { FilledContext } from './filled.tsx';
import { originCounts } from './origin-counts.ts';
import { SetUpsSection } from './set-ups-section.tsx';
import { TextField } from '../../shared/job/text-field.tsx';
import './survey.css';

const nothing: readonly AssumedValue[] = [];

/** What the car is, as found, and what is proposed: every value with its unit and how it is known. */
export default function SurveyPage() {
  const { data: reading, error } = useJobReading();
  const assumed = reading?.ok ? reading.assumed : nothing;
  const filled = useMemo(() => new Map(assumed.map((value) => [dotted(value.path), value])), [assumed]);
  return (
    <FilledContext.Provider value={filled}>
      <PageHead title="Survey" question="What is this car, as found?">
        <Answer />
      </PageHead>
      {error && <Trouble tried="read the job" reason={error} />}
      {reading && !reading.ok && <Mistakes problems={reading.problems} />}
      <Section title="Job">
        <div className="stack">
          <TextField path="title" title="Title" required wide />
          <TextField path="complaint" title="Complaint, in the owner's words" long />
        </div>
      </Section>
      <CarSection />
      <ConditionsSection />
      <SetUpsSection />
      {reading?.ok && <AssumedSection assumed={reading.assumed} />}
    </FilledContext.Provider>
  );
}

function Answer() {
  const { car, notice } = useJobDocument();
  const { data: reading } = useJobReading();
  const counts = reading?.ok ? originCounts(reading.job) : null;
  return (
    <>
      <p>
        {car.name}, {fieldText(car.mass)} at test, wheelbase {fieldText(car.wheelbase)}.{' '}
        {!reading && 'Counting what is measured, specified and assumed …'}
        {counts && (
          <>
            {counts.measured} values are measured, {counts.specified} specified,{' '}
            <span className="assumed">{reading?.ok && reading.assumed.length} assumed</span> (left out or
            marked so).
          </>
        )}
      </p>
      {notice && <p className="small soft">{notice}</p>}
    </>
  );
}

function Mistakes({ problems }: { readonly problems: readonly Problem[] }) {
  return (
    <div className="state" role="alert">
      <p>
        <strong>
          {problems.length === 1 ? 'One value stands' : `${problems.length} values stand`} in the way of an
          answer.
        </strong>{' '}
        Nothing is computed until that is right.
      </p>
      <ul>
        {problems.map(({ path, message }) => (
          <li key={`${path} ${message}`}>{message}</li>
        ))}
      </ul>
    </div>
  );
}

/** 'parts.x.pistons[1]' as the fields name it: 'parts.x.pistons.1'. */
function dotted(path: string): string {
  return path.replace(/\[(\d+)\]/g, '.$1');
}
