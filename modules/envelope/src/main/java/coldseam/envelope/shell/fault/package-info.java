/** What keeps a shell from being built, each fault with the part of the house it is about. */
package coldseam.envelope.shell.fault;
