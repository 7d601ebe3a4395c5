/** Points of each margin curve in a lesson's picture. */
export const curvePoints = 90;
