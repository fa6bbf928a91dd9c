import { emptiableSlots, none, partSlots } from '../document/part-slots.ts';
import type { PartSlot } from '../document/part-slots.ts';
import { nearestWord } from '../reading/nearest-word.ts';
import { pathText } from '../reading/path-text.ts';
import { shown } from '../reading/shown.ts';
import type { Filler } from './filler.ts';
import { fluidRefusal } from './stated-fluid-class.ts';

interface UnknownPartInput {
  readonly setUpId: string;
  readonly slot: PartSlot;
  /** What stands in the slot and is no part. */
  readonly written: string;
  /** Ids of the job's parts that would fit. */
  readonly fitting: readonly string[];
}

/** A slot that names no part: with the nearest id where it is a slip, else with what a slot takes at all. */
export function unknownPart(filler: Filler, { setUpId, slot, written, fitting }: UnknownPartInput): void {
  const path = ['setUps', setUpId, slot];
  const accepted = [...fitting, ...(isEmptiable(slot) ? [none] : [])];
  const near = isSlip(slot, written) ? nearestWord(written, accepted) : null;
  const hint = near === null ? `accepted is ${slotTakes(slot, fitting)}` : `did you mean "${near}"?`;
  const refusal = slot === 'fluid' ? fluidRefusal(written) : null;
  const message = `${pathText(path)} names ${shown(written)}, a part that is not under parts; ${refusal ?? hint}`;
  filler.findings.push({
    code: refusal === null ? 'unknown-part' : 'fluid-not-modeled',
    path,
    at: 'value',
    found: shown(written),
    accepted: near ?? slotTakes(slot, fitting),
    message,
  });
}

/** What may be written in a slot. */
export function slotTakes(slot: PartSlot, fitting: readonly string[] = []): string {
  const { kind } = partSlots[slot];
  const example = fitting.length === 0 && slot === 'antilock' ? ` (under parts, ${antilockExample})` : '';
  const which = fitting.length === 0 ? '' : `: ${fitting.join(', ')}`;
  return `the id of a part of kind ${kind}${which}${example}${isEmptiable(slot) ? `, or ${none}` : ''}`;
}

const antilockExample = '"abs: { kind: antilock, title: ABS, electronicRearLimit: true }"';

/** Words that answer a question instead of naming a part. */
const answers =
  /^(?:yes|no|y|n|true|false|on|off|with|without|abs|ebd|esc?|present|fitted|standard|vacuum)$/i;

/** A word such as `yes` is no slip for an id; of fluids none is ever guessed. */
function isSlip(slot: PartSlot, written: string): boolean {
  return slot !== 'fluid' && !(isEmptiable(slot) && answers.test(written.trim()));
}

function isEmptiable(slot: PartSlot): boolean {
  return (emptiableSlots as readonly PartSlot[]).includes(slot);
}
