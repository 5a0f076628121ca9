import { execFile } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import ExcelJS from 'exceljs';

/** Makes LibreOffice work every formula out again; left alone it believes the figures that a file brings along. */
const NEVER_TRUST_CACHED = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load">
<prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item></oor:items>`;

/** A profile of its own, so that no other setting of the machine matters. */
function profileIn(folder: string): string {
  const user = join(folder, 'profile', 'user');
  mkdirSync(user, { recursive: true });
  writeFileSync(join(user, 'registrymodifications.xcu'), NEVER_TRUST_CACHED);
  return pathToFileURL(join(folder, 'profile')).href;
}

async function readWorkbook(path: string): Promise<ExcelJS.Workbook> {
  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.readFile(path);
  return workbook;
}

/**
 * Workbooks as LibreOffice works them out, in one run.
 * @param office path of the program
 * @param files bytes of .xlsx files
 */
export async function recalculate(office: string, files: readonly Uint8Array[]): Promise<ExcelJS.Workbook[]> {
  const folder = mkdtempSync(join(tmpdir(), 'rimeplan-office-'));
  try {
    const names = files.map((_, k) => `book-${k}.xlsx`);
    files.forEach((bytes, k) => {
      writeFileSync(join(folder, names[k] ?? ''), bytes);
    });
    const profile = `-env:UserInstallation=${profileIn(folder)}`;
    const paths = names.map((name) => join(folder, name));
    const args = ['--headless', profile, '--convert-to', 'xlsx', '--outdir', join(folder, 'out'), ...paths];
    await promisify(execFile)(office, args, { timeout: 110_000 });
    return await Promise.all(names.map((name) => readWorkbook(join(folder, 'out', name))));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** What a cell of a workbook read back comes to; the empty text for nothing. */
export function valueAt(workbook: ExcelJS.Workbook, sheet: string, row: number, column: number): number | string {
  const cell = workbook.getWorksheet(sheet)?.getCell(row + 1, column + 1);
  const value: unknown = cell?.formula ? cell.result : cell?.value;
  if (typeof value === 'number' || typeof value === 'string') return value;
  return value === null || value === undefined || (typeof value === 'object' && !('error' in value))
    ? ''
    : String(value);
}
