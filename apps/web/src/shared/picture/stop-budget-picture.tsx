import type { StopBudgetResult } from '@standstill/workshop';
import { useUnits } from '../units/unit-choice.tsx';
import { DimensionGuides, DimensionLine } from './dimension-line.tsx';
import { RoadPicture } from './road-picture.tsx';
import { TextTwin } from './text-twin.tsx';

const row = 32;

/** Where the distance of a stop goes: a chain of dimension lines from the ideal stop to the stop as it is. */
export function StopBudgetPicture({
  budget,
  title,
}: {
  readonly budget: StopBudgetResult;
  readonly title: string;
}) {
  const units = useUnits();
  const links = chain(budget);
  const feet = (meters: number) => units.distance.text(meters);
  return (
    <RoadPicture
      title={`Stop budget of ${title}`}
      description={budget.sentence}
      hatched={{ from: budget.ideal_m, to: budget.total_m }}
      height={row * (links.length + 2) - 4}
      twin={<BudgetTwin budget={budget} />}
    >
      <DimensionGuides
        ends={[
          { to: 0, y: row * (links.length + 2) - 8 },
          { to: budget.ideal_m, y: row * 2 - 4 },
          ...links.map(({ to }, index) => ({ to, y: row * (index + 3) - 4 })),
        ]}
      />
      <DimensionLine from={0} to={budget.ideal_m} y={row - 4} label={`Ideal stop ${feet(budget.ideal_m)}`} />
      {links.map(({ title: name, from, to }, index) => (
        <DimensionLine
          key={name}
          from={from}
          to={to}
          y={row * (index + 2) - 4}
          label={`${name} ${feet(to - from)}`}
        />
      ))}
      <DimensionLine
        from={0}
        to={budget.total_m}
        y={row * (links.length + 2) - 8}
        label={`This car ${feet(budget.total_m)}`}
        strong
      />
    </RoadPicture>
  );
}

interface Link {
  readonly title: string;
  readonly from: number;
  readonly to: number;
}

/** The shares laid end to end, the greatest first; what points back comes last. */
function chain(budget: StopBudgetResult): readonly Link[] {
  let at = budget.ideal_m;
  return [...budget.shares]
    .sort((a, b) => b.distance_m - a.distance_m)
    .map(({ title, distance_m }) => {
      const from = at;
      at += distance_m;
      return { title, from, to: at };
    });
}

function BudgetTwin({ budget }: { readonly budget: StopBudgetResult }) {
  const { distance } = useUnits();
  return (
    <TextTwin
      open
      caption="Where the distance goes: the ideal stop, and what each effect adds to it"
      head={['Part of the stop', 'Distance']}
      rows={[
        ['Ideal stop: every tire at its peak from the first instant', distance.text(budget.ideal_m)],
        ...budget.shares.map(({ title, distance_m }) => [title, distance.signed(distance_m)]),
      ]}
      total={['This car', distance.text(budget.total_m)]}
    />
  );
}
