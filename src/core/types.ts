/** What the hands carry. Forces in newtons, tilt in radians, net mass in kilograms. */
export type Load = {
	/** Downward force on the hands, N; always above 0. */
	vertical: number;
	/** Force on the hands away from the wall, N; negative is toward the wall. */
	horizontal: number;
	/** Size of the force, N. */
	magnitude: number;
	/** Angle of the force from straight down, rad; positive leads away from the wall. */
	tilt: number;
	/** The vertical force as a mass, kg: what a scale would read as hanging from the hands. */
	netMass: number;
};

/** How the friction ratio depends on mean pad pressure. Pressures in pascals, ratios without unit. */
export type FrictionLaw =
	| { kind: 'constant'; coefficient: number }
	| { kind: 'adhesion'; coefficient: number; shearStrength: number }
	| { kind: 'power'; coefficient: number; referencePressure: number; exponent: number }
	| {
			kind: 'deformation';
			coefficient: number;
			shearStrength: number;
			deformation: number;
			referencePressure: number;
	  }
	| {
			kind: 'film';
			filmCoefficient: number;
			coefficient: number;
			breakthroughPressure: number;
			sharpness: number;
	  };

/** The patch of one fingertip on the hold: m², or m²/N^exponent for the growing coefficient. */
export type ContactModel =
	| { kind: 'fixed'; padArea: number }
	| { kind: 'growing'; padCoefficient: number; exponent: number; padLimit: number };

/** A hang, all but its load: kg, rad, N and m. */
export type Hang = {
	hangingMass: number;
	ropeAngle: number;
	push?: number;
	hands: 1 | 2;
	slope: number;
	radius?: number;
	friction: FrictionLaw;
	grip: {
		fingers: number;
		padWidth: number;
		padLength: number;
		padDepth: number;
		contact: ContactModel;
	};
	strength: {
		referenceForce: number;
		referenceEdgeDepth: number;
		referenceHoldTime?: number;
		holdTime: number;
	};
};

export type Limit = 'slip' | 'strength';

/** A stretch of net mass, kg, that holds, and what ends it on either side. */
export type Interval = {
	from: number;
	to: number;
	lowerLimit: Limit | 'range';
	upperLimit: Limit | 'range';
};

/** What moves across the holding region. */
export type RegionAxis = 'slope' | 'coefficient' | 'padArea' | 'ropeAngle' | 'holdTime';
