import { defaultValues } from '../../inputs/default-values.ts';
import { inBase, type Quantity } from '../../inputs/quantity.ts';
import { fieldOf, type Section } from '../../inputs/register.ts';
import { pow } from '../../numeric/portable-math.ts';
import type { ChamberType, HoseType, PumpType } from '../plan-types.ts';
import type { OwnAnswers } from './own-answers.ts';
import { scaledGuess, toldQuantity } from './scaled.ts';

/** Tray area that the usual values of chamber and pump are for [m²]. */
function usualArea(): number {
  const field = fieldOf('chamber.shelfArea');
  return field.kind === 'quantity' ? (field.value ?? 1) : 1;
}

/** What grows in step with the trays. */
const CHAMBER_SIZE = [
  'volume',
  'floorSpace',
  'outgassing',
  'heaterPower',
  'trapArea',
  'trapCapacity',
  'trapParasiticLoad',
  'trapRatedLoad',
  'trapVapourConductance',
  'compressorPower',
  'defrostPower',
  'ratedCurrent',
] as const;

const CHAMBER_MONEY = ['price', 'installation', 'maintenance'] as const;

const PUMP_SIZE = ['speed', 'vapourTolerance', 'power', 'oilVolume', 'oilLifeWater'] as const;

const PUMP_MONEY = ['price', 'filterCost', 'rebuildCost'] as const;

/** Twice the machine is not twice the price: a rule of thumb of the trade for tanks and pumps, no source. */
const MONEY_POWER = 0.7;

function scaledParts<Key extends string>(
  section: Section,
  keys: readonly Key[],
  factor: number,
): Readonly<Record<Key, Quantity>> {
  const entries = keys.map((key) => [key, scaledGuess(`${section}.${key}`, factor)]);
  return Object.fromEntries(entries) as Record<Key, Quantity>;
}

/** A chamber of the size told; all that is not told is guessed from its size. */
export function ownChamber({ shelfArea }: OwnAnswers): ChamberType {
  const area = toldQuantity('chamber.shelfArea', shelfArea, 'measured');
  const size = inBase(area, 'area') / usualArea();
  return {
    ...defaultValues('chamber'),
    id: 'chamber',
    name: 'Chamber',
    ...scaledParts('chamber', CHAMBER_SIZE, size),
    ...scaledParts('chamber', CHAMBER_MONEY, pow(size, MONEY_POWER)),
    shelfArea: area,
  };
}

/** A pump for so much tray area, guessed from it. @param area [m²] */
export function ownPump(id: string, name: string, area: number): PumpType {
  const size = area / usualArea();
  return {
    ...defaultValues('pump'),
    id,
    name,
    ...scaledParts('pump', PUMP_SIZE, size),
    ...scaledParts('pump', PUMP_MONEY, pow(size, MONEY_POWER)),
    speedTable: [],
  };
}

/** The usual hose. */
export const OWN_HOSE: HoseType = { ...defaultValues('hose'), id: 'hose', name: 'Hose' };
