/** The day of a moment as the device's calendar has it: 2026-03-09. */
export function dayOf(moment: number): string {
	const date = new Date(moment);
	const two = (number: number) => String(number).padStart(2, '0');
	return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}

/** A day in words: 9 March 2026. */
export function dayText(day: string): string {
	const date = new Date(`${day}T12:00:00`);
	return Number.isNaN(date.getTime())
		? day
		: date.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
}
