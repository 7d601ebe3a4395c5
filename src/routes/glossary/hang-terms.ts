import type { TermGroup } from './terms.ts';

export const hangTerms: readonly TermGroup[] = [
	{
		name: 'The hang',
		terms: [
			{
				id: 'net-load',
				word: 'net load',
				unit: 'kg or lb',
				meaning:
					'What hangs from the hands: body mass plus added mass, less what the assist takes off. It is what a scale between hands and hold would read.',
				see: ['assist', 'added-load']
			},
			{
				id: 'assist',
				word: 'assist',
				symbol: 'A',
				unit: 'N, shown as kg too',
				meaning:
					'The pull of a rope that takes load off the hands, from a counterweight over a pulley or from the feet on a scale.',
				see: ['rope-angle', 'pulley-efficiency']
			},
			{
				id: 'added-load',
				word: 'added load',
				unit: 'kg or lb',
				meaning: 'Mass hung on the body, for example on a belt.'
			},
			{
				id: 'plumb',
				word: 'plumb',
				meaning:
					'Straight up and down, as a string with a weight hangs. A rope that is plumb takes off load and does nothing else.',
				see: ['rope-angle']
			},
			{
				id: 'rope-angle',
				word: 'rope angle',
				symbol: 'φ',
				unit: '°',
				meaning:
					'How far the assist rope leans from plumb; positive leads away from the wall. A leaning rope pulls sideways as well as up, and so changes how much friction the hold must give.',
				see: ['plumb', 'friction-needed']
			},
			{
				id: 'steady-push',
				word: 'steady push',
				symbol: 'P',
				unit: 'N',
				meaning:
					'A sideways force that stays the same at every load: a hip, a knee or a foot against the wall.'
			},
			{
				id: 'pulley-efficiency',
				word: 'pulley efficiency',
				unit: 'ratio',
				meaning:
					'The share of a counterweight’s pull that arrives on the other side of the pulley. The rest goes into bending the rope and turning the wheel.'
			},
			{
				id: 'hold-time',
				word: 'hold time',
				symbol: 't',
				unit: 's',
				meaning:
					'How long the hang is to last. The longer, the smaller the share of full strength that can be kept up.'
			}
		]
	},
	{
		name: 'The hold and the hand',
		terms: [
			{
				id: 'slope',
				word: 'slope',
				symbol: 'σ',
				unit: '°',
				meaning:
					'How far the surface under the fingertips drops outward from level. 0° is a flat edge; below 0° it is incut.'
			},
			{
				id: 'half-crimp',
				word: 'half crimp',
				meaning:
					'Fingers bent at the middle joint to about a right angle, the last joint nearly straight.'
			},
			{
				id: 'open-grip',
				word: 'open grip',
				meaning: 'Fingers nearly straight at the middle joint, the last joint bent round the hold.'
			},
			{
				id: 'three-fingers',
				word: 'three fingers',
				meaning:
					'A grip with the little finger left off. The same load then rests on three patches instead of four, so each presses harder.',
				see: ['contact-area', 'pressure']
			},
			{
				id: 'contact-area',
				word: 'contact area, or patch',
				symbol: 'a',
				unit: 'mm²',
				meaning:
					'The skin of one fingertip that lies on the hold, as a print on squared paper shows it. The part that truly touches, between the ridges, is much smaller.',
				see: ['pressure']
			},
			{
				id: 'lever',
				word: 'lever arm',
				symbol: 'ℓ',
				unit: 'mm',
				meaning:
					'The distance from the finger’s last joint to the line of the contact force. The longer it is, the sooner the same force opens the finger.',
				see: ['moment']
			},
			{
				id: 'moment',
				word: 'moment',
				unit: 'N·m',
				meaning: 'A force times its lever arm: what turns a joint, and what a tendon must balance.'
			}
		]
	}
];
