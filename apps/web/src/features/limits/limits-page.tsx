import type { Prediction, SetUpPrediction, StopBudgetResult } from '@standstill/workshop';
import { usePrediction } from '../../shared/job/use-prediction.ts';
import { BalancePicture, lockWords } from '../../shared/picture/balance-picture.tsx';
import { HeatPicture } from '../../shared/picture/heat-picture.tsx';
import { RoadSheet } from '../../shared/picture/road-scale.tsx';
import { StopBudgetPicture } from '../../shared/picture/stop-budget-picture.tsx';
import { Basis } from '../../shared/ui/basis.tsx';
import { FactFigure, Figure, Figures } from '../../shared/ui/figures.tsx';
import { PrintAssumed } from '../../shared/ui/print-assumed.tsx';
import { PredictionPage } from '../../shared/ui/prediction-page.tsx';
import { Section } from '../../shared/ui/section.tsx';
import { Warnings } from '../../shared/ui/warnings.tsx';
import { useUnits, type Units } from '../../shared/units/unit-choice.tsx';
import { complaintWords } from './complaint-words.ts';

/** What holds the car as found back: where the feet go, and what pedal, balance and heat say. */
export default function LimitsPage() {
  const units = useUnits();
  return (
    <PredictionPage
      title="Limits"
      question="What holds this car back?"
      query={usePrediction()}
      answer={(prediction) => answer(prediction, units)}
    >
      {(prediction) => <Limits prediction={prediction} />}
    </PredictionPage>
  );
}

function answer({ budgets, sentence, setUps, pedalForce_N }: Prediction, units: Units): string {
  const cold = budgets[0]?.sentence ?? sentence;
  return setUps[0] ? `${cold} ${complaintWords(setUps[0], pedalForce_N, units)}` : cold;
}

function Limits({ prediction }: { readonly prediction: Prediction }) {
  const [setUp, budget] = [prediction.setUps[0], prediction.budgets[0]];
  if (!setUp) return null;
  const warnings = prediction.warnings.filter(({ about }) => about === undefined || about === setUp.id);
  return (
    <>
      <Warnings warnings={warnings} />
      <Basis prediction={prediction} />
      {budget && <WhereTheFeetGo setUp={setUp} budget={budget} />}
      <PedalSection setUp={setUp} />
      <BalanceSection setUp={setUp} />
      <HeatSection setUp={setUp} />
      <PrintAssumed assumed={prediction.assumed} />
    </>
  );
}

interface SetUpProps {
  readonly setUp: SetUpPrediction;
}

function WhereTheFeetGo({ setUp, budget }: SetUpProps & { readonly budget: StopBudgetResult }) {
  const { distance, deceleration, time } = useUnits();
  const longest = Math.max(budget.total_m, budget.ideal_m, ...reach(budget)) * 1.04;
  return (
    <Section
      title="Where the distance goes"
      intro={`${setUp.title}, from the first touch of the pedal; central values. Each effect has the share that it adds on average over every order of adding them, so the parts sum to the whole.`}
    >
      <RoadSheet longest={longest}>
        <StopBudgetPicture budget={budget} title={setUp.title} />
      </RoadSheet>
      <Figures>
        <Figure name="Stopping distance" estimate={setUp.distance_m} measure={distance} />
        <Figure name="Time to rest" estimate={setUp.time_s} measure={time} />
        <Figure name="Mean deceleration" estimate={setUp.meanDeceleration_m_s2} measure={deceleration} />
        <FactFigure name="Limited by">{setUp.limitedBy}</FactFigure>
      </Figures>
    </Section>
  );
}

/** How far along the road the chain of shares reaches: past the total, where some shares point back. */
function reach({ ideal_m, shares }: StopBudgetResult): readonly number[] {
  const gains = shares.filter(({ distance_m }) => distance_m > 0);
  return [gains.reduce((sum, { distance_m }) => sum + distance_m, ideal_m)];
}

function PedalSection({ setUp }: SetUpProps) {
  const { force, travel, share, pressure } = useUnits();
  return (
    <Section title="Pedal" intro="At the pedal force of the job, and where the tires' limit comes before it.">
      <Figures>
        <Figure name="Travel" estimate={setUp.pedalTravel_m} measure={travel} />
        <Figure name="Share of the travel used" estimate={setUp.pedalTravelShare} measure={share} />
        {setUp.atTiresLimit && (
          <Figure
            name="Share used at the tires' limit"
            estimate={setUp.atTiresLimit.pedalTravelShare}
            measure={share}
          />
        )}
        <Figure name="Front line pressure" estimate={setUp.frontLinePressure_Pa} measure={pressure} />
        <Figure name="Rear line pressure" estimate={setUp.rearLinePressure_Pa} measure={pressure} />
        <Figure
          name="Pedal force at which the tires are the limit"
          estimate={setUp.pedalForceAtLimit_N}
          measure={force}
          none="not reached by any foot"
        />
        <FactFigure name="Booster">{boosterWords(setUp)}</FactFigure>
      </Figures>
    </Section>
  );
}

function boosterWords({ hasBooster, boosterRunOut }: SetUpPrediction): string {
  if (!hasBooster) return 'none';
  return boosterRunOut ? 'run out: past its knee' : 'still assisting';
}

function BalanceSection({ setUp }: SetUpProps) {
  return (
    <Section
      title="Balance"
      intro={`With ABS and electronic distribution taken as failed, ${lockWords(setUp.balance)}`}
    >
      <BalancePicture sets={[{ title: setUp.title, balance: setUp.balance }]} />
    </Section>
  );
}

function HeatSection({ setUp }: SetUpProps) {
  const { temperature } = useUnits();
  const stops = setUp.repeatedStops;
  return (
    <Section
      title="Heat"
      intro="Hottest rotor face in one stop and in the stops in a row that the job asks about, and the fluid against its boiling point."
    >
      <Figures>
        <Figure name="Front rotor, one stop" estimate={setUp.frontRotorPeak_C} measure={temperature} />
        <Figure name="Rear rotor, one stop" estimate={setUp.rearRotorPeak_C} measure={temperature} />
        {setUp.fluid && (
          <>
            <Figure name="Fluid, repeated stops" estimate={setUp.fluid.highest_C} measure={temperature} />
            <FactFigure name="Fluid boils at its age at">
              {temperature.text(setUp.fluid.boiling_C)}
            </FactFigure>
          </>
        )}
      </Figures>
      {stops.length > 1 && (
        <HeatPicture
          title="Stops in a row"
          curves={[
            { title: 'rear rotor', stops, peak_C: (stop) => stop.rearRotorPeak_C },
            { title: 'front rotor', stops, peak_C: (stop) => stop.frontRotorPeak_C },
          ]}
        />
      )}
    </Section>
  );
}
