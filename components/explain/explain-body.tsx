import type { ExplainLine, ExplainPage } from '../../lib/views/explain-view.ts';
import type { InputNote } from '../../lib/views/input-note.ts';
import styles from './explain-panel.module.css';

interface LinesProps {
  readonly title: string;
  readonly lines: readonly ExplainLine[];
  readonly onOpen: (place: number) => void;
}

function Lines({ title, lines, onOpen }: LinesProps) {
  if (lines.length === 0) return null;
  return (
    <section>
      <h3>{title}</h3>
      <ol className={styles.lines}>
        {lines.map((line, place) => (
          <li key={line.key}>
            <button type="button" className={styles.line} onClick={() => onOpen(place)}>
              <span className={styles.symbol}>{line.symbol}</span>
              <span>
                {line.label}
                <span className={styles.from} data-guess={line.isGuess}>
                  {line.from}
                </span>
              </span>
              <span className={styles.figure}>{line.value}</span>
            </button>
          </li>
        ))}
      </ol>
    </section>
  );
}

function Sources({ sources }: { readonly sources: readonly string[] }) {
  if (sources.length === 0) return null;
  return (
    <section>
      <h3>Laws behind it</h3>
      <ul className={styles.sources}>
        {sources.map((source) => (
          <li key={source}>{source}</li>
        ))}
      </ul>
    </section>
  );
}

function InputFacts({ note }: { readonly note: InputNote }) {
  const facts = [
    ['Where it comes from', note.origin],
    ['Entered as', note.entered],
    ['From low to high', note.range],
    ['Source', note.source],
    ['Note', note.note],
    ['Found under', note.place],
  ].filter(([, text]) => text !== '');
  return (
    <>
      <p>{note.meaning}</p>
      <dl className={styles.facts}>
        {facts.map(([name, text]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}

interface Props {
  readonly page: ExplainPage;
  readonly onOpen: (place: number) => void;
}

/** One level of an explanation: a formula with its numbers, what was counted, an entry of the plan, or a fixed number. */
export function ExplainBody({ page, onOpen }: Props) {
  switch (page.kind) {
    case 'worked':
      return (
        <>
          <p>{page.formula}</p>
          <p className={styles.formula}>= {page.symbols}</p>
          <Lines title="The numbers that went in" lines={page.lines} onOpen={onOpen} />
        </>
      );
    case 'counted':
      return (
        <>
          <p className={styles.counted}>{`${page.where.charAt(0).toUpperCase()}${page.where.slice(1)}.`}</p>
          <p>{page.what}</p>
          <Lines title="It hangs most on" lines={page.lines} onOpen={onOpen} />
          <Sources sources={page.sources} />
        </>
      );
    case 'input':
      return <InputFacts note={page.note} />;
    case 'fixed':
      return <p>{page.why}</p>;
    case 'none':
      return <p>{page.why}</p>;
  }
}
