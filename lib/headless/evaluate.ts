import { writeFile } from 'node:fs/promises';
import type { Finding } from '../result.ts';
import { evaluateText } from './evaluate-text.ts';
import { fileFault, overwritesPlan } from './file-fault.ts';
import { findingLines } from './finding-lines.ts';
import { findingsJson } from './findings-json.ts';
import { internalFault } from './internal-fault.ts';
import { isSameFile } from './is-same-file.ts';
import { readOptions } from './read-options.ts';
import { readPlanText } from './read-plan-text.ts';
import type { ResultsJson } from './results-json.ts';
import { USAGE } from './usage.ts';

function print(text: string): void {
  process.stdout.write(`${text}\n`);
}

function tell(line: string): void {
  process.stderr.write(`${line}\n`);
}

function refuse(findings: readonly Finding[]): void {
  for (const line of findingLines(findings)) tell(line);
  print(JSON.stringify(findingsJson(findings), null, 2));
  process.exitCode = 1;
}

/** Says which rows could not be worked out; they are among the results as refused. */
function tellRefused({ scenarios }: ResultsJson): void {
  for (const scenario of scenarios) {
    if (scenario.kind === 'refused') {
      for (const line of findingLines(scenario.findings)) tell(`${scenario.name}: ${line}`);
    }
  }
}

async function deliver(results: ResultsJson, out: string | null): Promise<void> {
  const text = JSON.stringify(results, null, 2);
  tellRefused(results);
  if (out === null) {
    print(text);
    return;
  }
  try {
    await writeFile(out, `${text}\n`);
  } catch (error) {
    refuse([fileFault('written', out, error)]);
  }
}

async function evaluate(file: string, scenario: string | null, out: string | null): Promise<void> {
  if (out !== null && (await isSameFile(file, out))) {
    refuse([overwritesPlan(out)]);
    return;
  }
  const text = await readPlanText(file);
  if (!text.ok) {
    refuse(text.error);
    return;
  }
  const results = evaluateText(file, text.value, scenario, ({ name }) => {
    if (process.stderr.isTTY) tell(`${name} …`);
  });
  if (results.ok) await deliver(results.value, out);
  else refuse(results.error);
}

async function run(words: readonly string[]): Promise<void> {
  const options = readOptions(words);
  if (!options.ok) refuse(options.error);
  else if (options.value.kind === 'help') print(USAGE);
  else await evaluate(options.value.file, options.value.scenario, options.value.out);
}

// Whoever reads the output may stop reading early, as `head` does; that is no fault.
process.stdout.on('error', () => {});

run(process.argv.slice(2)).catch((error: unknown) => refuse([internalFault(error)]));
