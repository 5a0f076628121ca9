import { expect, it } from 'vitest';
import { findHtmlSinks } from './html-sinks.ts';

const file = (text: string) => ({ path: 'components/a.tsx', text });

it.each([
  'box.innerHTML = name;',
  'const a = <p dangerouslySetInnerHTML={{ __html: name }} />;',
  'const a = <iframe srcDoc={name} />;',
  'eval(name);',
  'const run = new Function(name);',
  'box.insertAdjacentHTML("beforeend", name);',
])('finds %s', (text) => {
  expect(findHtmlSinks([file(`\n${text}`)])).toEqual([expect.stringMatching(/^components\/a\.tsx:2: /)]);
});

it('lets text be text', () => {
  const text = 'box.textContent = name; const a = <p title={name}>{name}</p>; // innerHTML\nconst f: Function = g;';
  expect(findHtmlSinks([file(text)])).toEqual([]);
});
