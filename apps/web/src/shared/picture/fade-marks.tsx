import type { DrawnFade } from './drawn-fade.ts';
import type { PlotScales } from './plot.tsx';

interface FadeMarksProps {
  readonly set: DrawnFade;
  readonly scales: PlotScales;
}

/** A dot a stop, a cross where it does not count, and the line through the ones that do. */
export function FadeDistances({ set: { stops, fit, dot, line }, scales: { x, y } }: FadeMarksProps) {
  return (
    <g>
      {fit && (
        <path className={line} d={pathOf(fit.map(({ number, distance }) => [x(number), y(distance)]))} />
      )}
      {stops.map(({ number, distance, counted }) => (
        <g key={number} transform={`translate(${x(number)} ${y(distance)})`}>
          {counted ? (
            <circle className={dot} r={5} />
          ) : (
            <path className="ink" d="M-4.5 -4.5l9 9M4.5 -4.5l-9 9" />
          )}
        </g>
      ))}
    </g>
  );
}

/** What each temperature channel read at the start of each stop. */
export function FadeTemperatures({ set: { channels, dot, line }, scales: { x, y } }: FadeMarksProps) {
  return (
    <g>
      {channels.map(({ channel, points }) => {
        const end = points.at(-1);
        return (
          <g key={channel}>
            <path className={line} d={pathOf(points.map(({ number, value }) => [x(number), y(value)]))} />
            {points.map(({ number, value }) => (
              <circle key={number} className={dot} cx={x(number)} cy={y(value)} r={4} />
            ))}
            {end && (
              <text x={x(end.number)} y={y(end.value) - 9} textAnchor="end">
                {channel}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}

function pathOf(points: readonly (readonly [number, number])[]): string {
  return points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${x} ${y}`).join('');
}
