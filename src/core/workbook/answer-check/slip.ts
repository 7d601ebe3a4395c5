/** A slip and the answer it leads to in this very problem. */
export type Slip = {
	slip: string;
	words: string;
	/** Quantity whose step went wrong. */
	step: string;
	value: number;
	/** 1 named first, 3 last. */
	rank: number;
};
