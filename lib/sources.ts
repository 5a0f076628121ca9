/** One published source. `memory` says that the figure was recalled and not read in the source itself. */
export interface Source {
  readonly author: string;
  readonly title: string;
  readonly year: number;
  readonly note?: string;
}

/** The one bibliography: code, inputs and tests cite these keys. A test fails on an unknown or unused key. */
export const SOURCES = {
  // Physics
  'iapws-r14-08': {
    author: 'International Association for the Properties of Water and Steam',
    title:
      'Revised Release on the Pressure along the Melting and Sublimation Curves of Ordinary Water Substance, R14-08(2011)',
    year: 2011,
  },
  'codata-2018': {
    author: 'Tiesinga, Mohr, Newell, Taylor',
    title: 'CODATA recommended values of the fundamental physical constants: 2018',
    year: 2021,
  },
  'cipm-2007': {
    author: 'Picard, Davis, Gläser, Fujii',
    title: 'Revised formula for the density of moist air (CIPM-2007), Metrologia 45, 149-155',
    year: 2008,
  },
  'murphy-koop-2005': {
    author: 'Murphy, Koop',
    title: 'Review of the vapour pressures of ice and supercooled water, Q. J. R. Meteorol. Soc. 131, 1539-1565',
    year: 2005,
  },
  'lemmon-jacobsen-2004': {
    author: 'Lemmon, Jacobsen',
    title:
      'Viscosity and thermal conductivity equations for nitrogen, oxygen, argon, and air, Int. J. Thermophys. 25, 21-69',
    year: 2004,
  },
  'iapws-r12-08': {
    author: 'International Association for the Properties of Water and Steam',
    title: 'Release on the IAPWS Formulation 2008 for the Viscosity of Ordinary Water Substance, R12-08',
    year: 2008,
  },
  'wilke-1950': {
    author: 'Wilke',
    title: 'A viscosity equation for gas mixtures, J. Chem. Phys. 18, 517-519',
    year: 1950,
    note: 'Recalled, not read; the factors agree with a textbook example.',
  },
  'bird-transport': {
    author: 'Bird, Stewart, Lightfoot',
    title: 'Transport Phenomena, 2nd edition',
    year: 2002,
    note: 'Recalled, not read.',
  },
  'kinetic-theory': {
    author: 'Textbooks of gas dynamics and vacuum technique',
    title: 'Mean molecular speed, mean free path, sonic flow through a nozzle',
    year: 1950,
    note: 'Derived from first principles and recomputed with independent software.',
  },
  'knudsen-1909': {
    author: 'Knudsen',
    title:
      'Die Gesetze der Molekularströmung und der inneren Reibungsströmung der Gase durch Röhren, Ann. Phys. 333, 75-130',
    year: 1909,
    note: 'Recalled through the textbook forms for air, not read.',
  },
  'vacuum-lab-notes': {
    author: 'Physics laboratory course notes and calculation pages on vacuum technique',
    title: 'Conductance of tubes, pump-down, effective speed',
    year: 2024,
    note: 'Public course notes and web pages; numbers recomputed independently.',
  },
  'pressure-rise-monograph': {
    author: 'Parenteral Society',
    title: 'Technical Monograph 7, leak testing of freeze dryers',
    year: 1995,
    note: 'The acceptance figure was read in a secondary source; the year is from memory. Written for pharmacy, stricter than food needs.',
  },
  'iso-21360-1': {
    author: 'International Organization for Standardization',
    title: 'ISO 21360-1, Vacuum technology: standard methods for measuring vacuum-pump performance',
    year: 2020,
    note: 'Scope read; the text itself was not open.',
  },
  'gas-ballast-texts': {
    author: 'Textbooks of vacuum technique',
    title: 'Water-vapour tolerance of gas-ballast pumps',
    year: 1960,
    note: 'The printed form is from memory; the fuller one is derived beside it.',
  },
  'pikal-1984': {
    author: 'Pikal, Roy, Shah',
    title: 'Mass and heat transfer in vial freeze-drying, J. Pharm. Sci. 73, 1224-1237',
    year: 1984,
    note: 'Form of the law from memory.',
  },
  'pikal-1990': {
    author: 'Pikal, Shah, Roy, Putman',
    title: 'The secondary drying stage of freeze drying, Int. J. Pharm. 60, 203-217',
    year: 1990,
    note: 'Form of the law from memory.',
  },
  'freeze-drying-encyclopedia': {
    author: 'Schwartzberg (attribution from memory)',
    title: 'Freeze drying, in Encyclopedia of Food Science and Technology',
    year: 1992,
    note: 'Read in a public re-hosted copy; its worked coffee example was solved by drawing.',
  },
  'hammami-rene-1997': {
    author: 'Hammami, René',
    title: 'Determination of freeze-drying process variables for strawberries, J. Food Eng. 32, 133-154',
    year: 1997,
    note: 'Pressure, plate and time read in two abstracts; the title is from memory, the load was not visible.',
  },
  'hammami-rene-marin-1999': {
    author: 'Hammami, René, Marin',
    title:
      'Process-quality optimization of the vacuum freeze-drying of apple slices, Int. J. Food Sci. Technol. 34, 145-160',
    year: 1999,
    note: 'Load, pressure, plate and time read in an abstract; the citation is from memory.',
  },
  'clark-2013': {
    author: 'Clark',
    title: 'Freeze drying, Food Technology magazine, November',
    year: 2013,
    note: 'Says that heat passes better and vapour worse as the pressure rises, so that there is a best pressure.',
  },
  'fellows-food-processing': {
    author: 'Fellows',
    title: 'Food Processing Technology: Principles and Practice',
    year: 2000,
    note: 'Formulas and lecture notes based on it.',
  },
  'choi-okos-1986': {
    author: 'Choi, Okos',
    title: 'Effects of temperature and composition on the thermal properties of foods',
    year: 1986,
    note: 'As printed in the ASHRAE Handbook, with the water constant of a second copy.',
  },
  'ashrae-refrigeration-2006': {
    author: 'ASHRAE',
    title: 'Handbook: Refrigeration, chapters 9 and 10',
    year: 2006,
    note: 'Tables read; worked examples from memory.',
  },
  'tchigeov-1979': {
    author: 'Tchigeov',
    title: 'Thermophysical processes in food refrigeration technology',
    year: 1979,
    note: 'As given in the ASHRAE Handbook.',
  },
  'chen-1985': {
    author: 'Chen',
    title:
      'Thermodynamic analysis of the freezing and thawing of foods: enthalpy and apparent specific heat, J. Food Sci. 50, 1158-1162',
    year: 1985,
    note: 'From memory, through the ASHRAE Handbook.',
  },
  'pham-1986': {
    author: 'Pham',
    title: 'Simplified equation for predicting the freezing time of foodstuffs, J. Food Technol. 21, 209-219',
    year: 1986,
    note: 'From memory, through Singh and Heldman, Introduction to Food Engineering.',
  },
  'cleland-earle-1979': {
    author: 'Cleland, Earle',
    title:
      'A comparison of methods for predicting the freezing times of cylindrical and spherical foodstuffs; with the slab form',
    year: 1979,
    note: 'From memory, through the ASHRAE Handbook.',
  },
  'earle-unit-operations': {
    author: 'Earle',
    title: 'Unit Operations in Food Processing, web edition',
    year: 2004,
    note: 'Appendix read; worked example from memory.',
  },
  'marquardt-1963': {
    author: 'Marquardt',
    title: 'An algorithm for least-squares estimation of nonlinear parameters, J. Soc. Ind. Appl. Math. 11, 431-441',
    year: 1963,
    note: 'From memory; the step itself is an open-source library.',
  },
  'gelman-bayesian-data-analysis': {
    author: 'Gelman, Carlin, Stern, Rubin',
    title: 'Bayesian Data Analysis, chapters 2, 3 and 14',
    year: 2013,
    note: 'Combining what was believed with what was measured; the formulas were derived again.',
  },
  'brent-1973': {
    author: 'Brent',
    title: 'Algorithms for Minimization without Derivatives, chapter 4',
    year: 1973,
    note: 'Recalled, not read.',
  },
  'heat-conduction-texts': {
    author: 'Textbooks of heat conduction',
    title: 'First term of the series for a slab cooled by convection',
    year: 1959,
    note: 'Derived and recomputed independently.',
  },
  'yonko-sepsy-1967': {
    author: 'Yonko, Sepsy',
    title:
      'An investigation of the thermal conductivity of frost while forming on a flat horizontal plate, ASHRAE Trans. 73',
    year: 1967,
    note: 'Coefficients read in open-source code.',
  },
  'lee-1997': {
    author: 'Lee, Kim, Lee',
    title:
      'A one-dimensional model for frost formation on a cold flat surface, Int. J. Heat Mass Transfer 40, 4359-4365',
    year: 1997,
    note: 'Coefficients read in open-source code.',
  },
  derived: {
    author: 'This project',
    title: 'Closed forms derived from first principles',
    year: 2026,
    note: 'Recomputed with independent numerical software.',
  },
  // Money
  'numpy-financial': {
    author: 'The NumPy-Financial developers',
    title: 'numpy-financial, documentation and tests of an open-source library of financial functions',
    year: 2024,
  },
  'openformula-draft': {
    author: 'OASIS Open Document Format TC',
    title: 'OpenFormula draft of 2009-05-08, test cases of the financial functions',
    year: 2009,
    note: 'Read in the public test file of an open-source spreadsheet engine that transcribes them; the final standard has no test cases.',
  },
  'blank-tarquin': {
    author: 'Blank, L. and Tarquin, A.',
    title: 'Engineering Economy, compound interest factor tables',
    year: 2012,
  },
  sullivan: {
    author: 'Sullivan, W. G., Wicks, E. M. and Koelling, C. P.',
    title: 'Engineering Economy, 14th to 16th edition',
    year: 2009,
  },
  park: {
    author: 'Park, C. S.',
    title: 'Contemporary Engineering Economics, chapter 5',
    year: 2007,
  },
  newnan: {
    author: 'Newnan, D. G., Eschenbach, T. G. and Lavelle, J. P.',
    title: 'Engineering Economic Analysis, 12th to 14th edition',
    year: 2017,
  },
  'white-case-pratt': {
    author: 'White, J. A., Case, K. E. and Pratt, D. B.',
    title: 'Principles of Engineering Economic Analysis, 5th edition, chapter 11',
    year: 2010,
  },
  'ce167-solutions': {
    author: 'University course CE 167',
    title: 'Engineering Project Management, published solution set on payback',
    year: 2010,
  },
  'math352-project': {
    author: 'University course Math 352',
    title: 'Project page on an amortisation schedule',
    year: 2015,
  },
  'sba-sop-50-10': {
    author: 'U.S. Small Business Administration',
    title: 'SOP 50 10 5(F) and Procedural Notice 5000-875701, debt service coverage',
    year: 2026,
    note: 'Read in published summaries.',
  },
  'openstax-managerial': {
    author: 'Franklin, M., Graybeal, P. and Cooper, D.',
    title: 'Principles of Accounting, volume 2: Managerial Accounting, OpenStax',
    year: 2019,
  },
  'cost-accounting-example': {
    author: 'University cost accounting course',
    title: 'Published activity-based costing example of three products and four cost pools',
    year: 2010,
  },
  'goldratt-haystack': {
    author: 'Goldratt, E. M.',
    title: 'The Haystack Syndrome, the P-Q problem',
    year: 1990,
  },
  'willmott-mccarthy-2001': {
    author: 'Willmott, McCarthy',
    title: 'TPM: A Route to World-Class Performance, pages 81-82 and 127',
    year: 2001,
    note: 'Read as quoted.',
  },
  'hillier-lieberman': {
    author: 'Hillier, F. S. and Lieberman, G. J.',
    title: 'Introduction to Operations Research',
    year: 2015,
  },
  'bls-ecec': {
    author: 'U.S. Bureau of Labor Statistics',
    title: 'Employer Costs for Employee Compensation, June 2025, USDL-25-1358',
    year: 2025,
  },
  // Risk
  'blackman-vigna-2021': {
    author: 'Blackman, D. and Vigna, S.',
    title: 'Scrambled linear pseudorandom number generators, ACM Trans. Math. Softw. 47(4)',
    year: 2021,
    note: 'The generator is from memory.',
  },
  'lanczos-1964': {
    author: 'Lanczos, C.',
    title: 'A precision approximation of the gamma function, SIAM J. Numer. Anal. B 1, 86-96',
    year: 1964,
    note: 'Coefficients from memory, checked against independent software.',
  },
  dlmf: {
    author: 'National Institute of Standards and Technology',
    title: 'Digital Library of Mathematical Functions, chapter 8',
    year: 2024,
    note: 'The continued fraction is from memory, checked against independent software.',
  },
  'malcolm-pert-1959': {
    author: 'Malcolm, D. G., Roseboom, J. H., Clark, C. E. and Fazar, W.',
    title: 'Application of a technique for research and development program evaluation, Oper. Res. 7(5)',
    year: 1959,
    note: 'Read in documentation of software that gives its formulas.',
  },
  'joe-kuo-2008': {
    author: 'Joe, S. and Kuo, F. Y.',
    title: 'Constructing Sobol sequences with better two-dimensional projections, SIAM J. Sci. Comput. 30, 2635-2654',
    year: 2008,
  },
  'matousek-1998': {
    author: 'Matousek, J.',
    title: 'On the L2-discrepancy for anchored boxes, J. Complexity 14, 527-556',
    year: 1998,
    note: 'From memory.',
  },
  'mckay-1979': {
    author: 'McKay, M. D., Beckman, R. J. and Conover, W. J.',
    title: 'A comparison of three methods for selecting values of input variables, Technometrics 21(2), 239-245',
    year: 1979,
    note: 'From memory.',
  },
  'saltelli-2008': {
    author: 'Saltelli, A. and others',
    title: 'Global Sensitivity Analysis: The Primer, Ishigami function, pages 179 to 182',
    year: 2008,
    note: 'The printed interaction term has a misprint; values recomputed.',
  },
  'saltelli-2010': {
    author: 'Saltelli, A. and others',
    title: 'Variance based sensitivity analysis of model output, Comput. Phys. Commun. 181, 259-270',
    year: 2010,
    note: 'From memory.',
  },
  'mil-hdbk-338b': {
    author: 'U.S. Department of Defense',
    title: 'MIL-HDBK-338B, Electronic Reliability Design Handbook',
    year: 1998,
    note: 'Read in a published excerpt.',
  },
  'anderson-sweeney-williams': {
    author: 'Anderson, D. R., Sweeney, D. J. and Williams, T. A.',
    title: 'An Introduction to Management Science, waiting lines with a finite calling population',
    year: 2012,
  },
  'grassmann-taksar-heyman-1985': {
    author: 'Grassmann, W. K., Taksar, M. I. and Heyman, D. P.',
    title: 'Regenerative analysis and steady state distributions for Markov chains, Oper. Res. 33(5), 1107-1116',
    year: 1985,
    note: 'From memory.',
  },
  'hyndman-fan-1996': {
    author: 'Hyndman, R. J. and Fan, Y.',
    title: 'Sample quantiles in statistical packages, The American Statistician 50(4), 361-365',
    year: 1996,
    note: 'Definition 7, from memory.',
  },
  // Shop inputs
  'irs-pub-946': {
    author: 'U.S. Internal Revenue Service',
    title: 'Publication 946, How To Depreciate Property, appendices A and B',
    year: 2024,
    note: 'Asset class 20.4, other food manufacture: seven years. Read in published transcriptions.',
  },
  'usda-sr28': {
    author: 'U.S. Department of Agriculture, Agricultural Research Service',
    title: 'USDA National Nutrient Database for Standard Reference, Release 28',
    year: 2015,
    note: 'Food numbers are given beside each use; carbohydrate there is "by difference".',
  },
  'ashrae-foods': {
    author: 'ASHRAE',
    title: 'ASHRAE Handbook: Refrigeration, chapter 9, Thermal Properties of Foods, table 3',
    year: 2006,
    note: 'Initial freezing points; read in reprints of the table.',
  },
  'schwartzberg-freeze-drying': {
    author: 'Schwartzberg, H.',
    title: 'Freeze drying, in Encyclopedia of Food Science and Technology',
    year: 1992,
    note: 'Gives 5e-9 to 70e-9 s for the permeability of dried foods; read in a reprint, the attribution is from memory.',
  },
  'bellows-king-1973': {
    author: 'Bellows, R. J.; King, C. J.',
    title: 'Product collapse during freeze drying of liquid foods, AIChE Symposium Series 69(132)',
    year: 1973,
    note: 'Collapse temperatures of foods are quoted from memory.',
  },
  'bls-food-processing-2023': {
    author: 'U.S. Bureau of Labor Statistics',
    title: 'Occupational Outlook Handbook: Food Processing Equipment Workers, median pay of May 2023',
    year: 2023,
  },
  'nec-210-20': {
    author: 'National Fire Protection Association',
    title: 'National Electrical Code, section 210.20(A): 125 % of the continuous load',
    year: 2023,
    note: 'Read in quotations of the section.',
  },
  'common-practice': {
    author: 'The trade',
    title: 'Common practice, no source',
    year: 2026,
    note: 'What practitioners hold to be usual; no publication stands behind it.',
  },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof SOURCES;
