import { cholesky } from './symmetric.ts';

function checkLengths(rows: number, fields: Record<string, readonly unknown[]>): void {
	for (const [name, values] of Object.entries(fields))
		if (values.length !== rows)
			throw new RangeError(`${name}: ${values.length} entries, but design has ${rows} rows`);
}

function checkDesign(design: readonly (readonly number[])[], used: (row: number) => boolean): void {
	const size = design[0]?.length ?? 0;
	if (size === 0)
		throw new RangeError(`design: ${design.length} rows of ${size} columns, needs at least 1 × 1`);
	design.forEach((row, i) => {
		if (row.length !== size)
			throw new RangeError(`design[${i}]: ${row.length} columns, not ${size} like the first row`);
		row.forEach((x, j) => {
			if (!Number.isFinite(x))
				throw new RangeError(`design[${i}][${j}]: ${x} is not a finite number`);
		});
	});
	const scale = design[0]!.map((_, j) => Math.hypot(...design.map((row) => row[j]!)) || 1);
	const gram = design[0]!.map((_, a) =>
		design[0]!.map((_, b) =>
			design.reduce(
				(sum, row, i) => sum + (used(i) ? (row[a]! / scale[a]!) * (row[b]! / scale[b]!) : 0),
				0
			)
		)
	);
	if (!cholesky(gram))
		throw new RangeError(
			'design: its columns depend on one another in the rows that have trials; allowed are independent columns'
		);
}

/** Refuses counts and designs that cannot be fitted. */
export function checkBinary(o: {
	successes: readonly number[];
	trials: readonly number[];
	design: readonly (readonly number[])[];
}): void {
	checkLengths(o.design.length, { successes: o.successes, trials: o.trials });
	o.trials.forEach((n, i) => {
		const k = o.successes[i]!;
		if (!Number.isInteger(n) || n < 0)
			throw new RangeError(`trials[${i}]: ${n} is not a whole number of at least 0`);
		if (!Number.isInteger(k) || k < 0 || k > n)
			throw new RangeError(`successes[${i}]: ${k} is not a whole number from 0 to ${n}`);
	});
	checkDesign(o.design, (i) => o.trials[i]! > 0);
}

/** Refuses times and designs that cannot be fitted. */
export function checkSurvival(o: {
	lower: readonly number[];
	upper: readonly number[];
	weights?: readonly number[];
	design: readonly (readonly number[])[];
}): void {
	checkLengths(o.design.length, { lower: o.lower, upper: o.upper, weights: o.weights ?? o.lower });
	o.lower.forEach((low, i) => {
		const high = o.upper[i]!;
		const weight = o.weights?.[i] ?? 1;
		if (!(low >= 0) || low === Infinity)
			throw new RangeError(`lower[${i}]: ${low} is not a number of at least 0`);
		if (!(high >= low) || high === 0)
			throw new RangeError(`upper[${i}]: ${high} is not at least lower[${i}] (${low}) and above 0`);
		if (!(weight >= 0) || weight === Infinity)
			throw new RangeError(`weights[${i}]: ${weight} is not a number of at least 0`);
	});
	checkDesign(o.design, (i) => (o.weights?.[i] ?? 1) > 0);
}
