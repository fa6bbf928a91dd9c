import { surfaceClasses } from '@standstill/braking';
import { conditionsFacts, repeatedStopsFacts } from '@standstill/workshop';
import { Section } from '../../shared/ui/section.tsx';
import { ChoiceField } from './choice-field.tsx';
import { CountField } from './count-field.tsx';
import { FactFields } from './fact-fields.tsx';

const surfaces = Object.entries(surfaceClasses).map(([id, { title }]) => ({ id, title }));

export function ConditionsSection() {
  return (
    <Section title="Conditions" intro="The stop that is asked about: road, weather and foot.">
      <div className="fields">
        <ChoiceField path="conditions.surface" title="Surface" options={surfaces} open="not stated" />
        <FactFields under="conditions" facts={Object.entries(conditionsFacts)} />
        <CountField path="conditions.repeatedStops.count" title="Stops in a row" from={1} to={60} />
        <FactFields under="conditions.repeatedStops" facts={Object.entries(repeatedStopsFacts)} />
      </div>
    </Section>
  );
}
