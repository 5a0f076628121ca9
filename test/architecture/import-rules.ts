import { type Import, listImports, resolveImport } from './imports.ts';
import type { SourceText } from './source-text.ts';

/** Zones that a zone may import: everything from `values`, only types from `types`, and the single files of `registers`. */
interface Rule {
  readonly values: readonly string[];
  readonly types?: readonly string[];
  readonly registers?: readonly string[];
}

const PARTS = ['lib/plant', 'lib/cost', 'lib/finance'];
const GROUND = ['lib/result', 'lib/sources'];
const RESULTS = [...PARTS, 'lib/model', 'lib/risk', 'lib/insight'];
const ENGINE = ['lib/model', ...PARTS, 'lib/physics', 'lib/plan', 'lib/inputs', 'lib/numeric', 'lib/units', ...GROUND];
const BELOW_EDGES = ['lib/views', 'lib/insight', 'lib/risk', ...ENGINE];

/** What a computed quantity is called and means is data, and has one home. */
const REGISTERS = ['lib/model/outputs.ts'];

/** Who may import whom, lowest first. A zone may always import itself; `lib/x` is a folder or the file `lib/x.ts`. */
const RULES: Readonly<Record<string, Rule>> = {
  'lib/result': { values: [] },
  'lib/sources': { values: [] },
  'lib/units': { values: ['lib/result'] },
  'lib/numeric': { values: ['lib/result'] },
  'lib/physics': { values: ['lib/numeric', ...GROUND] },
  'lib/inputs': { values: ['lib/units', ...GROUND] },
  'lib/plan': { values: ['lib/inputs', 'lib/numeric', 'lib/units', ...GROUND] },
  'lib/plant': { values: ['lib/physics', 'lib/numeric', ...GROUND] },
  'lib/cost': { values: ['lib/numeric', ...GROUND] },
  'lib/finance': { values: ['lib/numeric', ...GROUND] },
  'lib/model': { values: ENGINE },
  'lib/risk': { values: ENGINE },
  'lib/insight': { values: ENGINE },
  'lib/views': {
    values: ['lib/plan', 'lib/inputs', 'lib/units', ...GROUND],
    types: RESULTS,
    registers: REGISTERS,
  },
  'lib/headless': { values: BELOW_EDGES },
  'lib/io': { values: BELOW_EDGES },
  components: {
    values: ['lib/io', 'lib/views', 'lib/plan', 'lib/inputs', 'lib/units', ...GROUND],
    types: RESULTS,
    registers: REGISTERS,
  },
  app: { values: ['components'] },
};

/** Where each package may be imported. A package that is not named here may be imported nowhere. */
const PACKAGES: Readonly<Record<string, readonly string[]>> = {
  react: ['components', 'app'],
  'react-dom': ['components', 'app'],
  next: ['components', 'app'],
  'ag-grid-community': ['components/sheet'],
  'ag-grid-react': ['components/sheet'],
  recharts: ['components/charts'],
  zod: ['lib/inputs', 'lib/plan', 'lib/io', 'lib/headless'],
  comlink: ['lib/io'],
  yalps: ['lib/numeric'],
  idb: ['lib/io'],
  hucre: ['lib/io'],
  'ml-levenberg-marquardt': ['lib/numeric'],
  papaparse: ['lib/plan'],
  node: ['lib/headless'],
};

/** The zone of a path: `lib/physics` for everything in that folder, `components`, `app`. */
function zoneOf(path: string): string {
  const [first = '', second = ''] = path.split('/');
  return first === 'lib' ? `lib/${second.replace(/\.ts$/, '')}` : first;
}

function packageOf(specifier: string): string {
  if (specifier.startsWith('node:')) return 'node';
  const parts = specifier.split('/');
  return parts.slice(0, specifier.startsWith('@') ? 2 : 1).join('/');
}

function isInside(path: string, folder: string): boolean {
  return path.startsWith(`${folder}/`);
}

function checkPackage(path: string, { specifier }: Import): string | undefined {
  const name = packageOf(specifier);
  const places = PACKAGES[name];
  if (!places) return `package ${name} is not in the table of packages`;
  if (places.some((place) => isInside(path, place))) return undefined;
  return `package ${name} belongs only in ${places.join(', ')}`;
}

function checkZones(from: string, target: string, typeOnly: boolean): string | undefined {
  const rule = RULES[from];
  const to = zoneOf(target);
  if (!rule) return `folder ${from} is not in the table of levels`;
  if (from === to || rule.values.includes(to) || rule.registers?.includes(target)) return undefined;
  if (!rule.types?.includes(to)) return `${from} must not import ${to}`;
  return typeOnly ? undefined : `${from} may import only types of ${to}`;
}

function checkImport(path: string, entry: Import, known: ReadonlySet<string>): string | undefined {
  const target = resolveImport(path, entry.specifier);
  if (target === undefined) return checkPackage(path, entry);
  if (/\.(?:css|json)$/.test(target)) return undefined;
  if (!known.has(target)) return `import ${entry.specifier} must name an existing file with its ending`;
  return checkZones(zoneOf(path), target, entry.typeOnly);
}

/** Imports that go upward or sideways, or that name a package in the wrong place. `files` must hold all that they import. */
export function findImportFaults(files: readonly SourceText[]): string[] {
  const known = new Set(files.map((file) => file.path));
  return files.flatMap((file) =>
    listImports(file).flatMap((entry) => {
      const problem = checkImport(file.path, entry, known);
      return problem ? [`${file.path}:${entry.line}: ${problem}`] : [];
    }),
  );
}
