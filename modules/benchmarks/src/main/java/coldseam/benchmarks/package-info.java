/**
 * Measurements anyone can run: eight junction sections ({@code Sections}), a JMH benchmark over them, and a comparison
 * with a general-purpose finite-element package ({@code side-by-side/run}). Nothing here is released.
 */
package coldseam.benchmarks;
