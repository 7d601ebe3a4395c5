/** Own, not outside: problem types with their right answer and slips written as plain formulas. */
export type Planted = {
	family: string;
	arrangement: number;
	ask: string;
	/** Factor from the written unit to SI, and the unit. */
	unit: string;
	toSi: number;
	given: (draw: (low: number, high: number, step: number) => number) => Record<string, number>;
	right: (v: Record<string, number>) => number;
	/** Wrong answers by the slip ids that name them. */
	slips: Record<string, (v: Record<string, number>) => number>;
};

const { sin, cos, tan, atan, asin, exp, sqrt, PI } = Math;
const degree = PI / 180;
/** What a calculator set to radians makes of degrees. */
const wrong = (angle: number) => angle / degree;
const g = 9.8;
type V = Record<string, number>;
const W = (v: V) => v.mass! * g;

const up = (w: number, a: number, mu: number) => w * (sin(a) + mu * cos(a));
const drag = (w: number, P: number, a: number, mu: number) => P * cos(a) - mu * (w - P * sin(a));

export const planted: Planted[] = [
	{
		...{ family: 'incline', arrangement: 1, ask: 'startUpForce', unit: 'N', toSi: 1 },
		given: (d) => ({
			mass: d(2, 60, 1),
			slope: d(10, 40, 1) * degree,
			muStatic: d(0.3, 0.7, 0.05),
			muKinetic: d(0.15, 0.28, 0.01),
			gravity: g
		}),
		right: (v) => up(W(v), v.slope!, v.muStatic!),
		slips: {
			'sine-and-cosine-swapped angle-from-normal': (v) =>
				W(v) * (cos(v.slope!) + v.muStatic! * sin(v.slope!)),
			'tangent-for-sine': (v) => W(v) * (tan(v.slope!) + v.muStatic! * cos(v.slope!)),
			'degrees-as-radians': (v) => up(W(v), wrong(v.slope!), v.muStatic!),
			sign: (v) => W(v) * (sin(v.slope!) - v.muStatic! * cos(v.slope!)),
			'normal-taken-as-weight': (v) => W(v) * (sin(v.slope!) + v.muStatic!),
			'kinetic-for-static': (v) => up(W(v), v.slope!, v.muKinetic!),
			'mass-for-weight': (v) => up(v.mass!, v.slope!, v.muStatic!),
			'g-rounded': (v) => up(v.mass! * 10, v.slope!, v.muStatic!),
			'part-left-out other-quantity': (v) => W(v) * v.muStatic! * cos(v.slope!)
		}
	},
	{
		...{ family: 'incline', arrangement: 1, ask: 'freeDown', unit: 'm/s^2', toSi: 1 },
		given: (d) => ({
			slope: d(20, 50, 1) * degree,
			muKinetic: d(0.1, 0.3, 0.01),
			muStatic: d(0.32, 0.6, 0.02),
			gravity: g
		}),
		right: (v) => g * (sin(v.slope!) - v.muKinetic! * cos(v.slope!)),
		slips: {
			'sine-and-cosine-swapped angle-from-normal': (v) =>
				g * (cos(v.slope!) - v.muKinetic! * sin(v.slope!)),
			sign: (v) => g * (sin(v.slope!) + v.muKinetic! * cos(v.slope!)),
			'normal-taken-as-weight': (v) => g * (sin(v.slope!) - v.muKinetic!),
			'static-for-kinetic': (v) => g * (sin(v.slope!) - v.muStatic! * cos(v.slope!)),
			'degrees-as-radians': (v) => g * (sin(wrong(v.slope!)) - v.muKinetic! * cos(wrong(v.slope!))),
			'part-left-out': (v) => g * sin(v.slope!)
		}
	},
	{
		...{ family: 'level-floor', arrangement: 1, ask: 'friction', unit: 'N', toSi: 1 },
		given: (d) => ({
			mass: d(20, 80, 1),
			muStatic: d(0.5, 0.8, 0.05),
			muKinetic: d(0.2, 0.4, 0.02),
			force: d(20, 60, 1),
			forceAngle: d(10, 40, 1) * degree,
			gravity: g
		}),
		right: (v) => v.force! * cos(v.forceAngle!),
		slips: {
			'friction-at-its-limit-at-rest other-quantity': (v) =>
				v.muStatic! * (W(v) - v.force! * sin(v.forceAngle!)),
			'friction-at-its-limit-at-rest other-quantity ': (v) =>
				v.muKinetic! * (W(v) - v.force! * sin(v.forceAngle!)),
			'sine-for-cosine angle-from-normal': (v) => v.force! * sin(v.forceAngle!),
			'degrees-as-radians': (v) => v.force! * Math.abs(cos(wrong(v.forceAngle!)))
		}
	},
	{
		...{ family: 'level-floor', arrangement: 1, ask: 'acceleration', unit: 'm/s^2', toSi: 1 },
		given: (d) => ({
			mass: d(20, 35, 1),
			muStatic: d(0.3, 0.5, 0.05),
			muKinetic: d(0.1, 0.28, 0.02),
			force: d(200, 300, 5),
			forceAngle: d(10, 35, 1) * degree,
			gravity: g
		}),
		right: (v) => drag(W(v), v.force!, v.forceAngle!, v.muKinetic!) / v.mass!,
		slips: {
			'normal-taken-as-weight': (v) =>
				(v.force! * cos(v.forceAngle!) - v.muKinetic! * W(v)) / v.mass!,
			sign: (v) =>
				(v.force! * cos(v.forceAngle!) - v.muKinetic! * (W(v) + v.force! * sin(v.forceAngle!))) /
				v.mass!,
			'static-for-kinetic friction-at-its-limit-at-rest': (v) =>
				drag(W(v), v.force!, v.forceAngle!, v.muStatic!) / v.mass!,
			'weight-for-mass': (v) => drag(W(v), v.force!, v.forceAngle!, v.muKinetic!) / W(v),
			'part-left-out': (v) => (v.force! * cos(v.forceAngle!)) / v.mass!,
			'angle-from-normal': (v) =>
				drag(W(v), v.force!, PI / 2 - v.forceAngle!, v.muKinetic!) / v.mass!
		}
	},
	{
		...{ family: 'incline', arrangement: 1, ask: 'reposeAngle', unit: '°', toSi: degree },
		given: (d) => ({ muStatic: d(0.1, 0.9, 0.01) }),
		right: (v) => atan(v.muStatic!),
		slips: {
			'inverse-not-taken': (v) => v.muStatic! * degree,
			'radians-for-degrees': (v) => atan(v.muStatic!) * degree,
			'angle-from-normal': (v) => PI / 2 - atan(v.muStatic!),
			'sine-for-tangent': (v) => asin(v.muStatic!)
		}
	},
	{
		...{ family: 'incline', arrangement: 3, ask: 'muStatic', unit: '', toSi: 1 },
		given: (d) => ({ rise: d(0.1, 0.35, 0.01), boardLength: d(0.4, 0.6, 0.01) }),
		right: (v) => tan(asin(v.rise! / v.boardLength!)),
		slips: {
			'sine-for-tangent tangent-for-sine': (v) => v.rise! / v.boardLength!,
			'tangent-upside-down upside-down': (v) => 1 / tan(asin(v.rise! / v.boardLength!)),
			'cosine-for-tangent': (v) => cos(asin(v.rise! / v.boardLength!))
		}
	},
	{
		...{ family: 'belt', arrangement: 1, ask: 'holdForce', unit: 'N', toSi: 1 },
		given: (d) => ({ load: d(200, 2000, 10), turns: d(0.25, 1.5, 0.25), mu: d(0.1, 0.4, 0.01) }),
		right: (v) => v.load! * exp(-v.mu! * 2 * PI * v.turns!),
		slips: {
			'multiplied-for-divided other-quantity': (v) => v.load! * exp(v.mu! * 2 * PI * v.turns!),
			'factor-left-out': (v) => v.load! * exp(-v.mu! * PI * v.turns!),
			'e-rounded': (v) => v.load! * 2.7 ** (-v.mu! * 2 * PI * v.turns!),
			'mass-for-weight': (v) => (v.load! / 9.80665) * exp(-v.mu! * 2 * PI * v.turns!)
		}
	},
	{
		...{ family: 'belt', arrangement: 2, ask: 'torque', unit: 'N m', toSi: 1 },
		given: (d) => ({
			tight: d(300, 3000, 10),
			wrap: d(120, 210, 5) * degree,
			mu: d(0.15, 0.4, 0.01),
			diameter: d(0.2, 1, 0.02)
		}),
		right: (v) => v.tight! * (1 - exp(-v.mu! * v.wrap!)) * (v.diameter! / 2),
		slips: {
			'diameter-for-radius factor-left-out': (v) =>
				v.tight! * (1 - exp(-v.mu! * v.wrap!)) * v.diameter!,
			'degrees-as-radians': (v) =>
				v.tight! * (1 - exp(-v.mu! * wrong(v.wrap!))) * (v.diameter! / 2),
			sign: (v) => v.tight! * (1 + exp(-v.mu! * v.wrap!)) * (v.diameter! / 2),
			'angle-from-normal': (v) =>
				v.tight! * (1 - exp(-v.mu! * (PI / 2 - v.wrap!))) * (v.diameter! / 2)
		}
	},
	{
		...{ family: 'ladder', arrangement: 1, ask: 'neededMu', unit: '', toSi: 1 },
		given: (d) => ({
			angle: d(50, 75, 1) * degree,
			weight: d(80, 250, 10),
			personWeight: d(500, 900, 10),
			personFraction: d(0.2, 0.9, 0.05)
		}),
		right: (v) =>
			(v.weight! / 2 + v.personWeight! * v.personFraction!) /
			tan(v.angle!) /
			(v.weight! + v.personWeight!),
		slips: {
			'angle-from-normal tangent-upside-down multiplied-for-divided': (v) =>
				((v.weight! / 2 + v.personWeight! * v.personFraction!) * tan(v.angle!)) /
				(v.weight! + v.personWeight!),
			'sine-for-tangent': (v) =>
				(v.weight! / 2 + v.personWeight! * v.personFraction!) /
				sin(v.angle!) /
				(v.weight! + v.personWeight!),
			'cosine-for-tangent': (v) =>
				(v.weight! / 2 + v.personWeight! * v.personFraction!) /
				cos(v.angle!) /
				(v.weight! + v.personWeight!),
			sign: (v) =>
				(v.weight! / 2 - v.personWeight! * v.personFraction!) /
				tan(v.angle!) /
				(v.weight! + v.personWeight!),
			'part-left-out': (v) =>
				(v.weight! / 2 + v.personWeight! * v.personFraction!) / tan(v.angle!) / v.personWeight!,
			'swapped-givens': (v) =>
				(v.personWeight! / 2 + v.weight! * v.personFraction!) /
				tan(v.angle!) /
				(v.weight! + v.personWeight!)
		}
	},
	{
		...{ family: 'ladder', arrangement: 1, ask: 'friction', unit: 'N', toSi: 1 },
		given: (d) => ({
			length: d(4, 8, 0.5),
			footDistance: d(1, 2.5, 0.1),
			weight: d(80, 300, 10),
			muFloor: d(0.4, 0.7, 0.05)
		}),
		right: (v) => (v.weight! / 2 / sqrt(v.length! ** 2 - v.footDistance! ** 2)) * v.footDistance!,
		slips: {
			'friction-at-its-limit-at-rest other-quantity': (v) => v.muFloor! * v.weight!,
			'tangent-upside-down angle-from-normal multiplied-for-divided sine-for-cosine': (v) =>
				((v.weight! / 2) * sqrt(v.length! ** 2 - v.footDistance! ** 2)) / v.footDistance!,
			'sine-for-tangent': (v) =>
				((v.weight! / 2) * v.length!) / sqrt(v.length! ** 2 - v.footDistance! ** 2),
			'cosine-for-tangent': (v) => ((v.weight! / 2) * v.length!) / v.footDistance!
		}
	},
	{
		...{ family: 'pressing', arrangement: 1, ask: 'leastPress', unit: 'N', toSi: 1 },
		given: (d) => ({
			mass: d(1, 20, 0.5),
			mu1: d(0.2, 0.8, 0.02),
			mu2: d(0.2, 0.8, 0.02),
			gravity: g
		}),
		right: (v) => W(v) / (v.mu1! + v.mu2!),
		slips: {
			'mass-for-weight': (v) => v.mass! / (v.mu1! + v.mu2!),
			'part-left-out': (v) => W(v) / v.mu1!,
			sign: (v) => W(v) / Math.abs(v.mu1! - v.mu2!),
			'g-rounded': (v) => (v.mass! * 10) / (v.mu1! + v.mu2!),
			'multiplied-for-divided': (v) => W(v) * (v.mu1! + v.mu2!)
		}
	},
	{
		...{ family: 'pressing', arrangement: 4, ask: 'tension', unit: 'N', toSi: 1 },
		given: (d) => ({
			mass: d(45, 95, 1),
			ropeAngle: d(15, 40, 1) * degree,
			legAngle: d(3, 20, 1) * degree,
			gravity: g
		}),
		right: (v) => (W(v) * cos(v.legAngle!)) / cos(v.ropeAngle! - v.legAngle!),
		slips: {
			'swapped-parts other-quantity': (v) =>
				(W(v) * sin(v.ropeAngle!)) / cos(v.ropeAngle! - v.legAngle!),
			'angle-from-normal': (v) =>
				(W(v) * sin(v.legAngle!)) / cos(v.ropeAngle! - (PI / 2 - v.legAngle!)),
			sign: (v) => (W(v) * cos(v.legAngle!)) / cos(v.ropeAngle! + v.legAngle!),
			'sine-for-cosine': (v) => (W(v) * sin(v.legAngle!)) / cos(v.ropeAngle! - v.legAngle!),
			'mass-for-weight': (v) => (v.mass! * cos(v.legAngle!)) / cos(v.ropeAngle! - v.legAngle!)
		}
	},
	{
		...{ family: 'wedge', arrangement: 3, ask: 'driveForce', unit: 'N', toSi: 1 },
		given: (d) => ({
			wedgeAngle: d(10, 40, 2) * degree,
			mu: d(0.1, 0.5, 0.02),
			grip: d(200, 3000, 50)
		}),
		right: (v) => 2 * v.grip! * (sin(v.wedgeAngle! / 2) + v.mu! * cos(v.wedgeAngle! / 2)),
		slips: {
			'factor-left-out': (v) => v.grip! * (sin(v.wedgeAngle! / 2) + v.mu! * cos(v.wedgeAngle! / 2)),
			'sign other-quantity': (v) =>
				2 * v.grip! * (sin(v.wedgeAngle! / 2) - v.mu! * cos(v.wedgeAngle! / 2)),
			'sine-and-cosine-swapped': (v) =>
				2 * v.grip! * (cos(v.wedgeAngle! / 2) + v.mu! * sin(v.wedgeAngle! / 2)),
			'degrees-as-radians': (v) =>
				2 * v.grip! * (sin(wrong(v.wedgeAngle!) / 2) + v.mu! * cos(wrong(v.wedgeAngle!) / 2))
		}
	},
	{
		...{ family: 'pressing', arrangement: 5, ask: 'height', unit: 'm', toSi: 1 },
		given: (d) => ({
			mass: d(45, 95, 1),
			muHands: d(0.3, 0.6, 0.05),
			muFeet: d(0.7, 1.3, 0.05),
			crackWidth: d(0.1, 0.3, 0.02),
			centreDistance: d(0.3, 0.5, 0.02),
			gravity: g
		}),
		right: (v) => (v.muHands! + v.muFeet!) * v.centreDistance! + v.muFeet! * v.crackWidth!,
		slips: {
			sign: (v) => (v.muHands! + v.muFeet!) * v.centreDistance! - v.muFeet! * v.crackWidth!,
			'part-left-out': (v) => (v.muHands! + v.muFeet!) * v.centreDistance!,
			'swapped-givens': (v) =>
				(v.muHands! + v.muFeet!) * v.crackWidth! + v.muFeet! * v.centreDistance!
		}
	}
];
