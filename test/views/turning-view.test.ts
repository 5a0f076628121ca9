import { describe, expect, it } from 'vitest';
import { type Dial, dialsFor } from '../../lib/insight/turning/dials.ts';
import type { TurningPoint } from '../../lib/insight/turning/turning-point.ts';
import type { TurningValue } from '../../lib/insight/turning/turning-value.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { turningView } from '../../lib/views/turning-view.ts';

const US = { system: 'us', currency: 'USD' } as const;

function dial(id: string): Dial {
  const found = dialsFor(DEMO_PLAN, 'three-shared').find((one) => one.id === id);
  if (!found) throw new Error(`no dial ${id}`);
  return found;
}

function point(id: string, worth: TurningValue, cover: TurningValue, stopsAbove: number | null = null): TurningPoint {
  return { dial: dial(id), worth, cover, stopsBelow: null, stopsAbove };
}

const NEVER: TurningValue = { kind: 'never' };
const turns = (factor: number, again: number[] = []): TurningValue => ({ kind: 'turns', factor, again });

describe('what must be true, in words', () => {
  const view = turningView(
    DEMO_PLAN,
    [
      point('wage', turns(1.5), turns(1.2)),
      point('price', turns(0.75), turns(0.89)),
      point('interest', NEVER, turns(2)),
      point('load', turns(0.5, [1.4]), { kind: 'none' }, 1.6),
      point('pumpPrice', NEVER, NEVER),
    ],
    1.25,
    US,
  );

  it('puts what has the least room first and names it in the title', () => {
    expect(view.rows.map(({ id }) => id)).toEqual(['price', 'wage', 'load', 'interest', 'pumpPrice']);
    expect(view.finding).toBe('Least room: it stops being worth its money with all prices 25 % lower');
  });

  it('tells today’s value, the turning value and how far away it is', () => {
    const [price, wage, load, interest, pump] = view.rows;
    expect(price).toMatchObject({ today: '100 % of today’s', worth: '75 % of today’s, 25 % lower', worthAway: -25 });
    expect(wage).toMatchObject({ today: '$18.33/h', cover: '$22.00/h, 20 % higher' });
    expect(load?.worth).toContain('it turns again near 140 % of today’s');
    expect(load?.worth).toContain('cannot run at 160 % of today’s or more');
    expect(load?.cover).toBe('—');
    expect(interest).toMatchObject({ worthAway: null, coverAway: 100 });
    expect(pump?.worth).toMatch(/^never, from \$0 to /);
  });

  it('draws what turns somewhere', () => {
    expect(view.bars.map(({ id }) => id)).toEqual(['price', 'wage', 'load', 'interest']);
  });

  it('says what a purchase that is not worth it would need', () => {
    const poor = turningView(
      DEMO_PLAN,
      [
        point(
          'price',
          { kind: 'alreadyBelow', factor: 1.2, again: [] },
          { kind: 'alreadyBelow', factor: null, again: [] },
        ),
      ],
      1.25,
      US,
    );
    expect(poor.finding).toBe('Not worth its money as it is: nearest to turning that is all prices, 20 % higher');
    expect(poor.rows[0]).toMatchObject({
      worth: 'missed today; it takes 120 % of today’s, 20 % higher',
      cover: 'missed today, whatever this is',
    });
  });

  it('says so when nothing turns it', () => {
    expect(turningView(DEMO_PLAN, [point('wage', NEVER, NEVER)], 1.25, US).finding).toContain('No single input');
  });

  it('has a row of the table and of the saved numbers for each input', () => {
    expect(view.table.rows).toHaveLength(5);
    for (const row of view.series.rows) expect(row).toHaveLength(view.series.head.length);
  });
});
