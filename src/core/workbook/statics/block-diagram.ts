import { add, along, type Body, type DrawnForce, type Vector } from './diagram.ts';

/** What acts on a block that lies on a straight surface. */
export type BlockForces = {
	id: string;
	name: string;
	/** Middle of the face that touches the surface, m. */
	at: Vector;
	/** Rise of the surface towards +x, rad. */
	slope: number;
	weight: number;
	normal: number;
	/** Friction on the block along the surface, positive towards up-slope. */
	friction: number;
	/** Other forces: angle from +x, size, words. */
	others?: {
		kind: DrawnForce['kind'];
		name: string;
		symbol: string;
		angle: number;
		size: number;
	}[];
	width?: number;
	height?: number;
	mass?: number;
	/** Acceleration along the surface, positive up-slope, m/s². */
	acceleration?: number;
};

/**
 * A block on a surface with all forces on it.
 * @param of the block and the sizes of its forces
 * @returns its body and its forces, ready for a diagram
 * Source: derived
 */
export function drawBlock(of: BlockForces): { body: Body; forces: DrawnForce[] } {
	const { id, at, slope, width = 1, height = 0.6 } = of;
	const up = along(slope);
	const out = along(slope + Math.PI / 2);
	const place = (x: number, y: number): Vector =>
		add(at, [up[0] * x + out[0] * y, up[1] * x + out[1] * y]);
	const middle = place(0, height / 2);
	const outline = [
		...[place(-width / 2, 0), place(width / 2, 0)],
		...[place(width / 2, height), place(-width / 2, height)]
	];
	const moving = of.acceleration !== undefined && of.mass !== undefined;
	const body: Body = {
		...{ id, name: of.name, outline },
		...(moving ? { mass: of.mass!, acceleration: along(slope, of.acceleration!) } : {})
	};
	const forces: DrawnForce[] = [
		{ body: id, kind: 'weight', name: 'weight', symbol: 'W', at: middle, vector: [0, -of.weight] },
		{
			...{ body: id, kind: 'normal', name: 'normal force', symbol: 'N', at },
			vector: along(slope + Math.PI / 2, of.normal)
		},
		{
			...{ body: id, kind: 'friction', name: 'friction', symbol: 'f', at },
			vector: along(slope, of.friction)
		},
		...(of.others ?? []).map(({ angle, size, ...rest }): DrawnForce => ({
			...{ body: id, at: middle },
			...rest,
			vector: along(angle, size)
		}))
	];
	return { body, forces: forces.filter(({ vector }) => vector[0] !== 0 || vector[1] !== 0) };
}

/** The numbers asked for, or undefined when any is missing. */
export function allOf<Name extends string>(
	values: Record<string, number>,
	...names: Name[]
): Record<Name, number> | undefined {
	const picked = names.map((name) => [name, values[name]] as const);
	return picked.every(([, value]) => value !== undefined && Number.isFinite(value))
		? (Object.fromEntries(picked) as Record<Name, number>)
		: undefined;
}
