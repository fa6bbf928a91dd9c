import { testFacts, type QuantityInput } from '@standstill/workshop';
import { useJobDocument } from '../../../shared/job/job-context.ts';
import { fieldText } from '../../../shared/quantity/field-text.ts';
import { QuantityField } from '../../../shared/quantity/quantity-field.tsx';

/** Between which temperatures the rotors must be when a stop begins; a stop outside is left out, with the reason. */
export function StartWindow() {
  const { test } = useJobDocument();
  return (
    <details className="start-window">
      <summary>
        Rotors at the start of a stop: {windowWords(test?.startTemperatureLow, test?.startTemperatureHigh)}
      </summary>
      <p className="small soft">
        A stop that begins colder or hotter is left out, where the log or the run says how warm they were.
      </p>
      <div className="fields">
        <QuantityField
          path="test.startTemperatureLow"
          fact={testFacts.startTemperatureLow}
          title="Coldest start"
        />
        <QuantityField
          path="test.startTemperatureHigh"
          fact={testFacts.startTemperatureHigh}
          title="Hottest start"
        />
      </div>
    </details>
  );
}

function windowWords(low: QuantityInput | undefined, high: QuantityInput | undefined): string {
  if (low === undefined && high === undefined) return 'any temperature counts';
  if (low === undefined) return `up to ${fieldText(high)}`;
  return high === undefined ? `from ${fieldText(low)}` : `${fieldText(low)} to ${fieldText(high)}`;
}
