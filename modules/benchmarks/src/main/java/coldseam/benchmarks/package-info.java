/**
 * Measurements anyone can run, by the scripts of {@code side-by-side} or by JMH: eight junction sections ({@code Sections})
 * beside a general finite-element package, bodies with their true errors, whole audits beside a floor program, houses of
 * growing size; and what puts faults into the code for the tests to find ({@code Mutants}). Nothing here is released.
 */
package coldseam.benchmarks;
