/**
 * Steady heat conduction in bodies made of boxes, in three dimensions, with a proven interval on every thermal coupling
 * coefficient.
 *
 * <p>A body is painted from boxes of constant conductivity and boxes of air that belongs to an environment; where solid
 * meets air it exchanges heat through a surface resistance, on the cut planes and towards adiabatic boxes it exchanges
 * none. Lengths are metres, conductivities W/(m·K), surface resistances m²·K/W, temperatures °C, couplings W/K, heat
 * flows W, positive from the environment into the body. z points up.
 *
 * <p>The body is filled by one grid of boxes that runs through all of it. The temperature u is of degree 2 in each
 * direction and continuous: its energy is an upper bound of the heat flow form. The heat flux q is of the matching
 * Raviart–Thomas space (degree 2 along its direction, 1 across) and free of sources: it gives a lower bound. The gap is
 * the sum over the cells of ∫ |k∇u + q|²/k and over the surfaces of ∫ R (q·n − (u − T)/R)² (W. Prager and J. L. Synge,
 * Approximations in elasticity based on the concept of function space, 1947), and tells which slabs of the grid to cut.
 *
 * <p>Each cell is cut in half in each direction, as the temperature's nodes lie: eight sub-cells. A potential lives on
 * each sub-cell and a flux on each sub-face; on them the divergence is a matter of adding and subtracting.
 */
package coldseam.conduction.solid;
