import type { FullStopTrace } from '@standstill/braking';
import type { SimulationTrace } from '../results/simulation-report.ts';

/**
 * A full stop's trace as it leaves the program: plain lists with their units in their names.
 *
 * @param trace - SI
 * @returns the same
 */
export function simulationTraceOf(trace: FullStopTrace): SimulationTrace {
  const four = (
    values: FullStopTrace['slip'],
  ): [frontLeft: number[], frontRight: number[], rearLeft: number[], rearRight: number[]] => [
    list(values[0]),
    list(values[1]),
    list(values[2]),
    list(values[3]),
  ];
  return {
    time_s: list(trace.time),
    speed_m_s: list(trace.speed),
    distance_m: list(trace.distance),
    deceleration_m_s2: list(trace.deceleration),
    pitch_rad: list(trace.pitch),
    pedalForce_N: list(trace.pedalForce),
    frontLinePressure_Pa: list(trace.frontLinePressure),
    yawMoment_Nm: list(trace.yawMoment),
    wheelSpeed_rad_s: four(trace.wheelSpeed),
    slip: four(trace.slip),
    load_N: four(trace.load),
    brakeForce_N: four(trace.brakeForce),
    brakeTorque_Nm: four(trace.brakeTorque),
    caliperPressure_Pa: four(trace.pressure),
    faceTemperature_degC: four(trace.faceTemperature),
  };
}

function list(values: Float64Array): number[] {
  return [...values];
}
