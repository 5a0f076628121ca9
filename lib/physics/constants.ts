/** Molar gas constant [J/(mol·K)], exact. Source: codata-2018. */
export const GAS_CONSTANT = 8.314462618;

/** Molar mass of water [kg/mol]. Source: iapws-r14-08 and murphy-koop-2005 use this rounding. */
export const WATER_MOLAR_MASS = 0.01801528;

/** Molar mass of dry air with 400 ppm carbon dioxide [kg/mol]. Source: cipm-2007, table 1. */
export const AIR_MOLAR_MASS = 0.02896546;

/** 0 °C [K], by definition. */
export const ZERO_CELSIUS = 273.15;

/** Triple point of water [K] and [Pa]. Source: iapws-r14-08, section 2. */
export const TRIPLE_TEMPERATURE = 273.16;
export const TRIPLE_PRESSURE = 611.657;

/** Heat of fusion of water at 0 °C [J/kg]. Source: ashrae-refrigeration-2006, ch. 9 (from memory); newer values are 0.05 % lower. */
export const WATER_FUSION_HEAT = 333_600;
