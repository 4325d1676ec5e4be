/** A solved body as a picture: three cuts with isotherms, and an axonometric view with its surfaces' temperatures. */
package coldseam.report.solid;
