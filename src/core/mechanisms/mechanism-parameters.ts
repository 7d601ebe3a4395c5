/** The numbers each mechanism's curve takes beyond the set-up: SI units and radians. */
export type MechanismParameters = {
	constant: { coefficient: number };
	ropeLean: { ropeAngle: number };
	steadyPush: { push: number };
	counterweightLeftOn: { assistForce: number; ropeAngle: number };
	swingSameAngle: { swingAngle: number };
	swingSameImpulse: { swingAngle: number };
	squeeze: { squeeze: number };
	roundedHold: { radius: number; exponent: number };
	orderDrift: { drift: number; firstMass: number; step: number };
	adhesion: { coefficient: number; shearStrength: number };
	naturalGrowth: { coefficient: number; shearStrength: number; exponent: number };
	saturation: { coefficient: number; saturationPressure: number };
	deformation: { coefficient: number; deformation: number; referencePressure: number };
	interlock: { coefficient: number; interlock: number; penetrationPressure: number };
	film: {
		filmCoefficient: number;
		coefficient: number;
		breakthroughPressure: number;
		sharpness: number;
	};
	liquidFilm: MechanismParameters['film'];
	sittingTime: {
		coefficient: number;
		rise: number;
		timeConstant: number;
		time: number;
		fadeForce?: number;
	};
	shearLoss: { coefficient: number; loss: number; referenceForce: number };
	flatterHand: {
		coefficient: number;
		shearStrength: number;
		exponent: number;
		largestFactor: number;
	};
};

export type MechanismKey = keyof MechanismParameters;
