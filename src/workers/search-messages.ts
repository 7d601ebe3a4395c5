import type { SearchProgress, SearchRequest, StoryResult } from '#core/search/types.ts';

/** What the page asks of the search worker. The id is the page's own and comes back in each report. */
export type SearchCommand =
	/** Stops whatever runs, and starts. */
	| { type: 'start'; id: number; request: SearchRequest }
	/** Stops the search with this id; another one runs on. */
	| { type: 'cancel'; id: number };

/** What the worker tells the page. Each start ends in exactly one of done, cancelled and failed. */
export type SearchReport =
	| { type: 'progress'; id: number; progress: SearchProgress }
	| { type: 'done'; id: number; results: StoryResult[] }
	| { type: 'cancelled'; id: number }
	/** The request was not allowed; the message names field, value and allowed range. */
	| { type: 'failed'; id: number; message: string };
