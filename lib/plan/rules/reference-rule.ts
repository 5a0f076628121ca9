import type { Finding } from '../../result.ts';
import type { LogEntry, Plan, Scenario } from '../plan-types.ts';
import { planError } from './plan-error.ts';

type Target = 'products' | 'chambers' | 'pumps' | 'hoses' | 'patterns';

/** One mention of an id in the plan. */
interface Mention {
  readonly field: string;
  readonly id: string;
  readonly target: Target;
}

const NOUN: Readonly<Record<Target, string>> = {
  products: 'product',
  chambers: 'chamber type',
  pumps: 'pump type',
  hoses: 'hose',
  patterns: 'shift pattern',
};

function scenarioMentions(scenario: Scenario, path: string): readonly Mention[] {
  const { roughingPump } = scenario;
  return [
    ...scenario.chambers.map((entry, i) => mention(`${path}.chambers.${i}.chamber`, entry.chamber, 'chambers')),
    mention(`${path}.pump`, scenario.pump, 'pumps'),
    ...(roughingPump === null ? [] : [mention(`${path}.roughingPump`, roughingPump, 'pumps')]),
    mention(`${path}.hose`, scenario.hose, 'hoses'),
    ...scenario.mix.map((entry, i) => mention(`${path}.mix.${i}.product`, entry.product, 'products')),
    mention(`${path}.pattern`, scenario.pattern, 'patterns'),
  ];
}

function logMentions(entry: LogEntry, path: string): readonly Mention[] {
  const chamber = mention(`${path}.chamber`, entry.chamber, 'chambers');
  return entry.kind === 'batch' ? [chamber, mention(`${path}.product`, entry.product, 'products')] : [chamber];
}

function mention(field: string, id: string, target: Target): Mention {
  return { field, id, target };
}

function idsOf(plan: Plan, target: Target): readonly { readonly id: string }[] {
  return target === 'patterns' ? plan.crew.patterns : plan[target];
}

/** Every place where the plan mentions a product, chamber, pump, hose or shift pattern by its id. */
function mentions(plan: Plan): readonly Mention[] {
  return [
    ...plan.scenarios.flatMap((scenario, i) => scenarioMentions(scenario, `scenarios.${i}`)),
    ...plan.batchLog.flatMap((entry, i) => logMentions(entry, `batchLog.${i}`)),
  ];
}

/** Whatever scenarios and batch log mention is in the catalogues. */
export function referenceRule(plan: Plan): readonly Finding[] {
  const known = (target: Target) => new Set(idsOf(plan, target).map((item) => item.id));
  const sets = {
    products: known('products'),
    chambers: known('chambers'),
    pumps: known('pumps'),
    hoses: known('hoses'),
    patterns: known('patterns'),
  };
  return mentions(plan)
    .filter(({ id, target }) => !sets[target].has(id))
    .map(({ field, id, target }) => {
      const problem = `There is no ${NOUN[target]} with the id "${id}".`;
      return planError(field, id, problem, `Choose a ${NOUN[target]} that is in the plan, or add this one.`);
    });
}
