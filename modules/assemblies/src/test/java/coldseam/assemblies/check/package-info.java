/**
 * Computed values beside published ones.
 *
 * <p>The published values are data, in {@code fixtures/published/}, each with its source, how sure it is and the tolerance with its
 * reason. {@link coldseam.assemblies.check.PublishedChecks} computes every one of them again; a test fails where one is off, and
 * {@link coldseam.assemblies.check.ValidationTable} prints them all. Other rooms add rows through the same record.
 */
package coldseam.assemblies.check;
