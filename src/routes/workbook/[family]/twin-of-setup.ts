import { incline } from '#core/workbook/incline/incline.ts';
import { textbookTwin, type TextbookTwin } from '#core/workbook/hang/textbook-twin.ts';
import { sharedSetup } from '#state/setup/shared.ts';
import { netMassOf } from '#state/setup/to-hang.ts';
import { problemLink } from '#state/workbook/problem-link.ts';

/** The textbook twin of the hang that Explore shows, with the query of its link. */
export function twinOfSharedSetup(): { found?: TextbookTwin; query?: string } {
	const found = textbookTwin(sharedSetup.results.hang, netMassOf(sharedSetup.current));
	if (!found) return {};
	return { found, query: problemLink(incline.quantities, found.given, found.ask) };
}
