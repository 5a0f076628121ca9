import { useState } from 'react';
import { FOOD_CHOICES, takeComposition } from '../../lib/views/fields/composition-gesture.ts';
import { getPlanner } from '../state/planner.ts';
import styles from './composition-tool.module.css';

interface Props {
  /** The product that takes the composition; null when none is chosen. */
  readonly product: { readonly place: string; readonly name: string } | null;
}

/** Takes the composition of a usual food over into the chosen product. */
export function CompositionTool({ product }: Props) {
  const [key, setKey] = useState(FOOD_CHOICES[0]?.key ?? '');
  return (
    <span className={styles.tool}>
      <select aria-label="Usual food" value={key} onChange={(event) => setKey(event.target.value)}>
        {FOOD_CHOICES.map((food) => (
          <option key={food.key} value={food.key}>
            {food.label}
          </option>
        ))}
      </select>
      <button
        type="button"
        disabled={product === null}
        title={product ? undefined : 'Choose a cell of the product first.'}
        onClick={() => product && getPlanner().perform(takeComposition(product.place, key))}
      >
        {product ? `Composition for ${product.name}` : 'Composition'}
      </button>
    </span>
  );
}
