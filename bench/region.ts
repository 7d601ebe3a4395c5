// Times the holding region against the named baseline, a 400 × 400 grid of evaluateHang contoured
// with d3-contour, and measures how far each one's edges lie from the true ones.
import { holdingRegion } from '../src/core/index.ts';
import { contourRegion } from './region/baseline.ts';
import { axes, cases, load } from './region/cases.ts';
import { edgeError } from './region/edge-error.ts';
import { edgeLines } from './region/lines.ts';

const columns = 240;

function medianTime(repeats: number, work: () => unknown): number {
	const times = Array.from({ length: repeats }, () => {
		const start = performance.now();
		work();
		return performance.now() - start;
	}).sort((a, b) => a - b);
	return times[Math.floor(repeats / 2)]!;
}

/** Processor time of one run, ms: unlike the median it does not count waiting on a busy machine. */
function processorTime(repeats: number, work: () => unknown): number {
	const start = process.cpuUsage();
	for (let i = 0; i < repeats; i++) work();
	const { user, system } = process.cpuUsage(start);
	return (user + system) / 1000 / repeats;
}

const header = [
	'case'.padEnd(26),
	'axis'.padEnd(12),
	...[
		'region ms',
		'its cpu ms',
		'grid ms',
		'ratio',
		'edge error',
		'grid error',
		'error ratio',
		'between'
	].map((words) => words.padStart(11))
];
console.log(
	`Holding region of one axis, ${columns} columns, against the grid. Errors in plot units:`
);
console.log(
	'at the points each gives; "between" is midway on straight lines from point to point.\n'
);
console.log(header.join(' '));

const worst = { time: 0, busy: 0, ratio: Infinity, errorRatio: 0 };
for (const { name, hang } of cases) {
	for (const range of axes) {
		const options = { ...range, load };
		const region = () => holdingRegion(hang, { ...options, columns });
		const grid = () => contourRegion(hang, options);
		for (let i = 0; i < 30; i++) region();
		const ours = medianTime(101, region);
		const oursBusy = processorTime(101, region);
		const theirs = medianTime(3, grid);
		const error = edgeError(hang, edgeLines(hang, region(), options), options, {
			frame: 0,
			midway: true
		});
		const gridError = edgeError(hang, grid(), options, { frame: 1 / 399, midway: false });
		const ratio = theirs / ours;
		const errorRatio = error.atPoints / gridError.atPoints;
		worst.time = Math.max(worst.time, ours);
		worst.busy = Math.max(worst.busy, oursBusy);
		worst.ratio = Math.min(worst.ratio, ratio);
		if (gridError.atPoints > 0) worst.errorRatio = Math.max(worst.errorRatio, errorRatio);
		const cells = [
			ours.toFixed(2),
			oursBusy.toFixed(2),
			theirs.toFixed(0),
			ratio.toFixed(0),
			error.atPoints.toExponential(1),
			gridError.atPoints.toExponential(1),
			gridError.atPoints > 0 ? errorRatio.toExponential(1) : 'no edge',
			error.between.toExponential(1)
		].map((cell) => cell.padStart(11));
		console.log([name.padEnd(26), range.axis.padEnd(12), ...cells].join(' '));
	}
}
console.log(
	`\nWorst of all: ${worst.time.toFixed(2)} ms (aim at most 4; ${worst.busy.toFixed(2)} ms of processor), ${worst.ratio.toFixed(0)} times the grid's speed ` +
		`(at least 20), edge error ${worst.errorRatio.toExponential(1)} of the grid's (at most 1e-2).`
);
