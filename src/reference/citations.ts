import { skinFrictionCitations } from './citations/skin-friction.ts';
import { skinContactCitations } from './citations/skin-contact.ts';
import { holdFrictionCitations } from './citations/hold-friction.ts';
import { fingerStrengthCitations } from './citations/finger-strength.ts';
import { fingerAnatomyCitations } from './citations/finger-anatomy.ts';
import { trialsAndRopeCitations } from './citations/trials-and-rope.ts';
import { safetyCitations } from './citations/safety.ts';
import { statisticsCitations } from './citations/statistics.ts';
import { pairedOutcomeCitations } from './citations/paired-outcomes.ts';
import { numericsCitations } from './citations/numerics.ts';
import { unitsCitations } from './citations/units.ts';
import { textbookCitations } from './citations/textbooks.ts';
import { frictionStandardCitations } from './citations/friction-standards.ts';

/**
 * Every source that a number, claim or formula of the product rests on, by key.
 * A key names one work (first author and year, or a standard's or page's name); the code's
 * docstrings, the reference rows and the lessons point here, and a test follows each pointer.
 */
export const citations = {
	...skinFrictionCitations,
	...skinContactCitations,
	...holdFrictionCitations,
	...fingerStrengthCitations,
	...fingerAnatomyCitations,
	...trialsAndRopeCitations,
	...safetyCitations,
	...statisticsCitations,
	...pairedOutcomeCitations,
	...numericsCitations,
	...unitsCitations,
	...textbookCitations,
	...frictionStandardCitations
};

export type CitationKey = keyof typeof citations;
