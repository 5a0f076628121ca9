'use client';

import type { RefObject } from 'react';
import { chartPicture, pngBlob, svgBlob } from '../../lib/io/chart-picture.ts';
import { offerBlob } from '../../lib/io/offer-blob.ts';
import { type DataSeries, seriesCsv } from '../../lib/views/data-series.ts';
import { getPlanner } from '../state/planner.ts';
import styles from './save-buttons.module.css';

interface Props {
  readonly figure: RefObject<HTMLElement | null>;
  readonly name: string;
  readonly title: string;
  readonly fileName: string;
  readonly series: DataSeries;
}

/** Saves a figure as a picture or its numbers as a table. */
export function SaveButtons({ figure, name, title, fileName, series }: Props) {
  async function savePicture(kind: 'svg' | 'png') {
    const picture = figure.current ? chartPicture(figure.current, title) : null;
    if (!picture) return;
    try {
      offerBlob(`${fileName}.${kind}`, kind === 'svg' ? svgBlob(picture) : await pngBlob(picture));
      getPlanner().say(`Saved as ${fileName}.${kind}.`);
    } catch {
      getPlanner().say('This browser could not draw the picture. Save it as SVG instead.', 'bad');
    }
  }
  function saveTable() {
    offerBlob(`${fileName}.csv`, new Blob(['\uFEFF', seriesCsv(series)], { type: 'text/csv;charset=utf-8' }));
    getPlanner().say(`Saved as ${fileName}.csv.`);
  }
  return (
    // biome-ignore lint/a11y/useSemanticElements: a group of buttons is no set of form fields
    <div role="group" className={styles.buttons} aria-label={`Save ${name}`}>
      <span aria-hidden="true">Save</span>
      <button type="button" aria-label="Save as SVG" onClick={() => void savePicture('svg')}>
        SVG
      </button>
      <button type="button" aria-label="Save as PNG" onClick={() => void savePicture('png')}>
        PNG
      </button>
      <button type="button" aria-label="Save as CSV" onClick={saveTable}>
        CSV
      </button>
    </div>
  );
}
