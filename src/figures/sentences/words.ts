import type { evaluateHang } from '#core/strength/evaluate-hang.ts';
import type { Interval, Load } from '#core/types.ts';
import { formatNumber } from '#core/units/format-number.ts';
import { type MassUnit, massText, massWord } from '#core/units/mass-text.ts';

type Contact = ReturnType<typeof evaluateHang>;

/** What the sentences speak of; SI, masses in kg. */
export type Situation = {
	contact: Contact;
	load: Load;
	/** The same hang one kilogram heavier. */
	heavier: Contact;
	heavierLoad: Load;
	netMass: number;
	/** Change of ln slip margin with ln load; NaN where the margin is 0 or infinite. */
	elasticity: number;
	window: Interval[];
	/** Where no load holds: the loads at which friction alone would be enough. */
	slipWindow?: Interval[] | undefined;
	range: { from: number; to: number };
	/** Mass of the body: below it a rope takes load off. */
	hangingMass: number;
	ropeAngle: number;
	push: number;
	holdTime: number;
	fingers: number;
	estimated: boolean;
	massUnit: MassUnit;
};

const neutral = 1e-6;
/** A share in per cent; one that falls short of the whole is never rounded up to it. */
function percent(share: number): string {
	const short = share < 1 && Number((100 * share).toPrecision(2)) >= 100;
	const shown = short ? Math.min(99.99, 100 * share) : 100 * share;
	return `${formatNumber(shown, { digits: short ? 4 : 2 })}\u00a0%`;
}
const seconds = (time: number) => `${formatNumber(time)}\u00a0s`;

/** Which of the four states the hang is in. */
export function stateOf(contact: Contact): 'holds' | 'slips' | 'opens' | 'both' | 'off' {
	if (contact.normal <= 0) return 'off';
	if (contact.holds) return 'holds';
	const slips = contact.slipMargin < 1 - 1e-12;
	const opens = contact.strengthMargin < 1 - 1e-12;
	return slips && opens ? 'both' : slips ? 'slips' : 'opens';
}

/** First sentence: what happens, and how far each limit lets it go. */
export function whatHappens(s: Situation): string {
	const mass = massText(s.netMass, s.massUnit);
	const strength = s.estimated ? 'estimated finger strength' : 'finger strength';
	const fingers = s.fingers === 1 ? 'the finger opens' : 'the fingers open';
	switch (stateOf(s.contact)) {
		case 'off':
			return `At ${mass} the pull leads off the hold: nothing presses the ${s.fingers === 1 ? 'fingertip' : 'fingertips'} on, so no friction ratio can hold it. Bring the rope nearer to plumb or choose a gentler slope.`;
		case 'holds':
			return `At ${mass} this hang holds.`;
		case 'slips':
			return `At ${mass} the hand slips: friction gives ${percent(s.contact.slipMargin)} of what the slope needs.`;
		case 'opens':
			return `At ${mass} ${fingers}: ${strength} carries ${percent(s.contact.strengthMargin)} of this load for ${seconds(s.holdTime)}.`;
		case 'both':
			return `At ${mass} both limits are passed: friction gives ${percent(s.contact.slipMargin)} of what the slope needs, and ${strength} carries ${percent(s.contact.strengthMargin)} of the load for ${seconds(s.holdTime)}.`;
	}
}

/** Which limit is nearer, in load; or that more load does not change it. */
export function nearerLimit(s: Situation): string {
	const { window, netMass, range, massUnit } = s;
	const fixedSlip = Math.abs(s.elasticity) < neutral && s.contact.slipMargin > 0;
	const neverSlips =
		s.contact.slipMargin === Infinity
			? ' There is no slip limit here: the pull does not lead down the hold.'
			: fixedSlip
				? ' Load does not change the slip limit.'
				: '';
	const inside = window.find(({ from, to }) => netMass >= from - 1e-7 && netMass <= to + 1e-7);
	if (inside) {
		const edges = [
			{ limit: inside.lowerLimit, distance: netMass - inside.from, way: 'lighter' },
			{ limit: inside.upperLimit, distance: inside.to - netMass, way: 'heavier' }
		].filter(({ limit }) => limit !== 'range');
		edges.sort((a, b) => a.distance - b.distance);
		const [nearest, other] = edges;
		if (!nearest) {
			return `No load from ${massText(range.from, massUnit)} to ${massText(range.to, massUnit)} reaches a limit.${neverSlips}`;
		}
		const first = `The nearer limit is ${limitName(nearest.limit)}, ${massText(nearest.distance, massUnit)} ${nearest.way}`;
		const second = other
			? `; ${limitName(other.limit)} comes ${massText(other.distance, massUnit)} ${other.way}`
			: '';
		return `${first}${second}.${neverSlips}`;
	}
	if (window.length === 0) {
		return `No load from ${massText(range.from, massUnit)} to ${massText(range.to, massUnit)} holds here.${neverSlips}`;
	}
	const edges = window.flatMap((interval) => [
		{ at: interval.from, limit: interval.lowerLimit },
		{ at: interval.to, limit: interval.upperLimit }
	]);
	edges.sort((a, b) => Math.abs(a.at - netMass) - Math.abs(b.at - netMass));
	const nearest = edges[0]!;
	const way = nearest.at < netMass ? 'lighter' : 'heavier';
	return `It would hold ${massText(Math.abs(nearest.at - netMass), massUnit)} ${way}, at ${massText(nearest.at, massUnit)}.${neverSlips}`;
}

