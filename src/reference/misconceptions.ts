import type { Row } from './types.ts';

/** A wrong or half-right idea about friction, what is known of it, and a fair answer. */
export type MisconceptionRow = Row & { idea: string; evidence: string; reply: string };

export const misconceptions: readonly MisconceptionRow[] = [
	{
		key: 'against-motion',
		idea: 'Friction always points against the motion.',
		evidence: 'Found in more of 42 reviewed papers than any other; teachers hold it too.',
		reply:
			'It opposes the slip of one surface on the other, or the slip that would happen. It can drive a body forward.',
		source: ['kizilcik2021', 'carvalhoSousa2005', 'salazar1990'],
		status: 'seen'
	},
	{
		key: 'only-hinders',
		idea: 'Friction only stops or hinders things.',
		evidence: 'Reported as frequent.',
		reply: 'Walking, gripping and holding all need it.',
		source: ['kizilcik2021', 'iopSpark'],
		status: 'seen'
	},
	{
		key: 'only-moving',
		idea: 'There is friction only when something moves, or it is a fixed amount whenever surfaces touch.',
		evidence: 'Few students know that friction matches the push up to a limit.',
		reply:
			'At rest it is whatever balance needs, from nothing up to the coefficient times the normal force.',
		source: ['iopSpark'],
		status: 'seen'
	},
	{
		key: 'always-at-limit',
		idea: 'Friction at rest is always the coefficient times the normal force.',
		evidence:
			'For a block at rest on a slope some choose μ m g cos over m g sin; a published companion prints it so.',
		reply: 'Solve the balance first; compare with the limit afterwards.',
		source: ['umassA2L', 'openstaxUniversityPhysics'],
		status: 'seen'
	},
	{
		key: 'normal-is-weight',
		idea: 'The normal force is the weight.',
		evidence:
			'Teaching examples lean on it; posted answers to squeezed books and tongs make the mistake.',
		reply: 'It is whatever presses the surfaces together: a squeeze, a tilt or a curve changes it.',
		source: ['besson2007', 'iopSpark', 'jiskha1268402'],
		status: 'seen'
	},
	{
		key: 'more-area',
		idea: 'More contact area, more friction.',
		evidence: '145 middle-school students.',
		reply:
			'In the textbook model area drops out. For skin and rubber it may not: so here the idea is not simply wrong.',
		source: ['rissFriction', 'openstaxUniversityPhysics'],
		status: 'seen'
	},
	{
		key: 'push-beats-friction',
		idea: 'At rest the push is smaller than friction; at steady speed it is bigger.',
		evidence: 'The same 145 students.',
		reply: 'No acceleration means equal and opposite, in both.',
		source: ['rissFriction'],
		status: 'seen'
	},
	{
		key: 'heavier-slides',
		idea: 'Heavier things slide more easily, or need a steeper slope.',
		evidence: 'Often named by teachers; no study was read that counts it.',
		reply: 'In the textbook model the angle of slip does not contain the mass.',
		source: ['openstaxUniversityPhysics'],
		status: 'memory'
	},
	{
		key: 'one-friction',
		idea: 'Static, kinetic and rolling friction are one thing.',
		evidence: 'An often ignored distinction in the reviewed papers.',
		reply: 'Three things, with three numbers.',
		source: ['kizilcik2021'],
		status: 'seen'
	},
	{
		key: 'only-roughness',
		idea: 'Friction is interlocking roughness; smoother is always slipperier.',
		evidence: 'Interviews and a study of 215 high-school students.',
		reply: 'Sticking matters too; very smooth surfaces can hold very well.',
		source: ['corpuz2011', 'kurnaz2015', 'openstaxUniversityPhysics'],
		status: 'seen'
	},
	{
		key: 'not-a-force',
		idea: 'Friction is a happening or a property, not a force.',
		evidence: 'A research review.',
		reply: 'Draw it as an arrow on one body, from another.',
		source: ['iopSpark'],
		status: 'seen'
	},
	{
		key: 'active-force',
		idea: 'Friction is an active force of its own.',
		evidence: 'For 598 grade-10 students, stressing that it is passive helped.',
		reply: 'Ask first what would slip, and which way, without friction.',
		source: ['wangFriction'],
		status: 'seen'
	},
	{
		key: 'at-most-one',
		idea: 'A coefficient is at most 1.',
		evidence: 'Textbook habit: one key calls 1.84 unreasonable; other books print 1.17 and 5.',
		reply: 'Any positive number is allowed.',
		source: ['openstaxCollegePhysics', 'bakerHaynes', 'crowell'],
		status: 'seen'
	},
	{
		key: 'few-goes',
		idea: 'A handful of goes shows what is so.',
		evidence: 'Even trained researchers were found to expect too much of small samples.',
		reply:
			'Ask first how often luck alone would do as well, and whether anything else changed along with the load.',
		source: ['tverskyKahneman1971'],
		status: 'memory'
	}
];
