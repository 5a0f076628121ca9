import { LIMITS } from '../plan/limits.ts';
import type { Plan } from '../plan/plan-types.ts';
import { fail, succeed } from '../result.ts';
import type { EntryColumn } from './entry-column.ts';
import { mixText, parseMixText } from './mix-text.ts';

/** The scenario's name. */
export const NAME_COLUMN: EntryColumn = {
  id: 'name',
  label: 'Scenario',
  meaning: 'What you call it; charts and findings use this name.',
  unit: '',
  isFigure: false,
  isHeadline: true,
  width: 172,
  options: null,
  text: (scenario) => scenario.name,
  plainText: (scenario) => scenario.name,
  isIdle: () => false,
  edit: (scenario, text) => {
    const name = text.trim();
    if (name === '') return fail({ problem: 'The name is empty.', remedy: 'Give it a name.' });
    if (name.length > LIMITS.name) {
      return fail({ problem: `The name has ${name.length} letters.`, remedy: `Use ${LIMITS.name} at most.` });
    }
    return succeed({ ...scenario, name });
  },
  emptied: () => null,
};

/** What is made, as shares of all batches. */
export function mixColumn(plan: Plan): EntryColumn {
  return {
    id: 'mix',
    label: 'Product mix',
    meaning: 'Share of all batches by product, such as "Soup 60 %, Berries 40 %"; the shares add up to 100 %.',
    unit: '',
    isFigure: false,
    isHeadline: true,
    width: 92,
    options: null,
    text: (scenario) => mixText(scenario.mix, plan.products),
    plainText: (scenario) => mixText(scenario.mix, plan.products),
    isIdle: () => false,
    edit: (scenario, text) => {
      const mix = parseMixText(text, plan.products);
      return mix.ok ? succeed({ ...scenario, mix: mix.value }) : mix;
    },
    emptied: () => null,
  };
}
