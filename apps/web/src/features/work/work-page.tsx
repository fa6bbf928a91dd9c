import { JobDangers } from '../../shared/ui/job-dangers.tsx';
import { PageHead } from '../../shared/ui/page-head.tsx';
import { Section } from '../../shared/ui/section.tsx';
import { WarningBox } from '../../shared/ui/warnings.tsx';
import './work.css';

/** An honest empty page: what will stand here, what does not exist yet, and the cautions that hold without it. */
export default function WorkPage() {
  return (
    <div className="work">
      <PageHead title="Work" question="How is it done?">
        <p>
          Not here yet: this version computes and measures, but does not guide the work. Work from the maker’s
          instructions.
        </p>
      </PageHead>
      <WarningBox severity="danger">
        Brakes can kill. Whoever does this work must be trained for it, and local rules may reserve it to
        licensed shops.
      </WarningBox>
      <JobDangers />
      <Section title="Before the wheels come off">
        <ul>
          <li>The car stands on stands, on firm level ground. Never under a car on a jack alone.</li>
          <li>Brake dust is not to be breathed: wet it or draw it off, never blow it out.</li>
          <li>Brake fluid eats paint and harms eyes and skin. Keep water at hand.</li>
        </ul>
      </Section>
      <Section title="While the lines are open">
        <ul>
          <li>DOT 3, 4 and 5.1 may meet each other and then count as the lowest of them; better flush.</li>
          <li>
            Silicone fluid (DOT 5) and mineral fluid never meet any of those. No DOT 5 in a car with ABS
            unless its maker allows it.
          </li>
          <li>Stay below the pressure limit of the bleeder and of the reservoir.</li>
          <li>Crush washers and one-time bolts are used once.</li>
        </ul>
      </Section>
      <Section title="Before the car moves">
        <ul>
          <li>
            Wheel nuts by hand, then in a star pattern with a torque wrench to the maker’s figure, the wheels
            just touching the ground.
          </li>
          <li>A hard pedal that does not sink, and a look at every joint under pressure.</li>
          <li>
            Warning lamps must end off. Where the parts changed the torque of a wheel, ABS and stability
            control are no longer what was approved.
          </li>
        </ul>
      </Section>
      <Section title="First meters and afterwards">
        <ul>
          <li>First slow stops in a closed place, with room; then the pedal and every joint once more.</li>
          <li>Pads and rotors bedded in before anybody counts on them.</li>
          <li>Wheel nuts again with the torque wrench after the first miles.</li>
        </ul>
      </Section>
      <Section title="What comes here">
        <p>
          A card for the bay with one thing to do at a time: torque entries with range, thread and condition,
          photos to a step, timers for bleeding and bed-in, all usable with a dirty hand and without network.
          None of that exists yet.
        </p>
      </Section>
    </div>
  );
}
