import type { Dimension } from './units.ts';

/** Which record of a row a column belongs to. */
export type Part = 'person' | 'hold' | 'grip' | 'session' | 'trial';

/** How a cell is read and written. */
export type Cell =
	| { type: 'text' }
	| { type: 'text-or-null' }
	| { type: 'word' }
	| { type: 'yes-no' }
	| { type: 'moment' }
	| { type: 'day' }
	| { type: 'number'; dimension?: Dimension };

export type Column = {
	part: Part;
	field: string;
	/** Our own header; the unit stands in brackets. */
	header: string;
	cell: Cell;
	/** Other names under which people keep it. */
	also?: string[];
};

const text: Cell = { type: 'text' };
const word: Cell = { type: 'word' };
const mark: Cell = { type: 'text-or-null' };
const yesNo: Cell = { type: 'yes-no' };
const plain: Cell = { type: 'number' };
const measured = (dimension: Dimension): Cell => ({ type: 'number', dimension });

const column = (
	part: Part,
	field: string,
	header: string,
	cell: Cell,
	also?: string[]
): Column => ({
	part,
	field,
	header,
	cell,
	...(also && { also })
});

/** One row a trial: the columns of our own files, in order. */
export const columns: readonly Column[] = [
	column('session', 'day', 'day', { type: 'day' }, ['date', 'session date']),
	column('trial', 'order', 'trial number', plain, ['trial', 'number', 'order', 'no', '#', 'nr']),
	column('trial', 'kind', 'kind of trial', word, ['kind', 'type']),
	column('person', 'label', 'person', text, ['name', 'who', 'label']),
	column('hold', 'label', 'hold', text, ['hold name']),
	column('grip', 'label', 'grip', text, ['grip name', 'grip type']),
	column('trial', 'loadKg', 'net load [kg]', measured('mass'), ['load', 'net mass', 'net']),
	column('trial', 'outcome', 'outcome', word, ['result']),
	column('trial', 'seconds', 'time held [s]', measured('time'), ['seconds', 'time', 'hold time']),
	column('trial', 'stopReason', 'stopped because', word, ['reason', 'stop reason']),
	column('trial', 'reached', 'load reached by', word, ['reached by']),
	column('trial', 'addedKg', 'added [kg]', measured('mass'), ['added load', 'plates']),
	column('trial', 'counterweightKg', 'counterweight [kg]', measured('mass'), ['assist']),
	column('trial', 'ropeDegrees', 'rope lean [deg]', measured('angle'), ['rope angle', 'rope']),
	column('trial', 'ropeSide', 'rope side', word, ['side']),
	column('trial', 'brushed', 'brushed', yesNo),
	column('trial', 'note', 'note', text, ['notes', 'comment', 'comments', 'remark']),
	column('trial', 'leftOut', 'left out because', mark, ['left out', 'excluded']),
	column('trial', 'loggedAt', 'logged at [UTC]', { type: 'moment' }, ['timestamp']),
	column('person', 'bodyMassKg', 'body mass [kg]', measured('mass'), ['body weight']),
	column('person', 'adult', 'adult', yesNo),
	column('hold', 'slopeDegrees', 'hold slope [deg]', measured('angle'), ['slope']),
	column('hold', 'slopeMethod', 'slope measured by', text),
	column('hold', 'radiusMm', 'hold radius [mm]', measured('length'), ['radius']),
	column('hold', 'surface', 'hold surface', text, ['surface']),
	column('hold', 'condition', 'hold condition', text, ['condition']),
	column('grip', 'fingers', 'fingers', plain),
	column('grip', 'hands', 'hands', plain),
	column('grip', 'patchMm2', 'patch of one fingertip [mm2]', measured('area'), [
		'patch',
		'pad area'
	]),
	column('session', 'bodyMassKg', 'body mass that day [kg]', measured('mass')),
	column('session', 'targetSeconds', 'target time [s]', measured('time'), ['target']),
	column('session', 'restSeconds', 'rest [s]', measured('time'), ['rest time']),
	column('session', 'brushing', 'brushing routine', text),
	column('session', 'chalk', 'chalk routine', text, ['chalk']),
	column('session', 'skin', 'skin as felt', text, ['skin']),
	column('session', 'airCelsius', 'air temperature [C]', measured('temperature'), ['temperature']),
	column('session', 'humidityPercent', 'air humidity [%]', measured('share'), ['humidity']),
	column('session', 'checkLoadKg', 'check load [kg]', measured('mass')),
	column('session', 'plannedTrials', 'planned trials', plain),
	column('session', 'meanRopeTerm', 'mean rope term', plain),
	column('session', 'note', 'session note', text),
	column('trial', 'id', 'trial id', mark),
	column('session', 'id', 'session id', mark),
	column('person', 'id', 'person id', mark),
	column('hold', 'id', 'hold id', mark),
	column('grip', 'id', 'grip id', mark),
	column('session', 'planId', 'plan id', mark)
];

/** Without these a row is no trial. */
export const required: readonly string[] = ['loadKg', 'outcome'];
