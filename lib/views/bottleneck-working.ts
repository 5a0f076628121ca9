import type { Bottleneck, ResourceRelief, SharedOutputs } from '../insight/insight-types.ts';
import type { OutputField } from '../model/outputs/output-field.ts';
import { OUTPUTS } from '../model/outputs.ts';
import type { CountedOrigin, Explanation, Term, TermOrigin, WorkContext, Working } from '../model/workings/working.ts';
import { RESOURCE_LABELS } from './bottleneck-flag.ts';
import { FLAG_COLUMN_ID, FLAG_WORDS } from './sheet-columns.ts';

const SUBSCRIPTS = '₁₂₃₄₅₆₇₈₉';

function counted(what: string, inputs: readonly string[] = []): CountedOrigin {
  return { kind: 'counted', where: 'week', what, sources: [], inputs };
}

function term(label: string, symbol: string, value: number, dimension: Term['dimension'], origin: TermOrigin): Term {
  return { label, symbol, value, dimension, origin };
}

function worked(
  formula: string,
  symbols: string,
  terms: readonly Term[],
  compute: (values: readonly number[]) => number,
): Working {
  return { kind: 'worked', formula, symbols, terms, compute };
}

const CONTRIBUTION = OUTPUTS.find((output) => output.id === 'contribution');

/** What is left over in the week as it is, taken apart as its own column is. */
function presentTerm(context: WorkContext): Term {
  const value = context.result.cost.contributionPerWeek;
  const work = CONTRIBUTION?.working(context);
  const origin: TermOrigin =
    work?.kind === 'worked' ? { kind: 'worked', work: () => work } : counted('Sales less running cost of the week.');
  return term('Left over in the week as it is', 'c₀', value, 'money', origin);
}

const STAND_STILL: Partial<Readonly<Record<ResourceRelief['resource'], string>>> = {
  heater: 'Shelf heat never held the drying back in this week, so that more of it changes nothing.',
  freezer: 'No load waited for the freezer in this week, so that a larger one changes nothing.',
};

function gainWorking({ resource, gain }: ResourceRelief & { readonly gain: number }, context: WorkContext): Working {
  const name = RESOURCE_LABELS[resource];
  const present = presentTerm(context);
  const still = gain === 0 ? (STAND_STILL[resource] ?? '') : '';
  const run = `The week run afresh with a quarter more of this (${name}) and all else as it is: its sales less its running cost. ${still}`;
  const more = term(`With a quarter more: ${name}`, 'c₁', present.value + gain, 'money', counted(run.trim()));
  return worked(
    'left over with a quarter more − left over as it is',
    'c₁ − c₀',
    [more, present],
    ([a = 0, b = 0]) => a - b,
  );
}

/** Every resource that can be enlarged, with what a quarter more of it would bring; most first. */
function candidateTerms({ reliefs }: Bottleneck, context: WorkContext): Term[] {
  const known = reliefs.flatMap((relief) => (relief.gain === null ? [] : [{ ...relief, gain: relief.gain }]));
  return [...known]
    .sort((a, b) => b.gain - a.gain)
    .map((relief, k) =>
      term(`A quarter more: ${RESOURCE_LABELS[relief.resource]}`, `g${SUBSCRIPTS[k]}`, relief.gain, 'money', {
        kind: 'worked',
        work: () => gainWorking(relief, context),
      }),
    );
}

function largestTerm(bottleneck: Bottleneck, context: WorkContext): Term {
  const terms = candidateTerms(bottleneck, context);
  const most = (values: readonly number[]) => Math.max(...values);
  const work = worked('the largest gain among all that can be enlarged', 'largest of all g', terms, most);
  return term('Largest gain a week', 'g', most(terms.map(({ value }) => value)), 'money', {
    kind: 'worked',
    work: () => work,
  });
}

function yardstickTerm({ yardstick }: Bottleneck, context: WorkContext): Term {
  const present = presentTerm(context);
  if (present.value > 0) return { ...present, symbol: 'c' };
  const words = 'Nothing is left over in this week, so gains are measured by its sales.';
  return term('Sales a week', 'c', yardstick, 'money', counted(words));
}

