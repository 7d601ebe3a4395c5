export type FaultKind =
	| 'full'
	| 'blocked'
	| 'unavailable'
	| 'newer-schema'
	| 'aborted'
	| 'damaged'
	| 'invalid'
	| 'missing-reference'
	| 'referenced'
	| 'changed-since'
	| 'nothing-to-undo'
	| 'cancelled';

/** What to tell people: what happened, and what to do next. */
const advice: Record<FaultKind, string> = {
	full: 'The device has no room left for the notebook. Nothing of this change was kept. Download the notebook as a file, then free some space.',
	blocked:
		'Another tab holds the notebook in an older version. Close the other tabs of this site, then try again.',
	unavailable:
		'This browser does not let the page keep anything, as in some private windows. Download the notebook as a file before you close the page.',
	'newer-schema':
		'The notebook on this device was written by a newer version of this page. Reload the page.',
	aborted: 'The change could not be kept, and nothing of it was. Try again.',
	damaged:
		'The notebook on this device cannot be read. Nothing was changed. Close all tabs of this site and try again.',
	invalid: 'A value is not allowed.',
	'missing-reference': 'Something this belongs to was deleted meanwhile. Undo that first.',
	referenced: 'Something else in the notebook still needs this.',
	'changed-since': 'This was changed again since, so it cannot be undone on its own.',
	'nothing-to-undo': 'There is nothing to undo.',
	cancelled: 'Cancelled. Nothing was changed.'
};

/** Everything that can go wrong with the notebook’s store, by kind, in words for people. */
export class StorageFault extends Error {
	readonly kind: FaultKind;
	readonly detail: string | null;

	constructor(kind: FaultKind, detail: string | null = null, options?: ErrorOptions) {
		super(detail ? `${advice[kind]} (${detail})` : advice[kind], options);
		this.name = 'StorageFault';
		this.kind = kind;
		this.detail = detail;
	}
}

/** Turns whatever the browser throws into a fault of ours. */
export function faultFrom(error: unknown): StorageFault {
	if (error instanceof StorageFault) return error;
	const name = error instanceof Error || error instanceof DOMException ? error.name : '';
	const detail = error instanceof Error ? error.message || name : String(error);
	const kinds: Record<string, FaultKind> = {
		QuotaExceededError: 'full',
		VersionError: 'newer-schema',
		SecurityError: 'unavailable',
		NotAllowedError: 'unavailable',
		NotSupportedError: 'unavailable',
		AbortError: 'aborted',
		TransactionInactiveError: 'aborted',
		UnknownError: 'damaged',
		DataError: 'damaged',
		NotFoundError: 'damaged'
	};
	return new StorageFault(kinds[name] ?? 'aborted', detail, { cause: error });
}
