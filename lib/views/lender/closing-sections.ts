import { formatFixed } from '../format-number.ts';
import { sourceWords } from '../source-words.ts';
import { citedBy } from './assumption-section.ts';
import { words } from './document-text.ts';
import type { DocumentSection, LenderSources } from './document-types.ts';
import { LENDER_CAUTIONS } from './lender-cautions.ts';

/** Laws and rules behind the model, beside what single values cite. */
const METHOD_SOURCES = [
  'iapws-r14-08',
  'choi-okos-1986',
  'pham-1986',
  'knudsen-1909',
  'pikal-1984',
  'numpy-financial',
  'white-case-pratt',
  'openstax-managerial',
  'sba-sop-50-10',
] as const;

const METHOD = [
  {
    about: 'From food to hours',
    words:
      'The drying of every load is computed from laws of physics: heat flows from the shelf through the dried layer to the ice, vapour flows back through it to the cold trap, and whichever is the slower sets the pace. Composition, thickness and load of the food decide how long that takes.',
  },
  {
    about: 'From hours to a week',
    words:
      'Chambers that hang on one pump share its speed and feel each other’s air and vapour. People load, unload and clean in their shifts; a load that is ready at night waits until morning. Weeks are run until they repeat themselves, and the means of whole weeks are taken.',
  },
  {
    about: 'From a week to months',
    words:
      'Months take off closures, small stoppages, failing pumps and the ramp-up of new machines. Each product sells the smaller of what can be made and what its market takes, with season and growth.',
  },
  {
    about: 'From months to money',
    words:
      'Sales and costs make an income statement, a cash flow and a balance sheet in whole cents that agree exactly. Loans run month by month; losses are carried forward against tax; machines are written off, wear out and are bought again.',
  },
  {
    about: 'From money to a judgement',
    words:
      'The purchase is judged against staying as today, month by month and after tax. Debt cover is of the shop as a whole. Stresses change prices, costs, interest, timing and customers and leave the machines as they are.',
  },
] as const;

/** How the figures come about, and whose laws and numbers they rest on. */
export function methodSection(sources: LenderSources): DocumentSection {
  const horizon = sources.result.finance.statements.income.revenue.length;
  const cited = [...new Set([...citedBy(sources), ...METHOD_SOURCES.map(sourceWords)])];
  return {
    id: 'method',
    title: 'Method and sources',
    blocks: [
      words(
        `The figures look ${formatFixed(horizon, 0)} months ahead. Nothing in them is typed in by hand but the assumptions.`,
      ),
      { kind: 'list', items: METHOD },
      { kind: 'heading', text: 'Sources' },
      { kind: 'list', items: cited.map((text) => ({ about: '', words: text })), isNumbered: true },
    ],
  };
}

/** What the document cannot promise. */
export function cautionSection(): DocumentSection {
  return {
    id: 'cautions',
    title: 'Cautions',
    blocks: [{ kind: 'list', items: LENDER_CAUTIONS }],
  };
}
