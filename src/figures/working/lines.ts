import type { evaluateHang } from '#core/strength/evaluate-hang.ts';
import { enduranceFraction } from '#core/strength/endurance.ts';
import { standardGravity } from '#core/units/gravity.ts';
import type { Hang, Load } from '#core/types.ts';
import { lawTex } from './law-tex.ts';
import { quantityTex } from './quantity-tex.ts';

type Contact = ReturnType<typeof evaluateHang>;

/** One line of the working: what it is, the TeX, and the core function whose number it shows. */
export type Line = { says: string; tex: string; of: string };

/** What the working is made from: the same objects as the numbers on screen. */
export type WorkingInput = {
	hang: Hang;
	load: Load;
	contact: Contact;
	person: { assistForce: number };
};

const degrees = 180 / Math.PI;

const newtons = (value: number) => quantityTex(value, 'N');
const angle = (radians: number) => `${quantityTex(radians * degrees, '', 4)}^{\\circ}`;
const millimetres = (metres: number) => quantityTex(metres * 1e3, 'mm');
const areaTex = (squareMetres: number) => quantityTex(squareMetres * 1e6, 'mm^2');
const kilopascals = (pascals: number) => quantityTex(pascals / 1e3, 'kPa');

/** The derivation with this set-up's numbers put in, from forces to margins. */
export function workingLines(input: WorkingInput): Line[] {
	return [
		...loadLines(input),
		...contactLines(input),
		...slipLines(input),
		...strengthLines(input)
	];
}

function loadLines({ hang, load, person }: WorkingInput): Line[] {
	const mass = Math.max(hang.hangingMass, load.netMass);
	const weight = mass * standardGravity;
	const push = hang.push ?? 0;
	const lines: Line[] = [];
	if (person.assistForce > 0) {
		const rope = `A=${newtons(person.assistForce)},\\quad \\varphi=${angle(hang.ropeAngle)}`;
		lines.push(
			{
				says: 'The rope takes off load; its pull and its angle from plumb',
				tex: rope,
				of: 'loadAtNetMass'
			},
			{
				says: 'Downward force on the hands',
				tex: `V=Mg-A\\cos\\varphi=${quantityTex(mass, 'kg')}\\times ${quantityTex(standardGravity, 'm/s^2', 6)}-${newtons(person.assistForce * Math.cos(hang.ropeAngle))}=${newtons(load.vertical)}`,
				of: 'loadAtNetMass'
			}
		);
	} else {
		lines.push({
			says: 'Downward force on the hands: the whole weight',
			tex: `V=Mg=${quantityTex(mass, 'kg')}\\times ${quantityTex(standardGravity, 'm/s^2', 6)}=${newtons(weight)}`,
			of: 'loadAtNetMass'
		});
	}
	lines.push(
		{
			says: 'Force on the hands away from the wall: the rope’s part and the steady push',
			tex: `H=A\\sin\\varphi+P=${newtons(load.horizontal - push)}+${newtons(push)}=${newtons(load.horizontal)}`,
			of: 'loadAtNetMass'
		},
		{
			says: 'Angle of the pull from plumb, and its size',
			tex: `\\delta=\\operatorname{atan2}(H,V)=${angle(load.tilt)},\\quad |L|=\\sqrt{V^2+H^2}=${newtons(load.magnitude)}`,
			of: 'loadAtNetMass'
		}
	);
	return lines;
}

function contactLines({ hang, load, contact }: WorkingInput): Line[] {
	const hands = hang.hands === 1 ? 'one hand' : 'each of two hands';
	const s = contact.meanSlope + load.tilt;
	const lines: Line[] = [
		{
			says: `Force on ${hands}`,
			tex: `F=\\frac{|L|}{${hang.hands}}=${newtons(contact.force)}`,
			of: 'evaluateHang'
		}
	];
	if (hang.radius) {
		const patch = contact.padArea / hang.grip.padWidth;
		lines.push({
			says: 'Mean slope under the patch of a rounded hold',
			tex: `\\bar\\sigma=\\sigma+\\frac{\\ell_c}{2R}=${angle(hang.slope)}+\\frac{${millimetres(patch)}}{2\\times ${millimetres(hang.radius)}}=${angle(contact.meanSlope)}`,
			of: 'evaluateHang'
		});
	}
	const slope = hang.radius ? '\\bar\\sigma' : '\\sigma';
	lines.push(
		{
			says: 'Angle between the pull and the hold’s normal',
			tex: `s=${slope}+\\delta=${angle(contact.meanSlope)}+${angle(load.tilt)}=${angle(s)}`,
			of: 'evaluateHang'
		},
		{
			says: 'Normal force',
			tex: `N=F\\cos s=${newtons(contact.normal)}`,
			of: 'evaluateHang'
		},
		{
			says: 'Friction needed',
			tex: `Q=F\\sin s=${newtons(contact.tangential)}`,
			of: 'evaluateHang'
		}
	);
	if (contact.normal > 0) {
		lines.push({
			says: 'Friction ratio needed; the load has cancelled',
			tex: `\\frac{Q}{N}=\\tan s=${quantityTex(contact.demand)}`,
			of: 'evaluateHang'
		});
	}
	return lines;
}

