/** To be described. */
package coldseam.benchmarks;
