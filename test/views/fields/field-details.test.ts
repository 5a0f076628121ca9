import { describe, expect, it } from 'vitest';
import { DEMO_PLAN } from '../../../lib/plan/demo-plan.ts';
import { fieldDetails } from '../../../lib/views/fields/field-details.ts';
import { previewField } from '../../../lib/views/fields/preview-field.ts';
import { editPart, type QuantityPart } from '../../../lib/views/fields/quantity-part.ts';
import { presentState, startSheet } from '../../../lib/views/sheet-history.ts';
import { cellIn, stateOf } from './demo-blocks.ts';

const STATE = stateOf(DEMO_PLAN);

function detailsOf(place: string) {
  return fieldDetails(DEMO_PLAN, cellIn(STATE, place));
}

describe('what there is to tell of a field', () => {
  it('is its meaning, its range and all that stands beside the value', () => {
    expect(detailsOf('chambers.@mid.price')).toMatchObject({
      owner: 'Mid-size chamber',
      value: '$21,500',
      range: 'From $0 to $10,000,000. Usually $26,000.',
      quantity: { origin: 'quoted', low: '20,000', high: '24,500', unit: '$' },
    });
  });

  it('names the source in full where the bibliography has it', () => {
    expect(detailsOf('products.@strawberries.water').quantity?.reference).toMatch(/^U.S. Department of Agriculture/);
    expect(detailsOf('chambers.@mid.price').quantity?.reference).toBe('');
  });

  it('says what each choice means', () => {
    expect(detailsOf('products.@strawberries.form').choices.map((choice) => choice.label)).toContain('poured');
  });

  it.each([
    ['pumps.@small.speed', '7 m3/h', '= 7 m³/h = 4.1200445 cfm'],
    ['chambers.@mid.price', '3*4500+200', '= 13,700 USD'],
  ])('of %s: "%s" is previewed as %s', (place, text, words) => {
    expect(previewField(DEMO_PLAN, cellIn(STATE, place), text)).toEqual({ isGood: true, words });
  });

  it('previews nothing where there is nothing to add', () => {
    expect(previewField(DEMO_PLAN, cellIn(STATE, 'chambers.@mid.price'), '13700')).toBeNull();
    expect(previewField(DEMO_PLAN, cellIn(STATE, 'chambers.@mid.price'), 'lots')?.isGood).toBe(false);
  });
});

describe('parts beside a value', () => {
  function edited(part: QuantityPart, text: string) {
    const outcome = editPart('chambers.@mid.price', part, text)(startSheet(DEMO_PLAN));
    return { ...outcome, price: presentState(outcome.sheet).plan.chambers[0]?.price };
  }

  it('are changed one by one', () => {
    expect(edited('origin', 'measured').price).toMatchObject({ value: 21500, origin: 'measured', low: 20000 });
    expect(edited('low', '21000').price?.low).toBe(21000);
    expect(edited('high', '').price).not.toHaveProperty('high');
    expect(edited('note', 'With freight').price?.note).toBe('With freight');
    expect(edited('source', 'Quote of 3 May').price?.source).toBe('Quote of 3 May');
  });

  it('are refused where they make no sense', () => {
    expect(edited('low', '30000')).toMatchObject({ done: false, price: DEMO_PLAN.chambers[0]?.price });
    expect(edited('high', 'much')).toMatchObject({ done: false });
    expect(edited('origin', 'rumour')).toMatchObject({ done: false });
    expect(edited('note', 'x'.repeat(2001))).toMatchObject({ done: false });
  });

  it('are read in the unit shown and kept in the unit of the value', () => {
    const outcome = editPart('pumps.@small.speed', 'low', '2.5')(startSheet(DEMO_PLAN));
    const speed = presentState(outcome.sheet).plan.pumps[0]?.speed;
    expect(speed?.unit).toBe('m³/h');
    expect(speed?.low).toBeCloseTo(2.5 * 1.69901082, 6);
  });
});
