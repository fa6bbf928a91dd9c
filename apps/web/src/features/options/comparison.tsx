import type { Prediction, SetUpDifference, SetUpPrediction, Warning } from '@standstill/workshop';
import { AdhesionPicture } from '../../shared/picture/adhesion-picture.tsx';
import { BalancePicture } from '../../shared/picture/balance-picture.tsx';
import { FadePicture } from '../../shared/picture/fade-picture.tsx';
import { HeatPicture } from '../../shared/picture/heat-picture.tsx';
import { PartChainPicture } from '../../shared/picture/part-chain-picture.tsx';
import { RoadSheet } from '../../shared/picture/road-scale.tsx';
import { StopsPicture } from '../../shared/picture/stops-picture.tsx';
import { Section } from '../../shared/ui/section.tsx';
import { Warnings } from '../../shared/ui/warnings.tsx';
import { SideBySide } from './side-by-side.tsx';

export interface ComparisonProps {
  readonly prediction: Prediction;
  readonly against: string;
  readonly chosen: string;
}

/** Two set-ups side by side; every picture that draws distance has the same scale. */
export function Comparison({ prediction, against, chosen }: ComparisonProps) {
  const a = prediction.setUps.find(({ id }) => id === against);
  const b = prediction.setUps.find(({ id }) => id === chosen);
  const difference = prediction.differences.find((one) => one.id === chosen && one.against === against);
  if (!a || !b || !difference) return null;
  return (
    <>
      <RoadSheet longest={longest(a, b)}>
        <Section
          title="How far"
          intro="The brackets hold 95 % of the draws; the difference below is surer than the two, since what both share cancels."
        >
          <StopsPicture stops={[a, b]} />
          <SideBySide a={a} b={b} difference={difference} />
          <Warnings warnings={pedalWarnings(prediction, [a.id, b.id])} />
        </Section>
        <PartsSection a={a} b={b} difference={difference} />
        <Section title="Stops in a row" intro="Central values of the repeated stops that the job asks about.">
          {a.repeatedStops.length > 1 && <FadePicture sets={[fadeOf(a), fadeOf(b)]} />}
          <HeatPair a={a} b={b} />
        </Section>
      </RoadSheet>
      <Section
        title="Balance"
        intro="Brake forces over the weight of the car, with ABS and electronic distribution taken as failed. Where an installed line crosses the ideal one, the other axle locks first."
      >
        <BalancePicture
          sets={[
            { title: a.title, balance: a.balance },
            { title: b.title, balance: b.balance },
          ]}
        />
        <p className="soft">
          Friction that each axle needs at a deceleration, beside the limit of UN Regulation 13-H Annex 5: a
          yardstick, not an approval, and for a car with ABS not even a rule.
        </p>
        <div className="pair">
          <AdhesionPicture title={a.title} balance={a.balance} />
          <AdhesionPicture title={b.title} balance={b.balance} />
        </div>
      </Section>
    </>
  );
}

/** What the pedal has to say, once more beside its figures. */
function pedalWarnings({ warnings }: Prediction, ids: readonly string[]): readonly Warning[] {
  return warnings.filter(
    ({ code, about }) => code.startsWith('pedal') && about !== undefined && ids.includes(about),
  );
}

interface PairProps {
  readonly a: SetUpPrediction;
  readonly b: SetUpPrediction;
}

function PartsSection({ a, b, difference }: PairProps & { readonly difference: SetUpDifference }) {
  if (difference.byPart.length === 0) return null;
  return (
    <Section
      title="Which part buys which distance"
      intro="Central values; each part has the share that it brings on average over every order of fitting, so the parts sum to the whole."
    >
      <PartChainPicture
        from={{ title: a.title, distance: a.distance_m.value }}
        to={{ title: b.title, distance: b.distance_m.value }}
        byPart={difference.byPart}
      />
    </Section>
  );
}

function HeatPair({ a, b }: PairProps) {
  if (a.repeatedStops.length < 2) return null;
  const pair = [a, b] as const;
  return (
    <div className="pair">
      <HeatPicture
        title="Front rotors"
        curves={pair.map(({ title, repeatedStops }) => ({
          title,
          stops: repeatedStops,
          peak_C: (stop) => stop.frontRotorPeak_C,
        }))}
      />
      <HeatPicture
        title="Rear rotors"
        curves={pair.map(({ title, repeatedStops }) => ({
          title,
          stops: repeatedStops,
          peak_C: (stop) => stop.rearRotorPeak_C,
        }))}
      />
    </div>
  );
}

function fadeOf({ title, repeatedStops }: SetUpPrediction) {
  return { title, stops: repeatedStops };
}

/** m, the farthest that anything on the page reaches. */
function longest(a: SetUpPrediction, b: SetUpPrediction): number {
  const reached = [a, b].flatMap(({ distance_m, repeatedStops }) => [
    distance_m.high,
    ...repeatedStops.map((stop) => stop.distance_m),
  ]);
  return Math.max(...reached.filter(Number.isFinite), 1) * 1.04;
}
