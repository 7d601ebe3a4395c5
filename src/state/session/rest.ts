/** Rest left, s: from the moment the last trial was logged, whatever happened since; null: none. */
export function restLeft(
	loggedAt: number | null | undefined,
	restSeconds: number | null,
	now: number
): number | null {
	if (loggedAt === null || loggedAt === undefined || restSeconds === null) return null;
	// A clock set back must not make anybody wait longer than a rest.
	return Math.min(restSeconds, restSeconds - (now - loggedAt) / 1000);
}

/** 83 s as 1:23; a rest that is over counts on as a plus. */
export function clockText(seconds: number): string {
	const whole = Math.ceil(Math.abs(seconds) - 1e-9);
	return `${seconds < 0 ? '+' : ''}${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}
