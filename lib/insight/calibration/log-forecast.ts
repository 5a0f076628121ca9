import type { DryingSetting } from './drying-setting.ts';
import { type FitParameter, valueAtPlace } from './fit-parameter.ts';
import { type DryingForecast, forecastDrying } from './forecast-drying.ts';
import { chamberWith, productWith } from './with-fitted.ts';

/** What a batch's drying hangs on beside the fitted values. */
export interface BatchKind {
  readonly chamber: string;
  readonly product: string;
  /** [kg] */
  readonly wet: number;
}

/**
 * Forecasts of batches at any values of the parameters. Every drying is worked out once: batches of one kind share it, and so
 * do places that differ only in values of other chambers and products.
 */
export class LogForecast {
  readonly #setting: DryingSetting;
  readonly #parameters: readonly FitParameter[];
  readonly #onDrying: () => void;
  readonly #known = new Map<string, DryingForecast | null>();
  /** Places of the parameters that matter to a chamber and product. */
  readonly #relevant = new Map<string, readonly number[]>();

  /** @param onDrying told after each drying that had to be worked out */
  constructor(setting: DryingSetting, parameters: readonly FitParameter[], onDrying: () => void = () => {}) {
    this.#setting = setting;
    this.#parameters = parameters;
    this.#onDrying = onDrying;
  }

  /** How many dryings have been worked out. */
  get dryings(): number {
    return this.#known.size;
  }

  /** The forecast for a batch; null when it would never get dry. */
  of(kind: BatchKind, places: readonly number[]): DryingForecast | null {
    const relevant = this.relevantTo(kind);
    const key = [kind.chamber, kind.product, kind.wet, ...relevant.map((k) => places[k])].join(' ');
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    const made = this.#dry(kind, places, relevant);
    this.#known.set(key, made);
    this.#onDrying();
    return made;
  }

  /** Positions of the parameters on which a batch hangs. */
  relevantTo({ chamber, product }: Pick<BatchKind, 'chamber' | 'product'>): readonly number[] {
    const key = `${chamber} ${product}`;
    const known = this.#relevant.get(key);
    if (known) return known;
    const made = this.#parameters.flatMap(({ list, id }, k) =>
      id === (list === 'chambers' ? chamber : product) ? [k] : [],
    );
    this.#relevant.set(key, made);
    return made;
  }

  #dry(kind: BatchKind, places: readonly number[], relevant: readonly number[]): DryingForecast | null {
    const unit = this.#setting.units.get(kind.chamber);
    let product = this.#setting.products.get(kind.product);
    if (!unit || !product)
      throw new RangeError(`no chamber "${kind.chamber}" or product "${kind.product}" in the setting`);
    let { chamber } = unit;
    for (const k of relevant) {
      const parameter = this.#parameters[k] as FitParameter;
      const value = valueAtPlace(parameter, places[k] as number);
      chamber = chamberWith(chamber, parameter.key, value);
      product = productWith(product, parameter.key, value);
    }
    return forecastDrying({ ...unit, chamber }, this.#setting.pump, product, kind.wet);
  }
}
