/**
 * A section drawn to scale: materials with their patterns and numbers, isotherms, the pen line, the weakest path and the
 * coldest point.
 *
 * <p>Sections are in metres, pages in points. A section that reaches far (20 m of ground) is shown around its junction only,
 * with break lines where the drawing stops and the house goes on.
 */
package coldseam.report.section;
