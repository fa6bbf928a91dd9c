import type { SetUpDifference } from '@standstill/workshop';
import { useUnits } from '../units/unit-choice.tsx';
import { DimensionGuides, DimensionLine } from './dimension-line.tsx';
import { RoadPicture } from './road-picture.tsx';
import { TextTwin } from './text-twin.tsx';

export interface PartChainProps {
  readonly from: { readonly title: string; readonly distance: number };
  readonly to: { readonly title: string; readonly distance: number };
  readonly byPart: SetUpDifference['byPart'];
}

const row = 32;

/** From one set-up's stop to the other's, part by part: which part buys which distance. */
export function PartChainPicture({ from, to, byPart }: PartChainProps) {
  const { distance } = useUnits();
  const links = chain(from.distance, byPart);
  const end = links.at(-1)?.to ?? from.distance;
  const whole = links
    .map(({ title, from: start, to: stop }) => `${title} ${distance.signed(stop - start)}`)
    .join(', ');
  return (
    <RoadPicture
      title={`From ${from.title} to ${to.title}, part by part`}
      description={`${from.title} ${distance.text(from.distance)}; ${whole}; ${to.title} ${distance.text(end)}.`}
      hatched={{ from: end, to: from.distance }}
      height={row * (links.length + 2)}
      twin={<ChainTwin byPart={byPart} />}
    >
      <DimensionGuides
        ends={[
          { to: 0, y: row * (links.length + 2) - 6 },
          { to: from.distance, y: row * 2 - 6 },
          ...links.map(({ to: stop }, index) => ({ to: stop, y: row * (index + 3) - 6 })),
        ]}
      />
      <DimensionLine
        from={0}
        to={from.distance}
        y={row - 6}
        label={`${from.title} ${distance.text(from.distance)}`}
      />
      {links.map(({ title, from: start, to: stop }, index) => (
        <DimensionLine
          key={title}
          from={start}
          to={stop}
          y={row * (index + 2) - 6}
          label={`${title} ${distance.signed(stop - start)}`}
        />
      ))}
      <DimensionLine
        from={0}
        to={end}
        y={row * (links.length + 2) - 6}
        label={`${to.title} ${distance.text(end)}`}
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

/** The parts that buy the most first. */
export function chain(start: number, byPart: SetUpDifference['byPart']): readonly Link[] {
  let at = start;
  return [...byPart]
    .sort((a, b) => a.distance_m - b.distance_m)
    .map(({ title, distance_m }) => {
      const from = at;
      at += distance_m;
      return { title, from, to: at };
    });
}

function ChainTwin({ byPart }: { readonly byPart: SetUpDifference['byPart'] }) {
  const { distance } = useUnits();
  const sum = byPart.reduce((total, { distance_m }) => total + distance_m, 0);
  return (
    <TextTwin
      open
      caption="What each changed part adds to the stop; negative is shorter"
      head={['Part', 'Distance']}
      rows={byPart.map(({ title, distance_m }) => [title, distance.signed(distance_m)])}
      total={['together', distance.signed(sum)]}
    />
  );
}
