import { formatFixed, formatPercent, NONE } from '../format-number.ts';
import { assumptionSection } from './assumption-section.ts';
import { cautionSection, methodSection } from './closing-sections.ts';
import { coverSection } from './cover-section.ts';
import { debtSection, scheduleSection } from './debt-sections.ts';
import { moneyText, outputText, ratioText } from './document-text.ts';
import type { DocumentFact, DocumentSection, LenderDocument, LenderSources } from './document-types.ts';
import { economicsSection } from './economics-section.ts';
import { newLoans, requestSection } from './request-section.ts';
import { breakEvenSection, returnSection, riskSection, stressSection } from './risk-sections.ts';
import { salesSection } from './sales-section.ts';
import { securitySection } from './security-section.ts';
import { expansionSection, shopSection } from './shop-section.ts';
import { monthlySection, yearlySection } from './statement-sections.ts';

function keyFacts(sources: LenderSources): DocumentFact[] {
  const { result, today, shown } = sources;
  const { lowestCover, lowestCoverOwnerPaid, line, meetsLine } = result.finance;
  const asked = newLoans(sources).reduce((sum, loan) => sum + loan.principal, 0);
  const margin = result.breakEven.withLoans.marginOfSafety;
  const verdict =
    meetsLine === null
      ? 'no loan'
      : meetsLine
        ? `meets the line of ${formatFixed(line, 2)}`
        : `below the line of ${formatFixed(line, 2)}`;
  const paid = lowestCoverOwnerPaid === null ? '' : `; ${ratioText(lowestCoverOwnerPaid)} with the owner's hours paid`;
  return [
    {
      label: 'Loan asked for',
      value: moneyText(asked, shown),
      note: `of ${moneyText(result.capitalTotal, shown)} to be bought`,
    },
    { label: 'Lowest DSCR, any twelve months', value: ratioText(lowestCover), note: `${verdict}${paid}` },
    {
      label: 'Margin of safety',
      value: margin === null ? NONE : formatPercent(margin),
      note: 'of sales, loan payments covered',
    },
    { label: 'Payback', value: outputText('payback', result, shown), note: 'after tax, loans left out' },
    { label: 'Net present value', value: outputText('npv', result, shown), note: 'against staying as today' },
    {
      label: 'Dried product a week',
      value: outputText('dryOut', result, shown),
      note: `${outputText('dryOut', today, shown)} today`,
    },
  ];
}

function sectionsOf(sources: LenderSources): readonly DocumentSection[] {
  return [
    requestSection(sources),
    shopSection(sources),
    expansionSection(sources),
    economicsSection(sources),
    salesSection(sources),
    monthlySection(sources),
    yearlySection(sources),
    debtSection(sources),
    coverSection(sources),
    securitySection(sources),
    breakEvenSection(sources),
    returnSection(sources),
    stressSection(sources),
    riskSection(sources),
    assumptionSection(sources),
    methodSection(sources),
    cautionSection(),
    ...(sources.result.finance.loans.length > 0 ? [scheduleSection(sources)] : []),
  ];
}

/** The papers a lender is given, as plain data: every figure is that of the result, written as the sheet writes it. */
export function lenderDocument(sources: LenderSources): LenderDocument {
  const { plan, scenario, date } = sources;
  return {
    title: 'Lender pack',
    shop: plan.site.shopName,
    place: plan.site.place,
    scenario: scenario.name,
    date,
    facts: keyFacts(sources),
    sections: sectionsOf(sources),
  };
}
