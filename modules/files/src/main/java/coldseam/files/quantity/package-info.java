/** Quantities as people write them, and as reports print them; SI inside. */
package coldseam.files.quantity;
