import { SOURCES, type Source, type SourceKey } from '../sources.ts';

function isKey(text: string): text is SourceKey {
  return Object.hasOwn(SOURCES, text);
}

/** A source as a reader would look it up: author, title, year, and what to know of it; own words as they are. */
export function sourceWords(keyOrWords: string): string {
  if (!isKey(keyOrWords)) return keyOrWords;
  const { author, title, year, note }: Source = SOURCES[keyOrWords];
  return `${author}: ${title} (${year}).${note ? ` ${note}` : ''}`;
}
