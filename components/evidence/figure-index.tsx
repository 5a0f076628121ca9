import styles from './figure-index.module.css';
import { FIGURE_GROUPS, type FigureName, slotId } from './figure-list.ts';

function goTo(name: FigureName): void {
  const slot = document.getElementById(slotId(name));
  slot?.scrollIntoView({ block: 'start' });
  slot?.focus({ preventScroll: true });
}

/** The figures by group; each goes to its place on the page. */
export function FigureIndex() {
  return (
    <nav className={styles.index} aria-label="Figures">
      {FIGURE_GROUPS.map((group) => (
        <div key={group.name} className={styles.group}>
          <p>{group.name}</p>
          <ul>
            {group.figures.map((name) => (
              <li key={name}>
                <button type="button" onClick={() => goTo(name)}>
                  {name}
                </button>
              </li>
            ))}
          </ul>
        </div>
      ))}
    </nav>
  );
}
