import { frictionMechanisms } from './mechanisms/friction.ts';
import { geometryMechanisms } from './mechanisms/geometry.ts';
import { orderAndStrengthMechanisms } from './mechanisms/order-and-strength.ts';
import type { MechanismRow } from './types.ts';

/**
 * Every reason why more load may help, hurt or cancel, geometry and order first. Signs of the friction
 * mechanisms are for the ratio; “boardKey” names the core curve that draws the mechanism, where
 * one can be computed.
 */
export const mechanisms: readonly MechanismRow[] = [
	...geometryMechanisms,
	...orderAndStrengthMechanisms,
	...frictionMechanisms
];
