import type { Citation } from '../types.ts';

/** Contact of soft pads and rough solids: area, real contact, adhesion, hysteresis, ageing. */
export const skinContactCitations = {
	towle1974: {
		authors: 'Towle LC',
		year: 1974,
		title: 'Shear strength and polymer friction',
		where: 'Book chapter, doi 10.1007/978-1-4613-9942-1_10',
		how: 'abstract seen',
		note: 'Year from memory.'
	},
	persson2013: {
		authors: 'Persson BNJ, Kovalev A, Gorb SN',
		year: 2013,
		title: 'Contact mechanics and friction on dry and wet human skin',
		where: 'Tribology Letters 50:17, doi 10.1007/s11249-012-0053-2',
		how: 'abstract seen'
	},
	kovalev2014: {
		authors: 'Kovalev AE, et al.',
		year: 2014,
		title: 'Surface topography and contact mechanics of dry and wet human skin',
		where: 'Beilstein Journal of Nanotechnology 5, doi 10.3762/bjnano.5.147',
		how: 'abstract seen',
		note: 'Title from memory. Wrist skin.'
	},
	trejo2017: {
		authors: 'Trejo M, et al.',
		year: 2017,
		title: '[friction of rubber on smooth and sand-blasted lenses]',
		where: 'arXiv 1701.08013',
		how: 'abstract seen',
		note: 'Year from memory. Rubber, not skin.'
	},
	nonAmontons2017: {
		authors: '[authors not recorded]',
		year: 2017,
		title: 'Non-Amontons-Coulomb local friction law',
		where: 'arXiv 1701.08001',
		how: 'title seen'
	},
	pawluk1999: {
		authors: 'Pawluk DTV, Howe RD',
		year: 1999,
		title: 'Dynamic contact of the human fingerpad against a flat surface',
		where: 'Journal of Biomechanical Engineering 121:605, doi 10.1115/1.2800860',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	serina1998: {
		authors: 'Serina ER, et al.',
		year: 1998,
		title: 'A structural model of the forced compression of the fingertip pulp',
		where: 'Journal of Biomechanics 31:639',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	liu2018: {
		authors: 'Liu X, et al.',
		year: 2018,
		title: '[apparent and real contact area of the finger pad against load]',
		where: 'Skin Research and Technology 24:31, doi 10.1111/srt.12387',
		how: 'abstract seen'
	},
	serhat2022: {
		authors: 'Serhat G, Vardar Y, Kuchenbecker KJ',
		year: 2022,
		title: 'Contact evolution of dry and hydrated fingertips at initial touch',
		where: 'PLOS ONE e0269722',
		how: 'abstract seen',
		note: 'Title from memory. Two people.'
	},
	delhaye2014: {
		authors: 'Delhaye B, Lefèvre P, Thonnard J-L',
		year: 2014,
		title: 'Dynamics of fingertip contact during the onset of tangential slip',
		where: 'Journal of the Royal Society Interface, PMC4191101',
		how: 'abstract seen',
		note: 'Title and authors from memory.'
	},
	sahli2018: {
		authors: 'Sahli R, et al.',
		year: 2018,
		title:
			'Evolution of real contact area under shear and the value of static friction of soft materials',
		where: 'Proceedings of the National Academy of Sciences 115:471, doi 10.1073/pnas.1706434115',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	leyvaMendivil2017: {
		authors: 'Leyva-Mendivil MF, et al.',
		year: 2017,
		title: '[finite elements: skin microrelief and the deformation part of friction]',
		where: 'Tribology Letters 65:12, PMC6961497',
		how: 'abstract seen'
	},
	lubricants2018: {
		authors: '[authors not recorded]',
		year: 2018,
		title: '[real contact area and friction of elastomers at high load]',
		where: 'Lubricants 6:38, mdpi.com/2075-4442/6/2/38',
		how: 'abstract seen'
	},
	juvekar2016: {
		authors: 'Juvekar VA, Singh AK',
		year: 2016,
		title: '[rate and rest-time dependence of static friction of soft solids]',
		where: 'arXiv 1602.00973',
		how: 'abstract seen'
	},
	nishi2021: {
		authors: 'Nishi T, et al.',
		year: 2021,
		title: '[artificial skin: real contact area and friction against water]',
		where: 'Tribology International 163:107179',
		how: 'abstract seen'
	},
	katano2014: {
		authors: 'Katano Y, et al.',
		year: 2014,
		title: 'Novel friction law for the static friction force based on local precursor slipping',
		where: 'arXiv 1409.3458',
		how: 'abstract seen',
		note: 'Title from memory. Polymer block, not skin.'
	},
	hiramatsu2015: {
		authors: 'Hiramatsu Y, et al.',
		year: 2015,
		title: '[grip force, safety margin and contact area]',
		where: 'PLOS ONE 10:e0138506, PMC4574045',
		how: 'abstract seen'
	},
	xydas1999: {
		authors: 'Xydas N, Kao I',
		year: 1999,
		title: '[contact area of soft fingers: power law in load]',
		where: '[journal not recorded]',
		how: 'memory'
	},
	briscoeTabor1978: {
		authors: 'Briscoe BJ, Tabor D',
		year: 1978,
		title: '[pressure-dependent shear strength of polymers]',
		where: '[journal not recorded]',
		how: 'memory'
	},
	greenwoodTabor1958: {
		authors: 'Greenwood JA, Tabor D',
		year: 1958,
		title: '[friction of hard sliders on lubricated rubber: hysteresis losses]',
		where: '[journal not recorded]',
		how: 'memory'
	},
	hertz1882: {
		authors: 'Hertz H',
		year: 1882,
		title: '[on the contact of elastic solids]',
		where: '[journal not recorded]',
		how: 'memory',
		note: 'Textbook result: A grows as N to the two thirds.'
	},
	patton1966: {
		authors: 'Patton FD',
		year: 1966,
		title: '[shear strength of rough rock joints]',
		where: '[journal not recorded]',
		how: 'memory'
	},
	barton1973: {
		authors: 'Barton N',
		year: 1973,
		title: '[shear strength of rock joints, roughness coefficient]',
		where: '[journal not recorded]',
		how: 'memory'
	}
} as const satisfies Record<string, Citation>;
