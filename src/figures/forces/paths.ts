import type { Point } from './geometry.ts';

const round = (value: number) => String(Math.round(value * 10) / 10);
const at = ({ x, y }: Point) => `${round(x)} ${round(y)}`;

export function polyline(points: Point[]): string {
	return 'M' + points.map(at).join('L');
}

export function polygon(points: Point[]): string {
	return polyline(points) + 'Z';
}

/** A closed smooth curve through points (Catmull–Rom, as cubic curves). */
export function smooth(points: Point[]): string {
	const of = (i: number) => points[(i + points.length) % points.length]!;
	let path = 'M' + at(of(0));
	for (let i = 0; i < points.length; i++) {
		const [a, b, c, d] = [of(i - 1), of(i), of(i + 1), of(i + 2)];
		const first = { x: b.x + (c.x - a.x) / 6, y: b.y + (c.y - a.y) / 6 };
		const second = { x: c.x - (d.x - b.x) / 6, y: c.y - (d.y - b.y) / 6 };
		path += `C${at(first)} ${at(second)} ${at(c)}`;
	}
	return path + 'Z';
}

/** A limb: two circles and the straight sides between them. */
export function limb(from: Point, to: Point, fromRadius: number, toRadius: number): string {
	const [one, other, back, start] = sides(from, to, fromRadius, toRadius);
	return (
		`M${at(start)}L${at(one)}A${round(toRadius)} ${round(toRadius)} 0 0 0 ${at(other)}` +
		`L${at(back)}A${round(fromRadius)} ${round(fromRadius)} 0 0 0 ${at(start)}Z`
	);
}

/** A limb that goes on beyond the drawing: its far end is a break line. */
export function brokenLimb(from: Point, to: Point, fromRadius: number, toRadius: number): string {
	const [one, other, back, start] = sides(from, to, fromRadius, toRadius);
	const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
	const bulge = (0.55 * toRadius) / length;
	const on = (share: number, sign: number) => ({
		x: one.x + (other.x - one.x) * share + (to.x - from.x) * bulge * sign,
		y: one.y + (other.y - one.y) * share + (to.y - from.y) * bulge * sign
	});
	return (
		`M${at(start)}L${at(one)}C${at(on(0.3, 1.6))} ${at(on(0.7, -1.6))} ${at(other)}` +
		`L${at(back)}A${round(fromRadius)} ${round(fromRadius)} 0 0 0 ${at(start)}Z`
	);
}

/** Ends of a limb's two straight sides, in drawing order. */
function sides(from: Point, to: Point, fromRadius: number, toRadius: number) {
	const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
	const across = { x: -(to.y - from.y) / length, y: (to.x - from.x) / length };
	const off = (point: Point, radius: number) => ({
		x: point.x + across.x * radius,
		y: point.y + across.y * radius
	});
	return [
		off(to, toRadius),
		off(to, -toRadius),
		off(from, -fromRadius),
		off(from, fromRadius)
	] as const;
}

/** An arc about a centre between two directions (rad, clockwise on the screen from the right). */
export function arc(centre: Point, radius: number, from: number, to: number): string {
	const on = (angle: number) => ({
		x: centre.x + radius * Math.cos(angle),
		y: centre.y + radius * Math.sin(angle)
	});
	const sweep = to > from ? 1 : 0;
	return `M${at(on(from))}A${round(radius)} ${round(radius)} 0 0 ${sweep} ${at(on(to))}`;
}
