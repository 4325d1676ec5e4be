package coldseam.junctions.path;

import coldseam.conduction.Boundary;
import coldseam.junctions.section.Composition;
import coldseam.junctions.section.Shapes;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.partition.list.PartitionMutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;

/**
 * An arrangement cut into triangles that share whole edges.
 *
 * @param triangles the same order each time
 */
record Triangles(ImmutableList<Triangle> triangles) {

    /** m²; what is smaller is a sliver of rounding. */
    private static final double SLIVER = 1e-11;

    /** m; how far from a line its cuts move another, many times over. */
    private static final double REACH = 1e-5;

    /**
     * One triangle.
     *
     * @param conductivity W/(m·K)
     */
    record Triangle(Coordinate a, Coordinate b, Coordinate c, double conductivity) {}

    /** The triangles of an arrangement; where a boundary begins or ends on an edge, the edge is cut. */
    static Triangles of(ImmutableList<Composition.Face> faces, ImmutableList<Boundary> boundaries) {
        MutableList<Geometry> lines = Lists.mutable.empty();
        faces.forEach(face -> cut(face.area().getBoundary(), lines));
        boundaries.forEach(boundary -> cut(Shapes.line(boundary.path()), lines));
        Polygonizer polygonizer = new Polygonizer();
        polygonizer.add(lines);
        ImmutableList<PreparedGeometry> areas = faces.collect(face -> PreparedGeometryFactory.prepare(face.area()));
        MutableList<Geometry> cells = Lists.mutable.empty();
        for (Object cell : polygonizer.getPolygons()) {
            // The polygonizer goes by hashed sets: order and beginnings of the rings differ from run to run.
            cells.add(((Geometry) cell).norm());
        }
        MutableList<Triangle> triangles = Lists.mutable.empty();
        for (Geometry cell : cells.sortThis()) {
            Geometry inside = cell.getInteriorPoint();
            int face = areas.detectIndex(area -> area.contains(inside));
            if (face >= 0 && cell.getArea() > SLIVER) {
                add(cell, faces.get(face).conductivity(), triangles);
            }
        }
        return new Triangles(triangles.toImmutable());
    }

    /** Cuts those that come near and a line at one another; the others stay as they are. */
    private static void cut(Geometry line, MutableList<Geometry> lines) {
        Envelope reach = line.getEnvelopeInternal().copy();
        reach.expandBy(REACH);
        PartitionMutableList<Geometry> near = lines.partition(each -> reach.intersects(each.getEnvelopeInternal()));
        Geometry apart = OverlayNG.overlay(
                Shapes.FACTORY.createMultiLineString(near.getSelected().toArray(new LineString[0])),
                line,
                OverlayNG.UNION,
                Shapes.GRID);
        lines.clear();
        lines.addAllIterable(near.getRejected());
        for (int i = 0; i < apart.getNumGeometries(); i++) {
            lines.add(apart.getGeometryN(i));
        }
    }

    private static void add(Geometry cell, double conductivity, MutableList<Triangle> into) {
        for (Geometry part : Shapes.parts(ConstrainedDelaunayTriangulator.triangulate(cell))) {
            Coordinate[] ring = part.getCoordinates();
            into.add(new Triangle(ring[0], ring[1], ring[2], conductivity));
        }
    }
}
