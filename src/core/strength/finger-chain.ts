/** One finger in the plane, touching the hold at the origin. Lengths in m, angles in rad. */
export type FingerChain = {
	/** From the last joint to the centre of pressure, along the end segment, m, above 0. */
	contactDistance: number;
	/** Pitch of the end segment from horizontal, rad, positive with the tip lower. */
	pitch: number;
	/** Flexion of the last joint (DIP), rad, negative when overstretched. */
	dipFlexion: number;
	/** Flexion of the middle joint (PIP), rad. */
	pipFlexion: number;
	/** Depth of the bone's axis above the skin contact, m, 0 or more. */
	boneDepth: number;
	/** Length of the middle segment, m. */
	middleLength: number;
	/** Length of the proximal segment, m. */
	proximalLength: number;
};

/** A point, or a force in N; x away from the wall, y up. */
export type Vector = { x: number; y: number };

/**
 * Places the three joints of a finger that touches the hold at the origin.
 * D = (d cos a₃ − h sin a₃, d sin a₃ + h cos a₃), P = D + L_m(cos a₂, sin a₂),
 * M = P + L_p(cos a₁, sin a₁), a₂ = a₃ − θ_DIP, a₁ = a₂ − θ_PIP
 * @param chain the finger
 * @returns the last joint, the middle joint and the knuckle, m
 * Valid for: a plane finger with straight segments.
 * Source: derived.
 * Example: with pitch 0 the last joint is at (contactDistance, boneDepth).
 */
export function jointPositions(chain: FingerChain): { dip: Vector; pip: Vector; mcp: Vector } {
	const { contactDistance: d, boneDepth: h, pitch } = chain;
	const middleAngle = pitch - chain.dipFlexion;
	const proximalAngle = middleAngle - chain.pipFlexion;
	const dip = {
		x: d * Math.cos(pitch) - h * Math.sin(pitch),
		y: d * Math.sin(pitch) + h * Math.cos(pitch)
	};
	const pip = along(dip, chain.middleLength, middleAngle);
	return { dip, pip, mcp: along(pip, chain.proximalLength, proximalAngle) };
}

function along(from: Vector, length: number, angle: number): Vector {
	return { x: from.x + length * Math.cos(angle), y: from.y + length * Math.sin(angle) };
}