/** The lightest and the heaviest load that hold, or each stretch where there are two. */
export function whatHolds(s: Situation): string {
	const { window, massUnit } = s;
	const [only] = window;
	if (!only) return nothingHolds(s);
	if (window.length === 1) {
		return `${capital(edgeWords(only, 'from', massUnit))}; ${edgeWords(only, 'to', massUnit)}.`;
	}
	const stretches = window.map(
		({ from, to }) => `${massText(from, massUnit)} to ${massText(to, massUnit)}`
	);
	const count = window.length === 2 ? 'Two stretches' : `${window.length} stretches`;
	return `${count} of load hold: ${stretches.slice(0, -1).join(', ')} and ${stretches.at(-1)}. Between them the hang fails.`;
}

function nothingHolds({ slipWindow, massUnit, fingers }: Situation): string {
	const [first] = slipWindow ?? [];
	if (!first) return 'Friction is too little at every load.';
	const open = fingers === 1 ? 'the finger opens' : 'the fingers open';
	return first.lowerLimit === 'range'
		? `Even the lightest load is more than ${fingers === 1 ? 'the finger holds' : 'the fingers hold'}.`
		: `Friction is enough only from ${massText(first.from, massUnit)}, and there ${open}.`;
}

function edgeWords(interval: Interval, end: 'from' | 'to', unit: MassUnit): string {
	const limit = end === 'from' ? interval.lowerLimit : interval.upperLimit;
	const mass = massText(interval[end], unit);
	if (limit === 'range') {
		return end === 'from'
			? `every lighter load down to ${mass} holds`
			: `every heavier load up to ${mass} holds`;
	}
	const why = limit === 'slip' ? 'the hand slips' : 'the fingers open';
	return end === 'from'
		? `the lightest load that holds is ${mass} (below it ${why})`
		: `the heaviest that holds is ${mass} (above it ${why})`;
}

/** What one more kilogram does to the slip margin, and why. */
export function oneMore(s: Situation): string {
	const { contact, heavier, massUnit } = s;
	const more =
		massUnit === 'kg' ? 'One more kilogram' : `One more kilogram (2.2 ${massWord('lb')})`;
	const strength = strengthChange(s);
	if (contact.normal <= 0) {
		return heavier.normal > 0
			? `${more} turns the pull back on to the hold.`
			: `${more} does not bring the pull back on to the hold.`;
	}
	if (!Number.isFinite(contact.slipMargin)) {
		return `${more} cannot make this hold slip: it is held by its edge. ${strength}`;
	}
	if (contact.slipMargin === 0) {
		return `${more} leaves friction at nothing. ${strength}`;
	}
	const change = heavier.slipMargin / contact.slipMargin - 1;
	const size = percent(Math.abs(change));
	const reasons = reasonsOf(s);
	if (Math.abs(change) < 1e-9) {
		return `${more} leaves the slip margin as it is: ${reasons}. ${strength}`;
	}
	const says =
		change > 0 ? `raises the slip margin by ${size}` : `lowers the slip margin by ${size}`;
	return `${more} ${says}: ${reasons}. ${strength}`;
}

/** Whether heavier is easier here, as far as slipping goes. */
export function loadEffect(s: Situation): 'easier' | 'harder' | 'neutral' | 'none' {
	if (!Number.isFinite(s.elasticity)) return 'none';
	if (Math.abs(s.elasticity) < neutral) return 'neutral';
	return s.elasticity > 0 ? 'easier' : 'harder';
}

function strengthChange({ contact, heavier }: Situation): string {
	if (!Number.isFinite(contact.strengthMargin)) return 'The pull does not try to open the fingers.';
	const change = heavier.strengthMargin / contact.strengthMargin - 1;
	const verb = change <= 0 ? 'takes' : 'adds';
	return `It ${verb} ${percent(Math.abs(change))} ${change <= 0 ? 'off' : 'to'} the strength margin.`;
}

function reasonsOf(s: Situation): string {
	const { contact, heavier, load, heavierLoad } = s;
	const reasons: string[] = [];
	const ratioChange = heavier.ratio / contact.ratio - 1;
	if (Math.abs(ratioChange) < 1e-9) reasons.push('the friction ratio is unchanged');
	else {
		const pressure = heavier.pressure > contact.pressure ? 'rises' : 'falls';
		reasons.push(
			`the friction ratio ${ratioChange > 0 ? 'rises' : 'falls'} as the pressure ${pressure}`
		);
	}
	const tiltChange = heavierLoad.tilt - load.tilt;
	if (Math.abs(tiltChange) > 1e-12) {
		const roped = s.netMass < s.hangingMass && s.ropeAngle !== 0;
		const way = tiltChange < 0 ? 'less' : 'more';
		const cause = roped
			? 'the rope takes less and so leans the pull less'
			: 'the steady push counts for less';
		reasons.push(`${cause}, so the hold needs ${way} friction`);
	}
	const steeper = heavier.meanSlope - contact.meanSlope;
	if (Math.abs(steeper) > 1e-9) {
		reasons.push('the growing patch reaches on to steeper ground');
	}
	if (reasons.length === 1 && Math.abs(ratioChange) < 1e-9) {
		reasons.push('pressing and sliding grow alike, so the load cancels');
	}
	return reasons.length > 2
		? `${reasons.slice(0, -1).join(', ')}, and ${reasons.at(-1)}`
		: reasons.join(', and ');
}

function limitName(limit: Interval['lowerLimit']): string {
	return limit === 'slip' ? 'the slip edge' : 'the strength edge';
}

function capital(text: string): string {
	return text.charAt(0).toUpperCase() + text.slice(1);
}