function shareWorking(bottleneck: Bottleneck, context: WorkContext): Working {
  const { resource, thresholds } = bottleneck;
  const verdict =
    resource === null
      ? 'none of the gains is worth naming, so nothing in particular holds this set-up back'
      : `${RESOURCE_LABELS[resource]}: of all candidates a quarter more of this brings most`;
  const enough = term('A gain worth naming, at least', 'e', thresholds.gain, 'fraction', {
    kind: 'fixed',
    why: 'Weeks are timetables and jump a little with any change; a gain below this share says nothing.',
  });
  return worked(
    `largest gain ÷ left over as it is. ${verdict}`,
    resource === null ? 'g ÷ c, below e' : 'g ÷ c, above e',
    [largestTerm(bottleneck, context), yardstickTerm(bottleneck, context), enough],
    ([gain = 0, by = 1]) => gain / by,
  );
}

const MACHINES = 'People are always there and the market takes everything, as the knee is a matter of machines.';

function lastChamberWorking({ lone, fewer, all }: SharedOutputs): Working {
  const run = (set: string) => counted(`A fresh run of the week with ${set}. ${MACHINES}`, []);
  return worked(
    '(output with all chambers on the pump − output with one fewer) ÷ output of one chamber with such a pump to itself',
    '(a − f) ÷ l',
    [
      term('Dried a week with all chambers on one pump', 'a', all, 'mass', run('all chambers of a pump on it')),
      term('Dried a week with one chamber fewer', 'f', fewer, 'mass', run('one chamber fewer on that pump')),
      term('Dried a week by one chamber alone', 'l', lone, 'mass', run('one chamber that has such a pump to itself')),
    ],
    ([a = 0, f = 0, l = 1]) => (a - f) / l,
  );
}

function jamWorking(bottleneck: Bottleneck, outputs: SharedOutputs, context: WorkContext): Working {
  const { lastChamberAdds, thresholds } = bottleneck;
  const last = lastChamberAdds ?? 0;
  const byShare = shareWorking(bottleneck, context);
  const [gain, by] = byShare.terms.map(({ value }) => value);
  const why = last < thresholds.lastChamber ? 's, as s < t' : 's, as g is largest with more pump';
  return worked(
    'what the last chamber on the pump adds ÷ what it would add with a pump of its own. The shared pump counts as jammed when that is below the threshold, or when a quarter more pump brings most of all',
    why,
    [
      term('Last chamber on the pump adds', 's', last, 'fraction', {
        kind: 'worked',
        work: () => lastChamberWorking(outputs),
      }),
      term('Jammed below', 't', thresholds.lastChamber, 'fraction', {
        kind: 'fixed',
        why: 'A chamber that adds less than this on the shared pump is past the knee.',
      }),
      term('Largest gain of a quarter more, as a share', 'g', (gain ?? 0) / (by ?? 1), 'fraction', {
        kind: 'worked',
        work: () => byShare,
      }),
    ],
    ([share = 0]) => share,
  );
}

function explanationOf(bottleneck: Bottleneck, context: WorkContext): Explanation {
  const { sharedPumpJams, sharedOutputs, reliefs } = bottleneck;
  if (sharedPumpJams && sharedOutputs) return jamWorking(bottleneck, sharedOutputs, context);
  if (reliefs.every(({ gain }) => gain === null)) {
    return { kind: 'none', why: 'None of the week’s limits could be enlarged and run again.' };
  }
  return shareWorking(bottleneck, context);
}

/**
 * What stands under "What holds it back", as a figure that can be taken apart like any other: the share that the last chamber
 * adds where a shared pump jams, otherwise the largest gain as a share of what is left over.
 */
export function bottleneckOutput(bottleneck: Bottleneck): OutputField {
  return {
    id: FLAG_COLUMN_ID,
    group: 'throughput',
    dimension: 'fraction',
    ...FLAG_WORDS,
    needs: ['contribution'],
    read: () => figureOf(bottleneck),
    working: (context) => explanationOf(bottleneck, context),
  };
}

/** That figure; null when nothing could be enlarged. */
function figureOf(bottleneck: Bottleneck): number | null {
  const { sharedPumpJams, sharedOutputs, lastChamberAdds, reliefs, yardstick } = bottleneck;
  if (sharedPumpJams && sharedOutputs) return lastChamberAdds;
  const gains = reliefs.flatMap(({ gain }) => (gain === null ? [] : [gain]));
  return gains.length === 0 ? null : Math.max(...gains) / yardstick;
}
