import { type MouseEvent, memo } from 'react';
import type {
  DocumentBlock,
  DocumentFact,
  DocumentItem,
  DocumentSection,
  LenderDocument,
  LenderSources,
} from '../../lib/views/lender/document-types.ts';
import { DocumentFigureView } from './document-figure.tsx';
import { DocumentTableView } from './document-table.tsx';
import styles from './lender-paper.module.css';

function Facts({ facts }: { readonly facts: readonly DocumentFact[] }) {
  return (
    <dl className={styles.facts}>
      {facts.map(({ label, value, note }) => (
        <div key={label}>
          <dt>{label}</dt>
          <dd className={styles.factValue}>{value}</dd>
          {note ? <dd className={styles.factNote}>{note}</dd> : null}
        </div>
      ))}
    </dl>
  );
}

interface ListProps {
  readonly items: readonly DocumentItem[];
  readonly isNumbered?: boolean | undefined;
}

function List({ items, isNumbered }: ListProps) {
  const Kind = isNumbered ? 'ol' : 'ul';
  return (
    <Kind className={styles.list}>
      {items.map(({ about, words }) => (
        <li key={`${about} ${words}`}>
          {about === '' ? null : <strong>{about}. </strong>}
          {words}
        </li>
      ))}
    </Kind>
  );
}

function Block({ block, sources }: { readonly block: DocumentBlock; readonly sources: LenderSources }) {
  switch (block.kind) {
    case 'words':
      return <p className={styles.words}>{block.text}</p>;
    case 'heading':
      return <h3 className={styles.heading}>{block.text}</h3>;
    case 'facts':
      return <Facts facts={block.facts} />;
    case 'list':
      return <List items={block.items} isNumbered={block.isNumbered} />;
    case 'table':
      return <DocumentTableView table={block.table} />;
    case 'figure':
      return <DocumentFigureView figure={block.figure} sources={sources} />;
  }
}

function sectionClass({ blocks, isApart }: DocumentSection): string | undefined {
  if (blocks.some((block) => block.kind === 'table' && block.table.isWide)) return styles.wide;
  return isApart ? `${styles.section} ${styles.apart}` : styles.section;
}

/** The address names the part of the plan that is open and must stay; only a saved file follows the link itself. */
function goTo(event: MouseEvent<HTMLAnchorElement>): void {
  event.preventDefault();
  document.getElementById(event.currentTarget.hash.slice(1))?.scrollIntoView();
}

/** What the papers hold, each part a step away on the screen and in a saved file. */
function Contents({ papers }: { readonly papers: LenderDocument }) {
  return (
    <nav aria-label="Parts of the papers" className={styles.contents}>
      <ol>
        {papers.sections.map(({ id, title }) => (
          <li key={id}>
            <a href={`#papers-${id}`} onClick={goTo}>
              {title}
            </a>
          </li>
        ))}
      </ol>
    </nav>
  );
}

interface Props {
  readonly papers: LenderDocument;
  readonly sources: LenderSources;
  readonly paper: 'a4' | 'letter';
}

/** The papers a lender is given, as they are printed. */
export const LenderPaper = memo(function LenderPaper({ papers, sources, paper }: Props) {
  return (
    <article className={styles.paper} data-paper={paper} aria-label={`${papers.title}: ${papers.scenario}`}>
      <header className={styles.head}>
        <p className={styles.kind}>{papers.title}</p>
        <h2 className={styles.title}>{papers.shop}</h2>
        <p className={styles.subtitle}>{papers.scenario}</p>
        <p className={styles.date}>
          {[papers.place, papers.date, `all money in ${sources.shown.currency}`]
            .filter((part) => part !== '')
            .join(' · ')}
        </p>
      </header>
      <Facts facts={papers.facts} />
      <Contents papers={papers} />
      {papers.sections.map((section, k) => (
        <section key={section.id} className={sectionClass(section)} data-section={section.id}>
          <h2 id={`papers-${section.id}`}>
            <span className={styles.number}>{k + 1}</span> {section.title}
          </h2>
          {section.blocks.map((block, place) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: blocks of a section have no name and keep their places
            <Block key={place} block={block} sources={sources} />
          ))}
        </section>
      ))}
    </article>
  );
});
