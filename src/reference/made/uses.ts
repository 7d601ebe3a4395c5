import tables from './uses.json' with { type: 'json' };

/** Names of the pages that use a table of facts, by the table's file; gathered by scripts/gather-facts.mjs. */
export const uses = tables as Readonly<Record<string, readonly string[]>>;
