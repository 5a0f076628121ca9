/** A unit of a dimension: SI value = value·factor + offset. */
export interface Unit {
  readonly symbol: string;
  readonly factor: number;
  readonly offset?: number;
}

/** Units of each dimension. The first of each list is the SI unit. Factors are exact by definition unless said. */
export const DIMENSIONS = {
  length: [
    { symbol: 'm', factor: 1 },
    { symbol: 'cm', factor: 0.01 },
    { symbol: 'mm', factor: 0.001 },
    { symbol: 'in', factor: 0.0254 },
    { symbol: 'ft', factor: 0.3048 },
  ],
  area: [
    { symbol: 'm²', factor: 1 },
    { symbol: 'ft²', factor: 0.09290304 },
    { symbol: 'in²', factor: 0.00064516 },
  ],
  volume: [
    { symbol: 'm³', factor: 1 },
    { symbol: 'L', factor: 0.001 },
    { symbol: 'ft³', factor: 0.028316846592 },
    { symbol: 'gal', factor: 0.003785411784 },
  ],
  mass: [
    { symbol: 'kg', factor: 1 },
    { symbol: 'g', factor: 0.001 },
    { symbol: 'lb', factor: 0.45359237 },
    { symbol: 'oz', factor: 0.028349523125 },
  ],
  time: [
    { symbol: 's', factor: 1 },
    { symbol: 'min', factor: 60 },
    { symbol: 'h', factor: 3600 },
    { symbol: 'd', factor: 86400 },
    { symbol: 'week', factor: 604800 },
  ],
  temperature: [
    { symbol: 'K', factor: 1 },
    { symbol: '°C', factor: 1, offset: 273.15 },
    { symbol: '°F', factor: 5 / 9, offset: 459.67 * (5 / 9) },
  ],
  pressure: [
    { symbol: 'Pa', factor: 1 },
    { symbol: 'mbar', factor: 100 },
    { symbol: 'mTorr', factor: 101325 / 760000 },
    { symbol: 'Torr', factor: 101325 / 760 },
    { symbol: 'kPa', factor: 1000 },
  ],
  pumpingSpeed: [
    { symbol: 'm³/s', factor: 1 },
    { symbol: 'm³/h', factor: 1 / 3600 },
    { symbol: 'L/s', factor: 0.001 },
    { symbol: 'cfm', factor: 0.028316846592 / 60 },
  ],
  gasLoad: [
    { symbol: 'Pa·m³/s', factor: 1 },
    { symbol: 'mbar·L/s', factor: 0.1 },
    { symbol: 'mTorr·L/s', factor: 101325 / 760000 / 1000 },
  ],
  gasAmount: [
    { symbol: 'Pa·m³', factor: 1 },
    { symbol: 'mbar·L', factor: 0.1 },
  ],
  power: [
    { symbol: 'W', factor: 1 },
    { symbol: 'kW', factor: 1000 },
    { symbol: 'BTU/h', factor: 1055.05585262 / 3600 },
  ],
  energy: [
    { symbol: 'J', factor: 1 },
    { symbol: 'kWh', factor: 3.6e6 },
  ],
  massFlow: [
    { symbol: 'kg/s', factor: 1 },
    { symbol: 'kg/h', factor: 1 / 3600 },
    { symbol: 'g/h', factor: 1 / 3.6e6 },
    { symbol: 'lb/h', factor: 0.45359237 / 3600 },
  ],
  load: [
    { symbol: 'kg/m²', factor: 1 },
    { symbol: 'lb/ft²', factor: 0.45359237 / 0.09290304 },
  ],
  density: [
    { symbol: 'kg/m³', factor: 1 },
    { symbol: 'lb/ft³', factor: 0.45359237 / 0.028316846592 },
  ],
  heatTransfer: [
    { symbol: 'W/(m²·K)', factor: 1 },
    { symbol: 'BTU/(h·ft²·°F)', factor: (1055.05585262 / 3600 / 0.09290304) * 1.8 },
  ],
  heatTransferSlope: [{ symbol: 'W/(m²·K·Pa)', factor: 1 }],
  inversePressure: [{ symbol: '1/Pa', factor: 1 }],
  conductivity: [
    { symbol: 'W/(m·K)', factor: 1 },
    { symbol: 'BTU/(h·ft·°F)', factor: (1055.05585262 / 3600 / 0.3048) * 1.8 },
  ],
  conductivitySlope: [{ symbol: 'W/(m·K·Pa)', factor: 1 }],
  permeability: [{ symbol: 's', factor: 1 }],
  resistance: [{ symbol: 'm/s', factor: 1 }],
  vapourConductance: [
    { symbol: 'kg/(s·Pa)', factor: 1 },
    { symbol: 'kg/(h·Pa)', factor: 1 / 3600 },
  ],
  rate: [
    { symbol: '1/s', factor: 1 },
    { symbol: '1/h', factor: 1 / 3600 },
  ],
  molarEnergy: [
    { symbol: 'J/mol', factor: 1 },
    { symbol: 'kJ/mol', factor: 1000 },
  ],
  moisture: [{ symbol: 'kg/kg', factor: 1 }],
  timePerMass: [
    { symbol: 's/kg', factor: 1 },
    { symbol: 'min/kg', factor: 60 },
    { symbol: 'min/lb', factor: 60 / 0.45359237 },
  ],
  timePerWeek: [
    { symbol: 's/week', factor: 1 },
    { symbol: 'h/week', factor: 3600 },
  ],
  massPerWeek: [
    { symbol: 'kg/week', factor: 1 },
    { symbol: 'lb/week', factor: 0.45359237 },
  ],
  fraction: [
    { symbol: '1', factor: 1 },
    { symbol: '%', factor: 0.01 },
  ],
  count: [{ symbol: '', factor: 1 }],
  money: [{ symbol: 'money', factor: 1 }],
  moneyPerMass: [
    { symbol: 'money/kg', factor: 1 },
    { symbol: 'money/lb', factor: 1 / 0.45359237 },
  ],
  moneyPerEnergy: [{ symbol: 'money/kWh', factor: 1 }],
  moneyPerPower: [{ symbol: 'money/kW', factor: 1 }],
  moneyPerTime: [{ symbol: 'money/h', factor: 1 }],
  moneyPerMonth: [
    { symbol: 'money/month', factor: 1 },
    { symbol: 'money/year', factor: 1 / 12 },
  ],
  moneyPerVolume: [
    { symbol: 'money/L', factor: 1 },
    { symbol: 'money/gal', factor: 1 / 3.785411784 },
  ],
  months: [
    { symbol: 'month', factor: 1 },
    { symbol: 'year', factor: 12 },
  ],
  voltage: [{ symbol: 'V', factor: 1 }],
  current: [{ symbol: 'A', factor: 1 }],
  ratePerYear: [
    { symbol: '1/year', factor: 1 },
    { symbol: '%/year', factor: 0.01 },
  ],
} as const satisfies Record<string, readonly Unit[]>;

