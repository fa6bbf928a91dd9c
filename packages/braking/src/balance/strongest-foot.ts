/** N, the strongest foot that is asked. FMVSS 135 ends its wheel-lock test at 1 kN (S7.2, from memory). */
export const strongestFoot = 1000;
