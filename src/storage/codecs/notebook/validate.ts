import * as v from 'valibot';
import { schemas } from './records.ts';
import type { Kind, Records } from './records.ts';

/** One thing wrong with a record: which field, and what, in plain words. */
export type Fault = { field: string; reason: string };

/** Checks a record against its schema; unknown fields are named, and dropped from the result. */
export function validate<K extends Kind>(
	kind: K,
	value: unknown
): { record: Records[K]; unknown: string[] } | { faults: Fault[] } {
	const schema = schemas[kind];
	const result = v.safeParse(schema, value);
	if (!result.success) {
		return {
			faults: result.issues.map((issue) => ({
				field: v.getDotPath(issue) ?? 'record',
				reason: reasonOf(issue)
			}))
		};
	}
	const unknown = Object.keys(value as object).filter((key) => !(key in schema.entries));
	return { record: result.output as Records[K], unknown };
}

/** Our own messages stand; the library's are turned into one plain sentence. */
function reasonOf(issue: v.BaseIssue<unknown>): string {
	if (issue.received === 'undefined') return 'is missing';
	if (!issue.message.startsWith('Invalid ')) return issue.message;
	return `is ${issue.received}; expected ${issue.expected ?? 'something else'}`;
}
