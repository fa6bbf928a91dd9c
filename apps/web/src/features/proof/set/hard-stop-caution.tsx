import { WarningBox } from '../../../shared/ui/warnings.tsx';

/** What must be true before anybody measures a stop; stands where the logs of stops are asked for. */
export function HardStopCaution() {
  return (
    <WarningBox severity="caution">
      Hard stops only on a closed course with room to run out, and with a helper. First the slow stops, pedal
      hard, no leak; pads and rotors bedded in; every warning lamp off. If one stays on, or the car pulls or
      turns, end the day.
    </WarningBox>
  );
}
