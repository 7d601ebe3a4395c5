import type { Citation } from '../types.ts';

/** Friction of skin and finger pads: how the ratio depends on load, area, time and moisture. */
export const skinFrictionCitations = {
	derler2012: {
		authors: 'Derler S, Gerhardt L-C',
		year: 2012,
		title:
			'Tribology of skin: review and analysis of experimental results for the friction coefficient of human skin',
		where: 'Tribology Letters 45:1, doi 10.1007/s11249-011-9854-y',
		how: 'abstract seen'
	},
	derler2009: {
		authors: 'Derler S, Gerhardt L-C, Lenz A, Bertaux E, Hadad M',
		year: 2009,
		title:
			'Friction of human skin against smooth and rough glass as a function of the contact pressure',
		where: 'Tribology International 42:1565, doi 10.1016/j.triboint.2008.11.009',
		how: 'memory',
		note: 'Title and place seen in reference lists; neither the paper nor its abstract was read, so its numbers are from memory. They carry weight: check them first.'
	},
	dzidek2017: {
		authors: 'Dzidek B, et al.',
		year: 2017,
		title: 'Contact mechanics of the human finger pad under compressive loads',
		where: 'Journal of the Royal Society Interface 14:20160935, PMC5332579',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	dzidek2017pnas: {
		authors: 'Dzidek B, et al.',
		year: 2017,
		title: 'Why pens have rubbery grips',
		where:
			'Proceedings of the National Academy of Sciences 114:10864, doi 10.1073/pnas.1706233114, PMC5642691',
		how: 'abstract seen'
	},
	adams2007: {
		authors: 'Adams MJ, Briscoe BJ, Johnson SA',
		year: 2007,
		title: 'Friction and lubrication of human skin',
		where: 'Tribology Letters 26:239, doi 10.1007/s11249-007-9206-0',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	adams2013: {
		authors: 'Adams MJ, et al.',
		year: 2013,
		title: 'Finger pad friction and its role in grip and touch',
		where: 'Journal of the Royal Society Interface, doi 10.1098/rsif.2012.0467',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	comaish1971: {
		authors: 'Comaish S, Bottoms E',
		year: 1971,
		title: '[the skin and friction: departures from the laws of dry friction]',
		where: 'British Journal of Dermatology',
		how: 'abstract seen'
	},
	andre2009: {
		authors: 'André T, Lefèvre P, Thonnard J-L',
		year: 2009,
		title: 'A continuous measure of fingertip friction during precision grip',
		where: 'Journal of Neuroscience Methods, doi 10.1016/j.jneumeth.2009.01.031',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	andre2010: {
		authors: 'André T, Lefèvre P, Thonnard J-L',
		year: 2010,
		title: 'Fingertip moisture is optimally modulated during object manipulation',
		where: 'Journal of Neurophysiology 103:402, doi 10.1152/jn.00901.2009',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	andre2011: {
		authors: 'André T, et al.',
		year: 2011,
		title: 'Effect of skin hydration on the dynamics of fingertip gripping contact',
		where: 'Journal of the Royal Society Interface',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	seo2009: {
		authors: 'Seo NJ, Armstrong TJ, et al.',
		year: 2009,
		title:
			'Friction coefficients in a longitudinal direction between the finger pad and selected materials for different normal forces and curvatures',
		where: 'Ergonomics 52:609, doi 10.1080/00140130802471595',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	buchholz1988: {
		authors: 'Buchholz B, Frederick LJ, Armstrong TJ',
		year: 1988,
		title:
			'An investigation of human palmar skin friction and the effects of materials, pinch force and moisture',
		where: 'Ergonomics 31:317, doi 10.1080/00140138808966676',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	umichFrictionData: {
		authors: 'Armstrong TJ',
		year: null,
		title: '[table of hand friction data and methods, from Buchholz 1988]',
		where: 'University of Michigan, websites.umich.edu/~tja/frictionDataMethods.html',
		how: 'seen'
	},
	warman2009: {
		authors: 'Warman PH, Ennos AR',
		year: 2009,
		title: 'Fingerprints are unlikely to increase the friction of primate fingerpads',
		where: 'Journal of Experimental Biology 212:2016, doi 10.1242/jeb.028977',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	savescu2008: {
		authors: 'Savescu AV, Latash ML, Zatsiorsky VM',
		year: 2008,
		title: 'A technique to determine friction at the fingertips',
		where: 'Journal of Applied Biomechanics 24:43',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	inoue2022: {
		authors: 'Inoue K, et al.',
		year: 2022,
		title:
			'Apparent randomness of the normal-force dependence of the coefficient of friction between a bare finger and artificial skin under active tactile exploration',
		where: 'Applied Mechanics 3:649, doi 10.3390/applmech3020038',
		how: 'abstract seen',
		note: 'Excerpt was cut off before it named the condition with a rising ratio.'
	},
	jsme2003: {
		authors: 'Japan Society of Mechanical Engineers',
		year: 2003,
		title: '[skin on glass: load and loading time]',
		where:
			'JSME annual meeting 2003.5, p. 113, jstage.jst.go.jp/article/jsmemecjo/2003.5/0/2003.5_113',
		how: 'abstract seen'
	},
	lee2026: {
		authors: 'Lee Z, Maiti R, Carré MJ, et al.',
		year: 2026,
		title: '[finger pad on glass, 0.5 to 3 N]',
		where: 'Biosurface and Biotribology 12:e70020, eprints.whiterose.ac.uk/id/eprint/240269',
		how: 'abstract seen'
	},
	tomlinson2009: {
		authors: 'Tomlinson SE, Lewis R, Carré MJ',
		year: 2009,
		title: 'The effect of normal force and roughness on friction in human finger contact',
		where: 'Wear 267:1311, doi 10.1016/j.wear.2008.12.084',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	tomlinson2009thesis: {
		authors: 'Tomlinson SE',
		year: 2009,
		title: 'Understanding the friction between human fingers and contacting surfaces',
		where: 'PhD thesis, University of Sheffield, etheses.whiterose.ac.uk/150',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	tomlinson2013: {
		authors: 'Tomlinson SE, et al.',
		year: 2013,
		title: 'Human finger friction in contacts with ridged surfaces',
		where: '[journal not recorded]',
		how: 'abstract seen',
		note: 'Year from memory.'
	},
	hendriks2010: {
		authors: 'Hendriks CP, Franklin SE',
		year: 2010,
		title:
			'Influence of surface roughness, material and climate conditions on the friction of human skin',
		where: 'Tribology Letters, doi 10.1007/s11249-009-9530-7',
		how: 'abstract seen',
		note: 'Title and authors from memory. Cheek and forearm skin, not fingertips.'
	},
	skedung2010: {
		authors: 'Skedung L, et al.',
		year: 2010,
		title: '[finger friction of coated papers]',
		where: 'cris.vtt.fi',
		how: 'abstract seen'
	},
	gott2013: {
		authors: 'Gott E, Byrne C',
		year: 2013,
		title: '[skin on raw and finished wood]',
		where: 'jes2s.com/gott_et_al.html',
		how: 'abstract seen'
	},
	veijgen2013: {
		authors: 'Veijgen NK, Masen MA, van der Heide E',
		year: 2013,
		title: 'Relating friction on the human skin to the hydration and temperature of the skin',
		where: 'Tribology Letters 49:251, doi 10.1007/s11249-012-0062-1',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	exVivoSkin2017: {
		authors: '[authors not recorded]',
		year: 2017,
		title: '[ex vivo skin at 0.5 to 20 kPa: untreated, wet, oiled]',
		where: 'Tribology International, Delft repository c8ccdb4d',
		how: 'abstract seen',
		note: 'Year given as 2016 or 2017.'
	},
	smithScott1996: {
		authors: 'Smith AM, Scott SH',
		year: 1996,
		title: 'Subjective scaling of smooth surface friction',
		where: 'Journal of Neurophysiology',
		how: 'abstract seen',
		note: 'Authors from memory.'
	},
	omeara2002: {
		authors: "O'Meara DM, Smith RM",
		year: 2002,
		title:
			'Functional handgrip test to determine the coefficient of static friction at the hand/handle interface',
		where: 'Ergonomics 45:717, doi 10.1080/00140130210159247',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	handSkinAreas2010: {
		authors: '[authors not recorded]',
		year: 2010,
		title: 'Frictional properties of different hand skin areas',
		where: 'Ergonomics 53(6)',
		how: 'abstract seen'
	},
	skinStructureFriction: {
		authors: '[authors not recorded]',
		year: null,
		title: '[skin structural properties and finger-pad friction]',
		where: 'discovery.researcher.life 821cf386',
		how: 'abstract seen'
	},
	spinner2016: {
		authors: 'Spinner M, Wiechert AB, Gorb SN',
		year: 2016,
		title: 'Sticky fingers: adhesive properties of human fingertips',
		where: 'Journal of Biomechanics, doi 10.1016/j.jbiomech.2016.01.033',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	cadoret1996: {
		authors: 'Cadoret G, Smith AM',
		year: 1996,
		title: 'Friction, not texture, dictates grip forces used during object manipulation',
		where: 'Journal of Neurophysiology 75:1963',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	yum2020: {
		authors: 'Yum S-M, et al.',
		year: 2020,
		title: 'Fingerprint ridges allow primates to regulate grip',
		where: 'Proceedings of the National Academy of Sciences',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	koudine2000: {
		authors: 'Koudine AA, et al.',
		year: 2000,
		title: '[frictional properties of forearm skin]',
		where: '[journal not recorded]',
		how: 'memory'
	},
	sivamani2003: {
		authors: 'Sivamani RK, et al.',
		year: 2003,
		title: '[coefficient of friction of skin: forearm]',
		where: '[journal not recorded]',
		how: 'memory'
	}
} as const satisfies Record<string, Citation>;
