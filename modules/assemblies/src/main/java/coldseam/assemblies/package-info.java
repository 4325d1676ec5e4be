/**
 * One-dimensional heat flow through an assembly: thermal transmittance (ISO 6946) and the layers a junction's section draws.
 *
 * <p>Resistances are in m²·K/W, conductivities in W/(m·K), transmittances in W/(m²·K). Layers run from inside to outside. Air
 * layers, bridged layers and layers cut to falls are resolved here, so that no other room computes a U-value a second time.
 */
package coldseam.assemblies;
