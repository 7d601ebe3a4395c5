import type { Citation } from '../types.ts';

/** Textbooks and problem pages whose friction problems or tables are used. */
export const textbookCitations = {
	openstaxUniversityPhysics: {
		authors: 'Ling, Sanny, Moebs et al.',
		year: 2016,
		title: 'University Physics Volume 1',
		where:
			'OpenStax (Rice University); github.com/openstax/osbooks-university-physics-bundle commit d0ed34a5851119a42e3d972dfc0ff49e4663977c; modules m58304 m58305 m58306 m58335 m58341 m58343',
		how: 'seen',
		note: 'Year as stated: 2016, edition of 2026-06-11. Licence: CC BY-NC-SA 4.0 in the edition seen (LICENSE file and collection metadata; earlier printings were CC BY 4.0 (from memory)).'
	},
	openstaxCollegePhysics: {
		authors: 'Urone, Hinrichs et al.',
		year: 2022,
		title: 'College Physics 2e',
		where:
			'OpenStax (Rice University); github.com/openstax/osbooks-college-physics-bundle commit fd1b25dfd5d8c6580c6e2b2b34a19e29cc69ada9; modules m42139 m42086 m42172 m42173',
		how: 'seen',
		note: 'Year as stated: 2022 (from memory), edition of 2026-07-09. Licence: CC BY-NC-SA 4.0 in the edition seen.'
	},
	openstaxPhysics: {
		authors: 'Urone, Hinrichs et al.',
		year: 2020,
		title: 'Physics (high school)',
		where:
			'OpenStax (Rice University); github.com/openstax/osbooks-physics commit ff78c7a8150fdda5ed1f786ac59ac25cdd532ef0; module m54159',
		how: 'seen',
		note: 'Year as stated: 2020 (from memory), edition of 2026-04-28. Licence: CC BY 4.0.'
	},
	bakerHaynes: {
		authors: 'D. W. Baker, W. Haynes',
		year: null,
		title: 'Engineering Statics: Open and Interactive, chapter 9',
		where:
			'engineeringstatics.org; github.com/dantheboatman/EngineeringStatics commit 3ca253a996c83a9b9f64fddf4077fa1a6255f0c6; source/ptx/Chapter_09.ptx (text only; the interactive exercises were not opened)',
		how: 'seen',
		note: 'Year as stated: edition of 2026-08-01. Licence: CC BY-NC-SA 4.0.'
	},
	martinNeary: {
		authors: 'R. D. Martin, E. Neary, J. Rinaldo, O. Woodman',
		year: 2019,
		title:
			'Introductory Physics: Building Models to Describe Our World, with its Question Library (Answers)',
		where:
			"Queen's University, open textbook; github.com/OSTP/PhysicsArtofModelling commit 6dcfba1286904ac0d609d4c39a64515a274b26a8; QuestionLibrary_Answers.pdf and tex/ApplyingNewtonsLaws.tex",
		how: 'seen',
		note: 'Year as stated: 2019-2025, snapshot 2025-05-16. Licence: CC BY-SA 4.0.'
	},
	crowell: {
		authors: 'B. Crowell (some problems B. Shotwell)',
		year: null,
		title: 'Light and Matter / Mechanics / Problems in Introductory Physics (shared problem bank)',
		where:
			'lightandmatter.com; github.com/bcrowell/lm commit aec371f418e0ecf1a912ea6e0f132130ab5680bb; share/mechanics/hw, share/answers',
		how: 'seen',
		note: 'Year as stated: snapshot 2021-05-03. Licence: CC BY-SA 3.0.'
	},
	tayal2010: {
		authors: 'A. K. Tayal',
		year: 2010,
		title: 'Engineering Mechanics, 14th ed.',
		where:
			'Umesh Publications, Delhi; github.com/FOSSEE/Python-Textbook-Companions commit d34b2ae7e5e6051f7c87531ebc73b154b082d05b; Engineering_Mechanics_by_A._K._Tayal/Chapter_6, Chapter_7, Chapter15',
		how: 'seen second-hand',
		note: 'Read as the worked number in the FOSSEE Python Textbook Companion, a volunteer recomputation; the printed page was not seen. Licence: book: all rights reserved; numbers cited as facts.'
	},
	bansal: {
		authors: 'R. K. Bansal',
		year: null,
		title: 'Engineering Mechanics, chapter 8',
		where:
			'Laxmi Publications; github.com/FOSSEE/Python-Textbook-Companions commit d34b2ae7e5e6051f7c87531ebc73b154b082d05b; Engineering_Mechanics_by_R.K_Bansal/chapter_8.ipynb',
		how: 'seen second-hand',
		note: 'Read as the worked number in the FOSSEE Python Textbook Companion, a volunteer recomputation; the printed page was not seen. Year as stated: not stated. Publisher or book named from memory. Licence: book: all rights reserved; numbers cited as facts.'
	},
	mcleanNelson1997: {
		authors: 'McLean, Nelson',
		year: 1997,
		title: 'Engineering Mechanics, Schaum series, 5th ed., chapter 9',
		where:
			'McGraw-Hill; github.com/FOSSEE/Python-Textbook-Companions commit d34b2ae7e5e6051f7c87531ebc73b154b082d05b; Engineering_Mechanics,_Schaum_Series_by_McLean/chapter9_5.ipynb',
		how: 'seen second-hand',
		note: 'Read as the worked number in the FOSSEE Python Textbook Companion, a volunteer recomputation; the printed page was not seen. Licence: book: all rights reserved; numbers cited as facts.'
	},
	hibbelerGupta: {
		authors: 'R. C. Hibbeler, A. Gupta',
		year: null,
		title: 'Engineering Mechanics: Statics and Dynamics, chapter 8',
		where:
			'Pearson; github.com/FOSSEE/Python-Textbook-Companions commit d34b2ae7e5e6051f7c87531ebc73b154b082d05b; Engineering_Mechanics_Statics_and_Dynamics_by_Hibbeler_and_Gupta/Chapter_8_Friction.ipynb',
		how: 'seen second-hand',
		note: 'Read as the worked number in the FOSSEE Python Textbook Companion, a volunteer recomputation; the printed page was not seen. Year as stated: not stated. Publisher or book named from memory. Licence: book: all rights reserved; numbers cited as facts.'
	},
	khurmiGupta2009: {
		authors: 'R. S. Khurmi, J. K. Gupta',
		year: 2009,
		title: 'Theory of Machines, 14th ed., chapters 10-11',
		where:
			'Eurasia Publishing House, New Delhi; github.com/FOSSEE/Python-Textbook-Companions commit d34b2ae7e5e6051f7c87531ebc73b154b082d05b; Theory_Of_Machines_by_R._S._Khurmi_And_J._K._Gupta/ch10.ipynb, ch11.ipynb',
		how: 'seen second-hand',
		note: 'Read as the worked number in the FOSSEE Python Textbook Companion, a volunteer recomputation; the printed page was not seen. Licence: book: all rights reserved; numbers cited as facts.'
	},
	bevan2005: {
		authors: 'T. Bevan',
		year: 2005,
		title: 'The Theory of Machines, 3rd ed., chapter 6',
		where:
			'Dorling Kindersley; github.com/FOSSEE/Python-Textbook-Companions commit d34b2ae7e5e6051f7c87531ebc73b154b082d05b; The_Theory_of_Machines_by_T._Bevan/ch6.ipynb',
		how: 'seen second-hand',
		note: 'Read as the worked number in the FOSSEE Python Textbook Companion, a volunteer recomputation; the printed page was not seen. Licence: book: all rights reserved; numbers cited as facts.'
	},
	levinson2002: {
		authors: 'I. J. Levinson',
		year: 2002,
		title: 'Statics and Strength of Materials, chapter 6',
		where:
			'Prentice Hall; github.com/FOSSEE/Python-Textbook-Companions commit d34b2ae7e5e6051f7c87531ebc73b154b082d05b; Statics_And_Strength_Of_Materials_by_I._J._Levinson/ch6.ipynb (also tbc-python.fossee.in/convert-notebook/Statics_And_Strength_Of_Materials/ch6.ipynb)',
		how: 'seen second-hand',
		note: 'Read as the worked number in the FOSSEE Python Textbook Companion, a volunteer recomputation; the printed page was not seen. Year as stated: 2002 (as stated in the companion). Licence: book: all rights reserved; numbers cited as facts.'
	},
	verma2011: {
		authors: 'H. C. Verma',
		year: 2011,
		title: 'Concepts of Physics, volume 1, chapter 6',
		where:
			'Bharati Bhawan; github.com/FOSSEE/Python-Textbook-Companions commit d34b2ae7e5e6051f7c87531ebc73b154b082d05b; Concepts_Of_Physics_(Volume_-_1)_by_H._C._Verma/CHAPTER06.ipynb',
		how: 'seen second-hand',
		note: 'Read as the worked number in the FOSSEE Python Textbook Companion, a volunteer recomputation; the printed page was not seen. Licence: book: all rights reserved; numbers cited as facts.'
	},
	adaptiveBooks: {
		authors: 'not stated in the excerpt',
		year: null,
		title:
			'Statics, chapter "Friction: the application of statics to machine design" (reads like Housner and Hudson, Applied Mechanics: Statics)',
		where:
			'adaptivebooks.org; www.adaptivebooks.org/statics/friction-the-application-of-statics-to-machine-design/screw-threads and .../brake-band-or-belt-friction',
		how: 'seen',
		note: 'Year as stated: not stated. Publisher or book named from memory. Licence: not stated in the excerpt.'
	},
	donovan2020: {
		authors: 'D. Donovan',
		year: 2020,
		title: 'Worked solution of Cutnell and Johnson, Physics, ch. 4 problem 99',
		where:
			'Northern Michigan University; physics.nmu.edu/~ddonovan/classes/ph201/Homework/Chap04/CH04P99.html; number 39 N from askanewquestion.com/questions/741114',
		how: 'seen',
		note: 'Licence: not stated.'
	},
	jiskha1268402: {
		authors: 'forum',
		year: null,
		title: 'Posted homework question with its answer (a Hibbeler statics problem)',
		where: 'jiskha.com; www.jiskha.com/questions/1268402/',
		how: 'seen',
		note: 'Year as stated: not stated. Publisher or book named from memory. Licence: not stated.'
	},
	knightAnswers: {
		authors: 'forum',
		year: null,
		title: 'Answer page for Knight, Physics for Scientists and Engineers 3e, ch. 6 problem 56',
		where:
			'gradesaver.com; www.gradesaver.com/textbooks/science/physics/physics-for-scientists-and-engineers-a-strategic-approach-with-modern-physics-3rd-edition/chapter-6-dynamics-i-motion-along-a-line-exercises-and-problems-page-164/56',
		how: 'seen',
		note: 'Year as stated: not stated. Licence: not stated.'
	},
	physicsHelpForum2017: {
		authors: 'forum',
		year: 2017,
		title: 'Posted book-between-hands question',
		where:
			'physicshelpforum.com; physicshelpforum.com/kinematics-dynamics/13871-book-friction-problem.html',
		how: 'seen',
		note: 'Licence: not stated.'
	},
	phillips2002: {
		authors: 'J. Phillips',
		year: 2002,
		title: 'Physics 101 class page on the chimney climb',
		where: 'Loyola Marymount University; myweb.lmu.edu/jphillips/101_S02/week11/wed1.html',
		how: 'seen',
		note: 'Evidence: seen (givens); answers (from memory) from Halliday, Resnick, Walker, Fundamentals of Physics, ch. 12. Licence: not stated.'
	},
	benGurionPool: {
		authors: 'Physics department',
		year: null,
		title: 'Exercise pool item e_22_5_082 (layback climb, Hebrew)',
		where:
			'Ben-Gurion University; physweb.bgu.ac.il/COURSES/PHYSICS_ExercisesPool/22_Rigid_body/e_22_5_082.html',
		how: 'seen',
		note: 'Year as stated: not stated. Evidence: seen (givens); answers (from memory) from Halliday, Resnick, Walker, ch. 12. Licence: not stated.'
	},
	giancoliChimney: {
		authors: 'forum',
		year: null,
		title: 'Posted chimney-climb question (Giancoli, Physics)',
		where: 'justaaa.com; justaaa.com/physics/394451-725-kg-climber-in-figure-1-is-supported-in',
		how: 'seen',
		note: 'Year as stated: not stated. Publisher or book named from memory. Licence: not stated.'
	},
	blurtit197912: {
		authors: 'forum',
		year: null,
		title: 'Posted climber-on-wall question with answer',
		where: 'blurtit.com; education.blurtit.com/197912/',
		how: 'seen',
		note: 'Year as stated: not stated. Licence: not stated.'
	},
	brainmass216967: {
		authors: 'forum',
		year: null,
		title: 'Posted tall-block-on-a-board question with answer',
		where: 'brainmass.com; brainmass.com/physics/torques/friction-inclined-plane-216967',
		how: 'seen',
		note: 'Year as stated: not stated. Licence: not stated.'
	},
	beerJohnston: {
		authors: 'Beer, Johnston',
		year: null,
		title: 'Vector Mechanics for Engineers: Statics, journal-bearing sample problem',
		where: 'McGraw-Hill; none: recalled',
		how: 'memory',
		note: 'Year as stated: several editions. Licence: book: all rights reserved; numbers cited as facts.'
	},
	komal2014: {
		authors: 'MATFUND Foundation',
		year: 2014,
		title: 'KoMaL, Mathematical and Physical Journal for High Schools, problem P.4651',
		where: 'komal.hu; www.komal.hu/verseny/feladat.cgi?a=feladat&f=P4651&l=en',
		how: 'seen',
		note: 'Evidence: seen (givens only). Licence: not stated.'
	},
	hibbeler14: {
		authors: 'question site',
		year: null,
		title: 'Question text of Hibbeler, Engineering Mechanics: Statics 14e, problem 8-120',
		where:
			'studysoup.com; studysoup.com/tsg/192401/engineering-mechanics-statics-14-edition-chapter-8-problem-8-120',
		how: 'seen',
		note: 'Year as stated: not stated. Evidence: seen (givens only). Licence: not stated.'
	},
	vermaWalls: {
		authors: 'H. C. Verma',
		year: null,
		title: 'Concepts of Physics, volume 1, chapter 6, exercise on a person between two walls',
		where: 'Bharati Bhawan; none: recalled',
		how: 'memory',
		note: 'Year as stated: several printings. Licence: book: all rights reserved; numbers cited as facts.'
	}
} as const satisfies Record<string, Citation>;
