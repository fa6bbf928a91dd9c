/** What the channel of a speed that was computed from positions is called; stops found by it are judged by that. */
export const speedFromPositionsName = 'speed from positions';
