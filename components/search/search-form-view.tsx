import type { Plan } from '../../lib/plan/plan-types.ts';
import type { ShownAs } from '../../lib/views/format-quantity.ts';
import {
  type ChoiceKey,
  choiceLists,
  LIMIT_LABELS,
  type LimitKey,
  limitUnit,
  type SearchFaults,
  type SearchForm,
} from '../../lib/views/search/search-form.ts';
import { ChoiceSet } from './choice-set.tsx';
import { CountRange } from './count-range.tsx';
import { FigureEntry } from './figure-entry.tsx';
import styles from './search-panel.module.css';

interface Props {
  readonly plan: Plan;
  readonly form: SearchForm;
  readonly faults: SearchFaults;
  readonly shown: ShownAs;
  readonly onChange: (form: SearchForm) => void;
}

function Limits({ form, faults, shown, onChange }: Omit<Props, 'plan'>) {
  return (
    <fieldset className={styles.block}>
      <legend>Not beyond</legend>
      {(Object.keys(LIMIT_LABELS) as LimitKey[]).map((limit) => (
        <FigureEntry
          key={limit}
          label={LIMIT_LABELS[limit]}
          unit={limitUnit(limit, shown)}
          hint="no limit"
          value={form.limits[limit]}
          fault={faults[`limit ${limit}`]}
          onChange={(text) => onChange({ ...form, limits: { ...form.limits, [limit]: text } })}
        />
      ))}
    </fieldset>
  );
}

function Counts({ plan, form, faults, onChange }: Omit<Props, 'shown'>) {
  return (
    <fieldset className={styles.block}>
      <legend>How many</legend>
      {plan.chambers.map(({ id, name }) => (
        <CountRange
          key={id}
          label={name}
          counts={form.chambers[id] ?? { least: '0', most: '0' }}
          fault={faults[`chamber ${id}`]}
          onChange={(counts) => onChange({ ...form, chambers: { ...form.chambers, [id]: counts } })}
        />
      ))}
      <FigureEntry
        label="Chambers in all, at most"
        value={form.mostChambers}
        fault={faults.mostChambers}
        onChange={(mostChambers) => onChange({ ...form, mostChambers })}
      />
      {plan.freezer ? (
        <CountRange
          label="Freezers"
          counts={form.freezers}
          fault={faults.freezers}
          onChange={(freezers) => onChange({ ...form, freezers })}
        />
      ) : null}
    </fieldset>
  );
}

function Choices({ plan, form, faults, onChange }: Omit<Props, 'shown'>) {
  const lists = choiceLists(plan, form);
  const set = (key: ChoiceKey) => {
    const list = lists[key];
    return list ? (
      <ChoiceSet
        key={key}
        label={list.label}
        options={list.options}
        chosen={form.choices[key]}
        fault={faults[key]}
        onChange={(chosen) => onChange({ ...form, choices: { ...form.choices, [key]: chosen } })}
      />
    ) : null;
  };
  return (
    <>
      {(['arrangements', 'pumps', 'patterns'] as const).map(set)}
      <details className={styles.more}>
        <summary>Hoses, ways to start, spare pump</summary>
        {(['hoses', 'practices', 'roughingPumps', 'spares'] as const).map(set)}
      </details>
    </>
  );
}

/** What must not be gone beyond and what may be combined. */
export function SearchFormView({ plan, form, faults, shown, onChange }: Props) {
  return (
    <>
      <Limits form={form} faults={faults} shown={shown} onChange={onChange} />
      <Counts plan={plan} form={form} faults={faults} onChange={onChange} />
      <Choices plan={plan} form={form} faults={faults} onChange={onChange} />
      <label className={styles.base}>
        Products, month of purchase and all else as in
        <select value={form.baseId} onChange={(event) => onChange({ ...form, baseId: event.target.value })}>
          {plan.scenarios.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
    </>
  );
}
