const day = 86_400;

/**
 * Carries times of day over midnight: a reading more than twelve hours before the one before it is the next day's. A
 * smaller step back stays one, and the time base starts a new segment there.
 *
 * @returns takes s since midnight, gives s since the first midnight; NaN stays NaN and is forgotten
 */
export function midnightCounter(): (seconds: number) => number {
  let midnights = 0;
  let last = -Infinity;
  return (seconds) => {
    if (Number.isNaN(seconds)) return NaN;
    if (seconds < last - day / 2) midnights += 1;
    else if (seconds > last + day / 2 && midnights > 0) midnights -= 1;
    last = seconds;
    return seconds + midnights * day;
  };
}
