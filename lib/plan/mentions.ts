import type { LogEntry, Plan, Scenario } from './plan-types.ts';

/** The lists of the plan whose entries are mentioned elsewhere by their id. */
export const CATALOGUES = ['products', 'chambers', 'pumps', 'hoses', 'patterns'] as const;

export type CatalogueName = (typeof CATALOGUES)[number];

/** What an entry of each catalogue is called in a message. */
export const CATALOGUE_NOUN: Readonly<Record<CatalogueName, string>> = {
  products: 'product',
  chambers: 'chamber type',
  pumps: 'pump type',
  hoses: 'hose',
  patterns: 'shift pattern',
};

/** One mention of an id. */
export interface Mention {
  /** Path of the field that mentions it. */
  readonly field: string;
  readonly id: string;
  readonly catalogue: CatalogueName;
  /** Where that is, in words: the scenario's name or the batch log. */
  readonly where: string;
}

/** The entries of a catalogue. */
export function catalogueOf(
  plan: Plan,
  name: CatalogueName,
): readonly { readonly id: string; readonly name: string }[] {
  return name === 'patterns' ? plan.crew.patterns : plan[name];
}

/** Every place where a scenario mentions an entry of a catalogue. @param path of the scenario in the plan */
export function scenarioMentions(scenario: Scenario, path: string): readonly Mention[] {
  const mention = (key: string, id: string, catalogue: CatalogueName): Mention => {
    return { field: `${path}.${key}`, id, catalogue, where: scenario.name };
  };
  const { roughingPump } = scenario;
  return [
    ...scenario.chambers.map((entry, i) => mention(`chambers.${i}.chamber`, entry.chamber, 'chambers')),
    mention('pump', scenario.pump, 'pumps'),
    ...(roughingPump === null ? [] : [mention('roughingPump', roughingPump, 'pumps')]),
    mention('hose', scenario.hose, 'hoses'),
    ...scenario.mix.map((entry, i) => mention(`mix.${i}.product`, entry.product, 'products')),
    mention('pattern', scenario.pattern, 'patterns'),
  ];
}

function logMentions(entry: LogEntry, path: string): readonly Mention[] {
  const where = 'the batch log';
  const chamber: Mention = { field: `${path}.chamber`, id: entry.chamber, catalogue: 'chambers', where };
  if (entry.kind === 'pressureRise') return [chamber];
  return [chamber, { field: `${path}.product`, id: entry.product, catalogue: 'products', where }];
}

/** Every place where scenarios and batch log mention a product, chamber, pump, hose or shift pattern. */
export function mentions(plan: Plan): readonly Mention[] {
  return [
    ...plan.scenarios.flatMap((scenario, i) => scenarioMentions(scenario, `scenarios.${i}`)),
    ...plan.batchLog.flatMap((entry, i) => logMentions(entry, `batchLog.${i}`)),
  ];
}
