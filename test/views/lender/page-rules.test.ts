import { describe, expect, it } from 'vitest';
import { cssString } from '../../../lib/views/lender/css-string.ts';
import { pageRules } from '../../../lib/views/lender/page-rules.ts';

const PAPERS = {
  title: '',
  shop: 'A "shop"; }',
  place: '',
  scenario: '</style>',
  date: '2026-01-01',
  facts: [],
  sections: [],
};

describe('rules of the printed page', () => {
  it('name the paper and count pages', () => {
    expect(pageRules(PAPERS, 'a4')).toContain('size: A4 portrait');
    expect(pageRules(PAPERS, 'letter')).toContain('size: letter landscape');
    expect(pageRules(PAPERS, 'letter')).toContain('counter(page) " of " counter(pages)');
  });

  it('let no name end a string or the style sheet', () => {
    const rules = pageRules(PAPERS, 'a4');
    expect(rules).not.toContain('</style');
    expect(rules.split('"').length % 2).toBe(1);
    expect(cssString('a"b\\c\n')).toBe('"a\\22 b\\5c c\\a "');
    expect(cssString('Müller, Söhne (2)')).toBe('"Müller, Söhne (2)"');
  });
});
