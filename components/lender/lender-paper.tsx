import { memo } from 'react';
import type {
  DocumentBlock,
  DocumentFact,
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

function List({ items }: { readonly items: readonly { readonly about: string; readonly words: string }[] }) {
  return (
    <ul className={styles.list}>
      {items.map(({ about, words }) => (
        <li key={`${about} ${words}`}>
          {about === '' ? null : <strong>{about}. </strong>}
          {words}
        </li>
      ))}
    </ul>
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
      return <List items={block.items} />;
    case 'table':
      return <DocumentTableView table={block.table} />;
    case 'figure':
      return <DocumentFigureView figure={block.figure} sources={sources} />;
  }
}

function isWide({ blocks }: DocumentSection): boolean {
  return blocks.some((block) => block.kind === 'table' && block.table.isWide);
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
          {papers.place} · {papers.date} · all money in {sources.shown.currency}
        </p>
      </header>
      <Facts facts={papers.facts} />
      {papers.sections.map((section, k) => (
        <section key={section.id} className={isWide(section) ? styles.wide : styles.section} data-section={section.id}>
          <h2>
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
