/** To be described. */
package coldseam.assemblies;
