import { requireAllowed } from '../units/allowed-range.ts';
import { meanAndSpread, type Measured, type Repeated } from './measured.ts';

const quarterTurn = { min: -Math.PI / 2, max: Math.PI / 2, unit: 'rad' };

/**
 * Turns a phone's orientation into the pitch of its long side and the tilt of its face.
 * along = asin(sin β), total = acos(cos β cos γ)
 * @param o.beta front-to-back turn β, rad, −π to π
 * @param o.gamma left-to-right turn γ, rad, −π/2 to π/2
 * @returns along: angle of the long side above the horizontal, rad, positive when the top edge is
 * up; total: angle of the face from level, rad, 0 to π
 * Valid for: a phone at rest. The two agree in size when the long side lies straight up the slope.
 * @throws RangeError for a field outside its range
 * Source: w3cOrientation
 * Example: beta 30°, gamma 0: along 30°, total 30°.
 */
export function tiltFromOrientation(o: { beta: number; gamma: number }): {
	along: number;
	total: number;
} {
	requireAllowed('beta', o.beta, { min: -Math.PI, max: Math.PI, unit: 'rad' });
	requireAllowed('gamma', o.gamma, quarterTurn);
	const upright = Math.cos(o.beta) * Math.cos(o.gamma);
	return {
		along: Math.asin(Math.sin(o.beta)),
		total: Math.acos(Math.min(1, Math.max(-1, upright)))
	};
}

/**
 * Finds the zero of a phone's level from two readings on one surface, the second turned half round.
 * zero = (first + second)/2, tilt of the surface = (first − second)/2
 * @param first reading, rad, −π/2 to π/2, with its spread
 * @param second reading after half a turn in place
 * @returns zero to take off every reading, with its spread, and the tilt of the surface itself
 * Valid for: the same spot and the same axis; no level surface is needed.
 * @throws RangeError for a field outside its range
 * Source: common practice
 * Example: 3° and −1°: zero 1°, the table leans by 2°.
 */
export function levelZero(first: Measured, second: Measured): Measured & { tilt: number } {
	requireAllowed('first.value', first.value, quarterTurn);
	requireAllowed('second.value', second.value, quarterTurn);
	requireAllowed('first.spread', first.spread, { min: 0, unit: 'rad' });
	requireAllowed('second.spread', second.spread, { min: 0, unit: 'rad' });
	return {
		value: (first.value + second.value) / 2,
		spread: Math.hypot(first.spread, second.spread) / 2,
		tilt: (first.value - second.value) / 2
	};
}

/**
 * Finds a slope from the last moments of a phone's readings, less the zero of its level.
 * value = mean of the readings in the window − zero, spread = √(s² + s_zero²)
 * @param samples readings in order of time: time, s; angle, rad, −π/2 to π/2
 * @param o.window length of the window that ends at the last reading, s, above 0 (default 2)
 * @param o.zero from levelZero; leave out for a phone that is trusted
 * @returns slope, rad, and the spread of one reading; standardError counts the readings as
 * independent, which a sensor's are not quite
 * Valid for: a phone that lies still. A window that holds fewer than three readings is refused.
 * @throws RangeError for a field outside its range, or times that run backward
 * Source: derived.
 * Example: three readings of 30°, 31° and 32° within two seconds: 31°, spread 1°.
 */
export function slopeFromSamples(
	samples: readonly { time: number; angle: number }[],
	o: { window?: number; zero?: Measured } = {}
): Repeated {
	const { window = 2, zero = { value: 0, spread: 0 } } = o;
	requireAllowed('window', window, { above: 0, unit: 's' });
	requireAllowed('zero.value', zero.value, quarterTurn);
	requireAllowed('zero.spread', zero.spread, { min: 0, unit: 'rad' });
	let before = -Infinity;
	samples.forEach(({ time, angle }, at) => {
		requireAllowed(`samples[${at}].time`, time, Number.isFinite(before) ? { min: before } : {});
		requireAllowed(`samples[${at}].angle`, angle, quarterTurn);
		before = time;
	});
	const recent = samples.filter(({ time }) => time >= before - window);
	requireAllowed('samples within the window', recent.length, { min: 3, whole: true });
	const readings = meanAndSpread(
		'samples',
		recent.map(({ angle }) => angle)
	);
	return {
		value: readings.value - zero.value,
		spread: Math.hypot(readings.spread, zero.spread),
		standardError: Math.hypot(readings.standardError, zero.spread),
		count: readings.count
	};
}
