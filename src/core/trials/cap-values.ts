/** A load may be this many times the heaviest held to the target time: judgement, as is trade custom for small steps. */
export const largestStep = 1.1;

/** First load as a share of the best guess, while nothing was held: judgement. */
export const firstShare = 0.5;

/** Highest chance of lying above the limit, and of opening: judgement. */
export const highestRisk = 0.25;

/** Forgives rounding where a load stands exactly on a cap. */
export const rounding = 1 + 1e-12;
