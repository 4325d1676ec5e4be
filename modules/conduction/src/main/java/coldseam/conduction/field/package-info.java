/** The temperature on the last mesh: values, fluxes, lowest surfaces and isotherms. */
package coldseam.conduction.field;
