/**
 * The audit as data: each form lists the keys of an object of the JSON file, in its order, with the unit in the name.
 *
 * <p>The JSON Schema is made from these forms, so that it cannot say anything else than what is written.
 */
package coldseam.report.data;
