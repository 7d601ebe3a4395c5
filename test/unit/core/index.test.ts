import { expect, test } from 'vitest';
import * as core from '#core/index.ts';

test('the public surface has these functions and no others', () => {
	expect(Object.keys(core).sort()).toEqual([
		'counterweightForce',
		'enduranceFraction',
		'enduranceTime',
		'evaluateHang',
		'fitBinary',
		'fitSurvival',
		'frictionRatio',
		'hangLoad',
		'holdingRegion',
		'holdingWindow',
		'jointEvidence',
		'loadAtNetMass',
		'loadElasticity',
		'nextTrial',
		'openingLimit',
		'ropeTerm',
		'storyEvidence',
		'tendonForces',
		'workbook'
	]);
});
