/** Thermal transmittance of windows from glass, frame and spacer (ISO 10077-1:2017, from memory). */
package coldseam.assemblies.window;
