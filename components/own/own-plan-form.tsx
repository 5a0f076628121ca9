import type { ShownAs } from '../../lib/views/format-quantity.ts';
import { OWN_FOODS, OWN_PUMPS, OWN_TIMES, type OwnFaults, type OwnForm, ownUnit } from '../../lib/views/own-form.ts';
import { OwnFigure } from './own-figure.tsx';
import styles from './own-plan-dialog.module.css';

interface Props {
  readonly form: OwnForm;
  readonly faults: OwnFaults;
  readonly shown: ShownAs;
  readonly onChange: (form: OwnForm) => void;
}

interface ChoicesProps<Value extends string> {
  readonly name: string;
  readonly options: readonly { readonly value: Value; readonly label: string }[];
  readonly value: Value;
  readonly onChange: (value: Value) => void;
}

function Choices<Value extends string>({ name, options, value, onChange }: ChoicesProps<Value>) {
  return (
    <div className={styles.choices}>
      {options.map((option) => (
        <label key={option.value}>
          <input type="radio" name={name} checked={option.value === value} onChange={() => onChange(option.value)} />{' '}
          {option.label}
        </label>
      ))}
    </div>
  );
}

function Foods({ form, faults, onChange }: Omit<Props, 'shown'>) {
  const toggle = (key: string, isChosen: boolean) => {
    const others = form.foods.filter((food) => food !== key);
    onChange({ ...form, foods: isChosen ? [...others, key] : others });
  };
  return (
    <fieldset className={styles.question}>
      <legend>1. What do you dry?</legend>
      <div className={styles.foods}>
        {OWN_FOODS.map(({ key, label }) => (
          <label key={key}>
            <input
              type="checkbox"
              checked={form.foods.includes(key)}
              onChange={(event) => toggle(key, event.target.checked)}
            />{' '}
            {label}
          </label>
        ))}
      </div>
      <p className={styles.fault}>{faults.foods ? `${faults.foods.problem} ${faults.foods.remedy}` : ''}</p>
    </fieldset>
  );
}

/** The five questions. */
export function OwnPlanForm({ form, faults, shown, onChange }: Props) {
  const figure = (key: 'chambers' | 'shelfArea' | 'price' | 'weeklyDemand', label: string) => (
    <OwnFigure
      label={label}
      unit={ownUnit(key, shown)}
      value={form[key]}
      fault={faults[key]}
      onChange={(text) => onChange({ ...form, [key]: text })}
    />
  );
  return (
    <>
      <Foods form={form} faults={faults} onChange={onChange} />
      <fieldset className={styles.question}>
        <legend>2. How many chambers, and how big?</legend>
        <div className={styles.figures}>
          {figure('chambers', 'Chambers')}
          {figure('shelfArea', 'Tray area of one')}
        </div>
      </fieldset>
      <fieldset className={styles.question}>
        <legend>3. How are they pumped?</legend>
        <Choices name="pump" options={OWN_PUMPS} value={form.pump} onChange={(pump) => onChange({ ...form, pump })} />
      </fieldset>
      <fieldset className={styles.question}>
        <legend>4. When is somebody there?</legend>
        <Choices
          name="hours"
          options={OWN_TIMES}
          value={form.hours}
          onChange={(hours) => onChange({ ...form, hours })}
        />
      </fieldset>
      <fieldset className={styles.question}>
        <legend>5. What does it sell for, and how much of it?</legend>
        <div className={styles.figures}>
          {figure('price', 'Price of the dried product')}
          {figure('weeklyDemand', 'Sells in a week (empty: all that is made)')}
        </div>
      </fieldset>
    </>
  );
}
