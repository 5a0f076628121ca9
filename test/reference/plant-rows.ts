import type { CompositionSpec, HeatTransferSpec, LoadForm } from '../../lib/plant/types.ts';
import type { SourceKey } from '../../lib/sources.ts';

/** Hours from … to. */
export type Span = readonly [number, number];

/** A published drying of one load: what the source gives, and what had to be taken for it because it does not. */
export interface DryingRow {
  readonly id: string;
  readonly source: SourceKey;
  readonly where: string;
  /** What the source does not print and was taken instead. */
  readonly taken: string;
  readonly form: LoadForm;
  readonly composition: CompositionSpec;
  /** [kg/m²], [kg/m³] and the share of the depth dried from the slowest face. */
  readonly load: number;
  readonly bulkDensity: number;
  readonly faceShare: number;
  /** Chamber pressure [Pa] and plate temperature [°C]. */
  readonly pressure: number;
  readonly plate: number;
  /** Permeability of the dried layer where the row is about it [s]. */
  readonly permeability?: number;
  /** Whole drying, and sublimation alone, where known [h]. */
  readonly total?: Span;
  readonly sublimation?: Span;
  readonly fromMemory: boolean;
}

/** Coefficients that the sources do not print: one set for all rows. */
export interface DryingCoefficients {
  readonly name: string;
  /** Dried-layer conductivity [W/(m·K)] and its rise with pressure [W/(m·K·Pa)]. */
  readonly driedConductivity: number;
  readonly driedConductivitySlope: number;
  /** Permeability [s] and surface resistance [m/s] of the dried layer. */
  readonly permeability: number;
  readonly surfaceResistance: number;
  readonly heat: HeatTransferSpec;
  /** How far outside a published span a computed time may lie [-]. */
  readonly tolerance: number;
}

/** Water as the sources say; the solids, which hardly matter, are those of the fruit from memory. */
const APPLE: CompositionSpec = {
  water: 0.856,
  protein: 0.003,
  fat: 0.002,
  carbohydrate: 0.114,
  fibre: 0.023,
  ash: 0.002,
};

const STRAWBERRY: CompositionSpec = {
  water: 0.91,
  protein: 0.007,
  fat: 0.003,
  carbohydrate: 0.056,
  fibre: 0.02,
  ash: 0.004,
};

const SLAB: CompositionSpec = { ...APPLE, water: 0.8, carbohydrate: 0.17 };

/** Bed of slices as the register has it [kg/m³]. */
const BED = 550;

export const PUBLISHED_DRYINGS: readonly DryingRow[] = [
  {
    id: 'apple bed',
    source: 'hammami-rene-marin-1999',
    where: 'abstract: thick layer of slices, 17 kg/m², 50 Pa, plate 55 °C: 48 to 50 h',
    taken: 'bulk density of the bed; final moisture 3 % of dry matter',
    form: 'pieces',
    composition: APPLE,
    load: 17,
    bulkDensity: BED,
    faceShare: 1,
    pressure: 50,
    plate: 55,
    total: [48, 50],
    fromMemory: false,
  },
  {
    id: 'strawberry bed',
    source: 'hammami-rene-1997',
    where: 'abstract: thick layer of pieces, 30 Pa, plate 50 °C: 60 to 65 h',
    taken: 'the 17 kg/m² and the bulk density of the apple bed; final moisture 3 % of dry matter',
    form: 'pieces',
    composition: STRAWBERRY,
    load: 17,
    bulkDensity: BED,
    faceShare: 1,
    pressure: 30,
    plate: 50,
    total: [60, 65],
    fromMemory: false,
  },
  {
    id: 'slab heated on both faces',
    source: 'freeze-drying-encyclopedia',
    where: '12.5 mm, 75 to 85 % water: usually 14 to 18 h, of which 60 % sublimation for coffee extract',
    taken: '80 % water, no voids, 50 Pa and the plate of the apple bed; final moisture 3 % of dry matter',
    form: 'pieces',
    composition: SLAB,
    load: 12.5,
    bulkDensity: 1000,
    faceShare: 0.5,
    pressure: 50,
    plate: 55,
    total: [14, 18],
    sublimation: [8.4, 10.8],
    fromMemory: false,
  },
  ...[4e-8, 5e-9].map(
    (permeability): DryingRow => ({
      id: `apple poured, ${permeability} s`,
      source: 'derived',
      where: 'worked by hand: the apple bed as a poured slab sublimes in 12 to 19 h over this range of permeability',
      taken: 'no voids',
      form: 'poured',
      composition: APPLE,
      load: 17,
      bulkDensity: 1000,
      faceShare: 1,
      pressure: 50,
      plate: 55,
      permeability,
      sublimation: [12, 19],
      fromMemory: false,
    }),
  ),
];

const REGISTER_HEAT: HeatTransferSpec = { contact: 8, pressureSlope: 0.05, pressureDamping: 0.01, radiation: 4 };

/**
 * The defaults of the register, and a dried layer that conducts better, 0.055 instead of 0.0475 W/(m·K) at 50 Pa, both well inside
 * the 0.03–0.1 W/(m·K) that is reported for dried foods.
 */
export const COEFFICIENT_SETS: readonly DryingCoefficients[] = [
  {
    name: 'the defaults',
    driedConductivity: 0.045,
    driedConductivitySlope: 5e-5,
    permeability: 2e-8,
    surfaceResistance: 2e4,
    heat: REGISTER_HEAT,
    tolerance: 0.36,
  },
  {
    name: 'a better conducting layer',
    driedConductivity: 0.05,
    driedConductivitySlope: 1e-4,
    permeability: 2e-8,
    surfaceResistance: 2e4,
    heat: REGISTER_HEAT,
    tolerance: 0.28,
  },
];
