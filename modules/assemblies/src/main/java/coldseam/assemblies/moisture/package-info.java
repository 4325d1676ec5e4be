/**
 * Water vapour: saturation, the humidity a cold surface bears, condensation inside an assembly (ISO 13788:2012, formulas from
 * memory).
 *
 * <p>Temperatures are in °C, vapour pressures in Pa, relative humidities from 0 to 1, vapour resistances as the thickness sd of the
 * air layer that resists as much (m). θsi = θe + fRsi·(θi − θe). The method knows diffusion in steady state only: no rain, no air
 * leakage, no built-in water, no storage; that caution goes wherever its results go.
 */
package coldseam.assemblies.moisture;