export type Dimension = keyof typeof DIMENSIONS;

export type UnitSystem = 'us' | 'si';

/** The unit shown for each dimension under each system, where it differs from the SI unit. */
export const SHOWN_UNITS: Readonly<Record<UnitSystem, Partial<Record<Dimension, string>>>> = {
  us: {
    length: 'in',
    area: 'ft²',
    volume: 'L',
    mass: 'lb',
    time: 'h',
    temperature: '°F',
    pressure: 'mTorr',
    pumpingSpeed: 'cfm',
    gasLoad: 'mbar·L/s',
    gasAmount: 'mbar·L',
    power: 'kW',
    energy: 'kWh',
    massFlow: 'lb/h',
    load: 'lb/ft²',
    density: 'lb/ft³',
    rate: '1/h',
    molarEnergy: 'kJ/mol',
    vapourConductance: 'kg/(h·Pa)',
    timePerMass: 'min/lb',
    timePerWeek: 'h/week',
    massPerWeek: 'lb/week',
    fraction: '%',
    moneyPerMass: 'money/lb',
    ratePerYear: '%/year',
  },
  si: {
    length: 'mm',
    volume: 'L',
    time: 'h',
    temperature: '°C',
    pressure: 'Pa',
    pumpingSpeed: 'm³/h',
    gasLoad: 'mbar·L/s',
    gasAmount: 'mbar·L',
    power: 'kW',
    energy: 'kWh',
    massFlow: 'kg/h',
    rate: '1/h',
    molarEnergy: 'kJ/mol',
    vapourConductance: 'kg/(h·Pa)',
    timePerMass: 'min/kg',
    timePerWeek: 'h/week',
    fraction: '%',
    ratePerYear: '%/year',
  },
};
