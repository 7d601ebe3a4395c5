/**
 * Standard acceleration of free fall, m/s² (exact by definition). The core always uses this value.
 * Source: nistSp811, appendix B.
 */
export const standardGravity = 9.80665;
