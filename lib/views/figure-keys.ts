import { CATALOGUES, type CatalogueName, catalogueOf, scenarioMentions } from '../plan/mentions.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import { scenarioChain } from '../plan/scenario-chain.ts';
import { ShortNames } from './short-names.ts';

/** Texts that are equal where the answers are: two scenarios with the same key share them, whatever the scenarios are called. */
export interface ScenarioKeys {
  /** For the figures, in which machines and loans stand by name. */
  readonly figures: string;
  /** For what is told without a name: bottleneck and knee. */
  readonly nameless: string;
}

/** Parts of the plan told apart at a time. */
const MOST_PARTS = 4000;

/** Catalogues whose entries stand by name in the figures, as lines of what has to be paid. */
const NAMED: ReadonlySet<CatalogueName> = new Set(['chambers', 'pumps', 'hoses']);

/** Figures hang on a quantity's value and unit; where it came from and how far it may go are for the reader and for studies. */
function plainQuantity(value: unknown): unknown {
  const isQuantity = typeof value === 'object' && value !== null && 'origin' in value && 'value' in value;
  return isQuantity ? [value.value, (value as { readonly unit?: unknown }).unit] : value;
}

function withoutNotes(key: string, value: unknown): unknown {
  return key === 'note' || key === 'notes' ? undefined : plainQuantity(value);
}

function withoutWords(key: string, value: unknown): unknown {
  return key === 'name' ? undefined : withoutNotes(key, value);
}

/** What each object comes to as text; the objects of a plan never change. */
class Texts {
  readonly #known = new WeakMap<object, string>();
  readonly #write: (part: object) => string;

  constructor(write: (part: object) => string) {
    this.#write = write;
  }

  of(part: object): string {
    const known = this.#known.get(part);
    if (known !== undefined) return known;
    const text = this.#write(part);
    this.#known.set(part, text);
    return text;
  }
}

function scenarioText(scenario: object): string {
  const { id: _id, after: _after, ...rest } = scenario as Scenario;
  return JSON.stringify(rest, withoutWords);
}

/** The site without its labels and the units figures are shown in; the crew without its patterns, of which a scenario has one. */
function placeText(part: object): string {
  const {
    shopName: _shop,
    place: _place,
    unitSystem: _units,
    patterns: _patterns,
    ...rest
  } = part as Plan['site'] & Plan['crew'];
  return JSON.stringify(rest, withoutWords);
}

/** Makes the keys of scenarios, and remembers what the parts of a plan come to. */
export class FigureKeys {
  readonly #short = new ShortNames(MOST_PARTS);
  readonly #scenario = new Texts(scenarioText);
  readonly #place = new Texts((part) => this.#short.of(placeText(part)));
  readonly #named = new Texts((part) => this.#short.of(JSON.stringify(part, withoutNotes)));
  readonly #nameless = new Texts((part) => this.#short.of(JSON.stringify(part, withoutWords)));

  /**
   * Every return is judged against today, so today and all it uses are part of every key, and so are the scenarios that are bought
   * on the way. Of the catalogues only what these mention counts.
   */
  of(plan: Plan, scenario: Scenario): ScenarioKeys {
    const [today] = plan.scenarios;
    const chain = scenarioChain(plan, scenario);
    const before = [...(today ? [today] : []), ...chain.slice(0, -1)].map((one) => this.#scenario.of(one));
    const used = this.#usedBy(plan, today ? [today, ...chain] : chain);
    const common = [
      this.#place.of(plan.site),
      this.#place.of(plan.crew),
      plan.freezer ? this.#nameless.of(plan.freezer) : 'none',
    ];
    const own = [scenario === today ? 'today' : 'row', this.#scenario.of(scenario), ...before].join(' ');
    const key = (texts: Texts, parts: readonly string[]) =>
      [...common, texts.of(plan.financing), ...parts, own].join(' ');
    return { figures: key(this.#named, used.named), nameless: key(this.#nameless, used.nameless) };
  }

  #usedBy(plan: Plan, scenarios: readonly Scenario[]) {
    const mentioned = new Set(
      scenarios.flatMap((one) => scenarioMentions(one, '').map(({ catalogue, id }) => `${catalogue} ${id}`)),
    );
    const parts = CATALOGUES.flatMap((catalogue) =>
      catalogueOf(plan, catalogue).flatMap((entry, place) => {
        // Findings name a field by the place of its entry.
        const sign = `${catalogue}.${place}`;
        return mentioned.has(`${catalogue} ${entry.id}`) ? [{ catalogue, entry, sign }] : [];
      }),
    );
    const written = (texts: (catalogue: CatalogueName) => Texts) =>
      parts.map(({ catalogue, entry, sign }) => `${sign}${texts(catalogue).of(entry)}`);
    return {
      named: written((catalogue) => (NAMED.has(catalogue) ? this.#named : this.#nameless)),
      nameless: written(() => this.#nameless),
    };
  }
}
