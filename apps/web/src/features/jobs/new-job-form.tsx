import { useQueryClient } from '@tanstack/react-query';
import type { Fact } from '@standstill/workshop';
import { useEffect, useState } from 'react';
import { useForm, type FieldErrors, type RegisterOptions, type UseFormRegister } from 'react-hook-form';
import { useLocation } from 'wouter';
import { createJob } from '../../shared/api/jobs.ts';
import { readFieldText } from '../../shared/quantity/field-text.ts';
import { Trouble } from '../../shared/ui/trouble.tsx';
import { ask } from '../../shared/worker/ask.ts';
import { beginJob, firstFacts, type FirstFactTexts } from './first-facts.ts';
import { dropUnsent, keepUnsent, readUnsent } from './unsent-form.ts';

/** A new job from a handful of facts; what is typed survives a reload. */
export function NewJobForm() {
  const [, navigate] = useLocation();
  const queries = useQueryClient();
  const [trouble, setTrouble] = useState<unknown>(null);
  const form = useForm<FirstFactTexts>({
    defaultValues: readUnsent(),
    mode: 'onBlur',
    shouldFocusError: true,
  });
  const { register, handleSubmit, subscribe, formState } = form;

  useEffect(
    () => subscribe({ formState: { values: true }, callback: ({ values }) => keepUnsent(values) }),
    [subscribe],
  );

  const begin = async (texts: FirstFactTexts) => {
    setTrouble(null);
    try {
      const start = await ask('new-job', { title: texts.title.trim() });
      const job = await createJob(beginJob(start, texts));
      dropUnsent();
      queries.setQueryData(['job', job.id], job);
      void queries.invalidateQueries({ queryKey: ['jobs'] });
      navigate(`/jobs/${job.id}/survey`);
    } catch (reason) {
      setTrouble(reason);
    }
  };

  return (
    <form className="stack" noValidate onSubmit={(event) => void handleSubmit(begin)(event)}>
      <div className="fields">
        <Field
          name="title"
          title="Job"
          hint="for example: long stops, soft pedal"
          register={register}
          errors={formState.errors}
          rules={{ validate: (text) => (text.trim() === '' ? 'A job needs a name.' : true) }}
        />
        <Field
          name="carName"
          title="Car"
          hint="as you call it in the shop"
          register={register}
          errors={formState.errors}
        />
        <Field
          name="tireSize"
          title="Tire size"
          hint="as on the sidewall, e.g. 205/50 R16"
          register={register}
          errors={formState.errors}
        />
        {firstFacts.map(({ name, fact }) => (
          <Field
            key={name}
            name={`facts.${name}`}
            title={fact.title}
            hint={`e.g. ${fact.example}`}
            register={register}
            errors={formState.errors}
            rules={{
              validate: (text) => mistakeIn(text, fact),
            }}
          />
        ))}
      </div>
      {trouble !== null && <Trouble tried="begin the job" reason={trouble} />}
      <div className="actions">
        <button type="submit" className="primary" disabled={formState.isSubmitting}>
          {formState.isSubmitting ? 'Beginning …' : 'Begin the job'}
        </button>
      </div>
    </form>
  );
}

/** What is wrong with a typed fact; true where nothing is. Every fact may be left out: the placeholder stands, marked. */
function mistakeIn(text: string, { required: _placeholder, ...fact }: Fact): string | true {
  const reading = readFieldText(text, fact, undefined);
  return reading.ok ? true : reading.message;
}

type FieldName = 'title' | 'carName' | 'tireSize' | `facts.${string}`;

interface FieldProps {
  readonly name: FieldName;
  readonly title: string;
  readonly hint: string;
  readonly register: UseFormRegister<FirstFactTexts>;
  readonly errors: FieldErrors<FirstFactTexts>;
  readonly rules?: RegisterOptions<FirstFactTexts, FieldName>;
}

function Field({ name, title, hint, register, errors, rules }: FieldProps) {
  const id = `new-${name.replace('.', '-')}`;
  const message = messageOf(errors, name);
  return (
    <div className="field">
      <label htmlFor={id}>{title}</label>
      <input
        id={id}
        autoComplete="off"
        aria-invalid={message !== undefined}
        aria-describedby={`${id}-h`}
        {...register(name, rules)}
      />
      <p id={`${id}-h`} className={message ? 'error' : 'hint'}>
        {message ?? hint}
      </p>
    </div>
  );
}

function messageOf(errors: FieldErrors<FirstFactTexts>, name: FieldName): string | undefined {
  if (!name.startsWith('facts.')) return errors[name as 'title']?.message;
  return errors.facts?.[name.slice('facts.'.length)]?.message;
}
