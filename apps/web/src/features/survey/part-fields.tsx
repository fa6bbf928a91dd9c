import { partFacts, type PartDocument, type QuantityInput } from '@standstill/workshop';
import { useJobPart, useJobSession } from '../../shared/job/job-context.ts';
import { valueAt } from '../../shared/job/set-at.ts';
import { withOrigin } from '../../shared/quantity/field-text.ts';
import { QuantityField } from '../../shared/quantity/quantity-field.tsx';
import { ChoiceField } from './choice-field.tsx';
import { FactFields } from './fact-fields.tsx';
import { useFilled } from './filled.tsx';
import { partClasses } from './part-classes.ts';
import { factsOf, keepWhatApplies, partForms } from './part-kinds.ts';
import { QuantityTable } from './quantity-table.tsx';
import { YesNoField } from './yes-no-field.tsx';
import { TextField } from '../../shared/job/text-field.tsx';

/** Everything that the document can say about one part. */
export function PartFields({ id }: { readonly id: string }) {
  const path = `parts.${id}`;
  const session = useJobSession();
  const part = useJobPart((state) => valueAt(state.document, path)) as PartDocument | undefined;
  if (!part) return null;
  const partType = 'type' in part ? part.type : undefined;
  const classes = partClasses[part.kind];
  return (
    <div className="stack">
      <div className="fields">
        <TextField path={`${path}.title`} title="Name of the part" required />
        {partForms[part.kind].choices.map(({ key, title, options }) => (
          <ChoiceField
            key={key}
            path={`${path}.${key}`}
            title={title}
            options={options}
            {...(isOptional(part.kind, key) ? { open: 'left out' } : {})}
            {...(key === 'type'
              ? { onChoose: (next: string) => session.set(path, keepWhatApplies(part, next)) }
              : {})}
          />
        ))}
        {classes && (
          <ChoiceField
            path={`${path}.class`}
            title="Class that fills the gaps"
            options={classes}
            open="not stated"
          />
        )}
        {part.kind === 'tire' && (
          <TextField
            path={`${path}.size`}
            title="Size on the sidewall"
            hint="gives the rolling radius; e.g. 205/50 R16"
          />
        )}
        {part.kind === 'antilock' && (
          <YesNoField
            path={`${path}.electronicRearLimit`}
            title="Electronic distribution (limits rear slip by itself)"
            open="not stated: none"
          />
        )}
        {part.kind === 'pad' && !Array.isArray(part.friction) && <PadFriction path={path} />}
        <FactFields under={path} facts={factsOf(part.kind, partType)} />
      </div>
      <PartTables part={part} path={path} />
      <TextField path={`${path}.note`} title="Note" long />
    </div>
  );
}

function isOptional(kind: PartDocument['kind'], key: string): boolean {
  return key === 'contact' || kind === 'master-cylinder';
}

function PadFriction({ path }: { readonly path: string }) {
  const filled = useFilled();
  return (
    <QuantityField
      path={`${path}.friction`}
      fact={partFacts.padFrictionFact}
      filled={filled.get(`${path}.friction`)}
    />
  );
}

function PartTables({ part, path }: { readonly part: PartDocument; readonly path: string }) {
  if (part.kind === 'caliper') {
    return (
      <QuantityTable
        path={`${path}.pistons`}
        title="Pistons of one side"
        columns={[partFacts.pistonFact]}
        most={8}
      />
    );
  }
  if (part.kind === 'hose') {
    return (
      <QuantityTable
        path={`${path}.expansion`}
        title="Growth under pressure"
        columns={[partFacts.hosePressureFact, partFacts.hoseExpansionFact]}
        most={40}
      />
    );
  }
  if (part.kind !== 'pad') return null;
  if (Array.isArray(part.friction)) {
    return (
      <QuantityTable
        path={`${path}.friction`}
        title="Friction over temperature"
        columns={[partFacts.padTemperatureFact, partFacts.padFrictionFact]}
        most={40}
      />
    );
  }
  return part.friction === undefined ? null : <AsTable path={path} friction={part.friction} />;
}

/** Turns one figure of friction into the first row of a table. */
function AsTable({ path, friction }: { readonly path: string; readonly friction: QuantityInput }) {
  const session = useJobSession();
  const row = [withOrigin(partFacts.padTemperatureFact.example, 'assumed'), friction];
  return (
    <button type="button" className="bare" onClick={() => session.set(`${path}.friction`, [row])}>
      State the friction as a table over temperature
    </button>
  );
}
