import type { MechanismRow } from '../types.ts';

/** Load effects that need no change in friction at all: where the pull points, and when. */
export const geometryMechanisms: readonly MechanismRow[] = [
	{
		key: 'rope-lean',
		line: 15,
		name: 'The assist rope leans',
		family: 'geometry',
		constantArea: 'either',
		constantPressure: 'either',
		biggerPatch: 'no change',
		loadEffect: 'either',
		grade: 'exact',
		support:
			'Statics. Away from the wall, more assist means a harder hold; toward it, an easier one.',
		range: '5° at half assist on a 33° slope changes the needed ratio by about 20 % either way',
		tellTale: 'The sign flips when the rope leads the other way.',
		test: 'Repeat the light hang with the rope led plumb, then toward the wall.',
		expressibleInHang: true,
		boardKey: 'ropeLean',
		parameters: [
			{
				field: 'ropeAngle',
				what: 'lean of the rope, away from the wall positive',
				unit: 'rad',
				start: 0.0873,
				range: [-0.35, 0.35],
				status: 'assumed',
				source: []
			}
		],
		source: ['openstaxUniversityPhysics', 'fuss2012chalk'],
		status: 'derived'
	},
	{
		key: 'steady-push',
		line: 15,
		name: 'A steady push outward',
		family: 'geometry',
		constantArea: 'better',
		constantPressure: 'better',
		biggerPatch: 'no change',
		loadEffect: 'heavier is easier',
		grade: 'exact',
		support:
			'Statics. Hips, knees or feet on the wall push the body out by the same force at every load; a heavier pull points more nearly down.',
		range: 'tens of newtons are enough; an inward push has the opposite sign',
		tellTale: 'Gone when nothing but the hands and a plumb rope touches anything.',
		test: 'Hang clear of the wall: no hip, knee or foot in contact.',
		expressibleInHang: true,
		boardKey: 'steadyPush',
		parameters: [
			{
				field: 'push',
				what: 'steady force on the hands, away from the wall positive',
				unit: 'N',
				start: 20,
				range: [-100, 100],
				status: 'assumed',
				source: []
			}
		],
		source: ['openstaxUniversityPhysics', 'fuss2012chalk'],
		status: 'derived'
	},
	{
		key: 'counterweight-left-on',
		line: 15,
		name: 'The counterweight stays on while plates are added',
		family: 'geometry',
		constantArea: 'either',
		constantPressure: 'either',
		biggerPatch: 'no change',
		loadEffect: 'either',
		grade: 'exact',
		support:
			'Statics. The same leaning rope pull at every load acts as a steady push; its share fades as plates are added.',
		range: '100 N at 10° is a push of 17 N',
		tellTale: 'Gone when the same net load is made without the rope.',
		test: 'Make one net load twice: with rope and plates, and with neither.',
		expressibleInHang: true,
		boardKey: 'counterweightLeftOn',
		parameters: [
			{
				field: 'assistForce',
				what: 'pull of the rope that stays on',
				unit: 'N',
				start: 150,
				range: [0, 400],
				status: 'assumed',
				source: []
			},
			{
				field: 'ropeAngle',
				what: 'lean of the rope, away from the wall positive',
				unit: 'rad',
				start: 0.0873,
				range: [-0.35, 0.35],
				status: 'assumed',
				source: []
			}
		],
		source: ['openstaxUniversityPhysics'],
		status: 'derived'
	},
	{
		key: 'swing-same-angle',
		line: 15,
		name: 'The body swings through the same angle',
		family: 'geometry',
		constantArea: 'no change',
		constantPressure: 'no change',
		biggerPatch: 'no change',
		loadEffect: 'no change',
		grade: 'exact',
		support:
			'Statics: the same lean of the pull at every load; harder than a still hang at all of them.',
		range: 'a few degrees',
		tellTale: 'Video from the side: the same swing at every load.',
		test: 'Have someone still the body before the hang counts.',
		expressibleInHang: false,
		boardKey: 'swingSameAngle',
		parameters: [
			{
				field: 'swingAngle',
				what: 'half swing',
				unit: 'rad',
				start: 0.0524,
				range: [0, 0.35],
				status: 'assumed',
				source: []
			}
		],
		source: ['openstaxUniversityPhysics'],
		status: 'derived'
	},
	{
		key: 'swing-same-impulse',
		line: 15,
		name: 'The body swings from the same sideways nudge',
		family: 'geometry',
		constantArea: 'better',
		constantPressure: 'better',
		biggerPatch: 'no change',
		loadEffect: 'heavier is easier',
		grade: 'exact',
		support:
			'Pendulum: with assist a smaller net load holds the same body back, so the same nudge swings it farther.',
		range: 'swing grows as one over the root of the net load; added mass damps it more',
		tellTale: 'Light hangs visibly swing more.',
		test: 'Still the body, or film from the side and compare swings.',
		expressibleInHang: false,
		boardKey: 'swingSameImpulse',
		parameters: [
			{
				field: 'swingAngle',
				what: 'half swing at the hanging mass, no assist',
				unit: 'rad',
				start: 0.0524,
				range: [0, 0.35],
				status: 'assumed',
				source: []
			}
		],
		source: ['openstaxUniversityPhysics'],
		status: 'derived'
	},
	{
		key: 'squeeze',
		line: 15,
		name: 'The hand squeezes the hold',
		family: 'geometry',
		constantArea: 'worse',
		constantPressure: 'worse',
		biggerPatch: 'no change',
		loadEffect: 'lighter is easier',
		grade: 'exact',
		support:
			'A thumb or wrap adds the same squeeze at every load, which counts for more in a light hang. People squeeze light things relatively harder. If effort raises the squeeze faster than the load, the sign turns.',
		range: '100 N on a 33° slope: needed ratio 0.48 at 350 N, 0.55 at 700 N',
		tellTale: 'Gone with an open hand and the thumb off.',
		test: 'Thumb off, fingers flat: nothing to pinch.',
		expressibleInHang: false,
		boardKey: 'squeeze',
		parameters: [
			{
				field: 'squeeze',
				what: 'extra press of both hands together, square to the hold',
				unit: 'N',
				start: 50,
				range: [0, 200],
				status: 'assumed',
				source: []
			}
		],
		source: ['hiramatsu2015'],
		status: 'derived'
	},
	{
		key: 'rounded-hold',
		line: 14,
		name: 'The patch reaches a steeper part of a rounded hold',
		family: 'geometry',
		constantArea: 'no change',
		constantPressure: 'either',
		biggerPatch: 'worse',
		loadEffect: 'lighter is easier',
		grade: 'fair',
		support:
			'Geometry. A pad that grows under load lies, on average, on a steeper part, even with a constant ratio.',
		range: 'slope changes of degrees for radii of 20 to 100 mm',
		tellTale: 'None on a flat hold of the same surface.',
		test: 'Mark the patch with chalk or ink at two loads.',
		expressibleInHang: true,
		boardKey: 'roundedHold',
		parameters: [
			{
				field: 'radius',
				what: 'radius of the hold',
				unit: 'm',
				start: 0.06,
				range: [0.02, 0.5],
				status: 'assumed',
				source: []
			},
			{
				field: 'exponent',
				what: 'the pad grows as this power of its load',
				unit: '1',
				start: 0.32,
				range: [0, 0.67],
				status: 'memory',
				source: []
			}
		],
		source: ['gripDifficulty2012'],
		status: 'derived',
		note: 'The table’s “worse” for more load on the same patch means sliding to a steeper part; a patch that neither moves nor grows changes nothing.'
	}
];
