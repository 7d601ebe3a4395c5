/** Says whether two plain values hold the same, whatever the order of their fields. */
export function sameRecord(one: unknown, other: unknown): boolean {
	if (Object.is(one, other)) return true;
	if (typeof one !== 'object' || typeof other !== 'object' || !one || !other) return false;
	if (Array.isArray(one) !== Array.isArray(other)) return false;
	const a = one as Record<string, unknown>;
	const b = other as Record<string, unknown>;
	const keys = (value: Record<string, unknown>) =>
		Object.keys(value).filter((key) => value[key] !== undefined);
	const names = keys(a);
	return (
		names.length === keys(b).length &&
		names.every((key) => Object.hasOwn(b, key) && sameRecord(a[key], b[key]))
	);
}
