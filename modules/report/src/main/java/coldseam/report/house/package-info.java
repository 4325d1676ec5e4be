/**
 * The house drawn in two axonometric views, with what lies in front hiding what lies behind, and each finding where it is.
 */
package coldseam.report.house;
