/** Point thermal transmittances: fasteners, posts and brackets, as axisymmetric sections. */
package coldseam.junctions.point;
