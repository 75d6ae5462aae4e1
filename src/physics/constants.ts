// Every physical constant that a run uses, once. SI units. What a published method fitted for itself (its own solar
// constant, its own latent heat) stays with that method; properties of materials stand in the catalogues.

/** 0 °C [K]. Definition of the Celsius scale, BIPM. */
export const ZERO_CELSIUS_K = 273.15;

/** Stefan–Boltzmann constant [W/(m²·K⁴)]. CODATA 2018. */
export const STEFAN_BOLTZMANN = 5.670374419e-8;

/** Acceleration of gravity [m/s²]: the value EN 673 and BS 5925 print (standard gravity is 9.80665). */
export const GRAVITY = 9.81;

/** Sun outside the atmosphere, mean over the year [W/m²]. ASTM E490. */
export const SOLAR_CONSTANT = 1366.1;

/** Standard air pressure at sea level [Pa]. ISO 2533, US Standard Atmosphere 1976. */
export const SEA_LEVEL_PRESSURE = 101_325;

/** Molar mass of water over that of dry air [–]. ASHRAE Fundamentals 2017, chapter 1. */
export const VAPOUR_MASS_RATIO = 0.621945;

/** Gas constant of dry air [J/(kg·K)]. ASHRAE Fundamentals 2017, chapter 1. */
export const GAS_CONSTANT_AIR = 287.042;

/** Gas constant of water vapour [J/(kg·K)]: 461.52, from the two before it; IAPWS-IF97 has 461.526. */
export const GAS_CONSTANT_VAPOUR = GAS_CONSTANT_AIR / VAPOUR_MASS_RATIO;

/** Specific heat of dry air at constant pressure [J/(kg·K)]. ASHRAE Fundamentals 2017, chapter 1. */
export const SPECIFIC_HEAT_AIR = 1006;

/** What room air is taken to be at where its density is held for the whole year [K]: 20 °C. */
export const ROOM_AIR_K = ZERO_CELSIUS_K + 20;

/**
 * ρcp of sea-level air at 20 °C [J/(m³·K)]: 1.2 kg/m³ × 1005 J/(kg·K), rounded as BS 5925 does in its worked numbers; in
 * proportion to air pressure elsewhere. The heat that the run's air carries goes by the hour's density instead.
 */
export const AIR_HEAT_CAPACITY = 1206;

/** Heat of vaporisation of water near room temperature [J/kg]. FAO-56, equation 8. */
export const LATENT_HEAT = 2.45e6;

/**
 * Psychrometric constant at sea level [Pa/K], rounded as the greenhouse form of Penman–Monteith does; FAO-56 equation 8
 * gives 67. In proportion to air pressure elsewhere.
 */
export const PSYCHROMETRIC_SEA_LEVEL = 66;

/** Joules in a kilowatt-hour; exact. */
export const J_PER_KWH = 3.6e6;

/** British thermal units, International Table, in a kilowatt-hour. NIST SP 811, from memory, high confidence. */
export const BTU_PER_KWH = 3412.142;

/** Joules in a US therm, 100 000 Btu at 59 °F. NIST SP 811, from memory, high confidence. */
const THERM_J = 1.054804e8;
export const KWH_PER_THERM = THERM_J / J_PER_KWH;
