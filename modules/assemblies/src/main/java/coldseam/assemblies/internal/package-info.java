/** Guards shared by this module's packages; nothing here is promised to other modules. */
package coldseam.assemblies.internal;