function slipLines({ hang, contact }: WorkingInput): Line[] {
	if (contact.normal <= 0) {
		return [
			{
				says: 'The pull leads off the hold, so no friction can act',
				tex: `N\\le 0\\;\\Rightarrow\\;F_{\\max}=0`,
				of: 'evaluateHang'
			}
		];
	}
	const { fingers, contact: model } = hang.grip;
	const patch =
		model.kind === 'fixed'
			? `a=${areaTex(contact.padArea)}`
			: `a=\\min\\!\\left(a_{\\max},\\,c\\,n^{m}\\right)=\\min\\!\\left(${areaTex(model.padLimit)},\\,c\\,(${newtons(contact.normal / fingers)})^{${quantityTex(model.exponent)}}\\right)=${areaTex(contact.padArea)}`;
	const { formula, numbers } = lawTex(hang.friction, contact.pressure);
	const lines: Line[] = [
		{ says: 'Contact area of one fingertip', tex: patch, of: 'evaluateHang' },
		{
			says: 'Mean pressure under the fingertips',
			tex: `p=\\frac{N/${fingers}}{a}=${kilopascals(contact.pressure)}`,
			of: 'evaluateHang'
		},
		{
			says: 'Friction ratio that the law gives at this pressure',
			tex: `\\mu=${formula}=${numbers}=${quantityTex(contact.ratio)}`,
			of: 'frictionRatio'
		},
		{
			says: 'Friction limit',
			tex: `F_{\\max}=\\mu N=${quantityTex(contact.ratio)}\\times ${newtons(contact.normal)}=${newtons(contact.frictionLimit)}`,
			of: 'evaluateHang'
		}
	];
	lines.push(
		contact.tangential > 0
			? {
					says: 'Slip margin',
					tex: `\\frac{F_{\\max}}{Q}=\\frac{${newtons(contact.frictionLimit)}}{${newtons(contact.tangential)}}=${quantityTex(contact.slipMargin)}`,
					of: 'evaluateHang'
				}
			: {
					says: 'The pull does not lead down the hold: nothing to slip',
					tex: `Q\\le 0\\;\\Rightarrow\\;\\text{no slip limit}`,
					of: 'evaluateHang'
				}
	);
	return lines;
}

function strengthLines({ hang, load, contact }: WorkingInput): Line[] {
	const { grip, strength } = hang;
	const s = contact.meanSlope + load.tilt;
	if (contact.strengthLimit === Infinity) {
		return [
			{
				says: 'The pull does not try to open the fingers',
				tex: `\\ell(s)\\le 0\\;\\Rightarrow\\;\\text{no strength limit}`,
				of: 'evaluateHang'
			}
		];
	}
	const toCentre = grip.padLength - contact.padArea / grip.padWidth / 2;
	const arm = toCentre * Math.cos(s) + grip.padDepth * Math.sin(s);
	const wanted = enduranceFraction(strength.holdTime);
	const measured = enduranceFraction(strength.referenceHoldTime ?? 5);
	return [
		{
			says: 'Arm of the contact force about the last joint',
			tex: `d=L-\\frac{\\ell_c}{2}=${millimetres(toCentre)},\\quad \\ell(s)=d\\cos s+h\\sin s=${millimetres(arm)}`,
			of: 'evaluateHang'
		},
		{
			says: 'Share of full strength that lasts: in this hang, and in the measured one',
			tex: `f(${quantityTex(strength.holdTime, 's')})=${quantityTex(wanted)},\\quad f(${quantityTex(strength.referenceHoldTime ?? 5, 's')})=${quantityTex(measured)}`,
			of: 'enduranceFraction'
		},
		{
			says: 'Strength limit of one hand, from the best hang on a flat edge',
			tex: `F_s=F_{\\text{ref}}\\,\\frac{L-D/2}{\\ell(s)}\\,\\frac{f(t)}{f(t_{\\text{ref}})}=${newtons(strength.referenceForce)}\\times\\frac{${millimetres(grip.padLength - strength.referenceEdgeDepth / 2)}}{${millimetres(arm)}}\\times ${quantityTex(wanted / measured)}=${newtons(contact.strengthLimit)}`,
			of: 'evaluateHang'
		},
		{
			says: 'Strength margin',
			tex: `\\frac{F_s}{F}=\\frac{${newtons(contact.strengthLimit)}}{${newtons(contact.force)}}=${quantityTex(contact.strengthMargin)}`,
			of: 'evaluateHang'
		},
		{
			says: 'The smaller margin limits',
			tex: `\\min\\!\\left(${quantityTex(contact.slipMargin)},\\,${quantityTex(contact.strengthMargin)}\\right)=${quantityTex(Math.min(contact.slipMargin, contact.strengthMargin))}`,
			of: 'evaluateHang'
		}
	];
}
