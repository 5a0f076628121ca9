import { accuracyLines } from './accuracy-table.ts';
import { accuracyTable } from './measure.ts';
import { type MoneyRow, measureMoney } from './money-row.ts';
import { MONEY_ROWS } from './money-rows.ts';
import { PHYSICS_ROWS } from './physics-rows.ts';
import { RISK_ROWS } from './risk-rows.ts';
import { stepAccuracyTable } from './step-accuracy.ts';

// Prints the accuracy tables of README: npm run --silent accuracy. The same rows fail the tests when one is off.

function moneyTable(rows: readonly MoneyRow[]): readonly string[] {
  return accuracyLines(rows.map(measureMoney));
}

const SECTIONS: readonly (readonly [title: string, rows: number, table: readonly string[]])[] = [
  ['Physics', PHYSICS_ROWS.length, accuracyTable(PHYSICS_ROWS)],
  ['Money', MONEY_ROWS.length, moneyTable(MONEY_ROWS)],
  ['Chance and spread', RISK_ROWS.length, moneyTable(RISK_ROWS)],
];

for (const [title, rows, table] of SECTIONS) {
  console.log(`### ${title}: ${rows} published or independently recomputed values\n\n${table.join('\n')}\n`);
}
console.log(`### Steps of the engine against an independent integration\n\n${stepAccuracyTable().join('\n')}`);
