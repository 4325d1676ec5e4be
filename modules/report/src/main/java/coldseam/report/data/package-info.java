/**
 * The audit as data: records whose components are the keys of the JSON file, in its order, with the unit in the name.
 *
 * <p>The JSON Schema is made from these records, so that it cannot say anything else than what is written.
 */
package coldseam.report.data;
