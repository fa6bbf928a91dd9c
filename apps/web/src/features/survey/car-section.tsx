import { carFacts, ladenFacts } from '@standstill/workshop';
import { Section } from '../../shared/ui/section.tsx';
import { ChoiceField } from './choice-field.tsx';
import { FactFields } from './fact-fields.tsx';
import { carClassOptions } from './part-classes.ts';
import { TextField } from '../../shared/job/text-field.tsx';

export function CarSection() {
  return (
    <Section
      title="Car"
      intro="At test mass: car, people and fuel. Write a spread behind the value where you know it: 2480 lb ± 15 lb."
    >
      <div className="fields">
        <TextField path="car.name" title="Name of the car" required />
        <ChoiceField
          path="car.class"
          title="Class that fills the gaps"
          options={carClassOptions}
          open="not stated"
        />
        <FactFields under="car" facts={Object.entries(carFacts)} />
        <FactFields under="car.laden" facts={Object.entries(ladenFacts)} />
      </div>
    </Section>
  );
}
