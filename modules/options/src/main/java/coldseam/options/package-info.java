/**
 * A house compared with what it might be: its alternatives one by one and in all combinations, and two houses with one
 * another.
 *
 * <p>Heat is compared as differences. A section's psi is one number, known to lie in an interval; where two houses share the
 * section, only the difference of its lengths counts, so that what both have cancels ({@link coldseam.options.HeatSum}).
 * Every house is audited through the one front door, {@link coldseam.audit.house.HouseAudit}; nothing is judged here that is
 * not judged there.
 */
package coldseam.options;
