/** Stands for a value that no number describes; callers with something better to say, say it. */
const none = '–';

function plain(value: number): string {
	const [whole = '0', part] = Math.abs(value).toString().split('.');
	const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, '\u202f') : whole;
	return (value < 0 ? '−' : '') + grouped + (part ? `.${part}` : '');
}

/** A tick's value: round already, so only the rounding noise of its making is cut off. */
export function formatTick(value: number): string {
	if (!Number.isFinite(value)) return none;
	const rounded = Number(value.toPrecision(6));
	return rounded === 0 ? '0' : plain(rounded);
}

/** A ratio's tick as one would say it: 0.25, 0.35, 0.5, 0.7, 1, 1.4, 2, 2.8. */
export function formatRatioTick(value: number): string {
	if (!Number.isFinite(value)) return none;
	const said = value >= 0.5 && value < 10 ? Math.round(value * 10) / 10 : value;
	return plain(Number(said.toPrecision(2)));
}

/** A shown number with its unit: "63.6 kg", "32°". */
export function withUnit(number: string, unit: string): string {
	return unit === '' || unit.startsWith('°') ? number + unit : `${number}\u00a0${unit}`;
}
