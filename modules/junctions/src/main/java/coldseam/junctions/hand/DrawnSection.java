package coldseam.junctions.hand;

import coldseam.conduction.Boundary;
import coldseam.conduction.DrawingFault;
import coldseam.conduction.Environment;
import coldseam.conduction.Point;
import coldseam.conduction.Polygon;
import coldseam.conduction.Probe;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.conduction.Symmetry;
import coldseam.conduction.solve.Conduction;
import coldseam.files.Binder;
import coldseam.files.Faults;
import coldseam.files.Position;
import coldseam.files.SourceNode;
import coldseam.junctions.section.Shapes;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.primitive.DoubleList;
import org.locationtech.jts.geom.Geometry;

/**
 * A section drawn by hand.
 *
 * @param section in metres
 * @param unit m, of the file's coordinates
 * @param file as written
 */
public record DrawnSection(Section section, double unit, FileDrawnSection file) implements Drawn {

    /** m; lines as near as this are one, by rounding of corners to the grid of shapes. */
    private static final double ON_THE_OUTLINE = 2e-6;

    /** Reads a tree; every fault of it and of the section it draws is added, each with its place. */
    public static Optional<DrawnSection> bind(SourceNode node, Faults faults) {
        Optional<DrawnSection> drawn =
                Binder.bind(node, FileDrawnSection.class, faults).map(DrawnSection::of);
        int before = faults.count();
        drawn.ifPresent(each -> each.file.lengths().check(each.size(), each.file.place(), faults));
        drawn.ifPresent(each -> each.file
                .regions()
                .forEach(region ->
                        HandBounds.material(region.material(), region.conductivity(), region.place(), faults)));
        drawn.ifPresent(each -> Conduction.faults(each.section)
                .forEach(fault -> faults.add(place(each.file, fault), fault.text(), "", "")));
        return faults.count() > before ? Optional.empty() : drawn;
    }

    /** m, the larger side of what is painted. */
    private double size() {
        DoubleList x = corners().collectDouble(Point::x);
        DoubleList y = corners().collectDouble(Point::y);
        return Math.max(x.max() - x.min(), y.max() - y.min());
    }

    private ImmutableList<Point> corners() {
        return section.regions().flatCollect(each -> each.outline().corners());
    }

    /**
     * The pieces of the outline that no boundary runs along, each from end to end, m: no heat goes through them. What turns round an
     * axis has none on it.
     */
    public ImmutableList<ImmutableList<Point>> withoutAir() {
        ImmutableList<Geometry> touched = section.boundaries().flatCollect(HandBounds::lines);
        if (section.symmetry() == Symmetry.AXISYMMETRIC) {
            DoubleList y = corners().collectDouble(Point::y);
            touched = touched.newWith(Shapes.line(new Point(0, y.min()), new Point(0, y.max())));
        }
        return HandBounds.pieces(HandBounds.free(HandDrawing.faces(section), touched, ON_THE_OUTLINE));
    }

    private static Position place(FileDrawnSection file, DrawingFault fault) {
        return switch (fault.about()) {
            case WHOLE, PATCH -> file.place();
            case PAINTED -> file.regions().get(fault.index()).place();
            case ENVIRONMENT -> file.environments().get(fault.index()).place();
            case BOUNDARY -> file.boundaries().get(fault.index()).place();
            case PROBE -> file.probes().get(fault.index()).place();
        };
    }

    private static DrawnSection of(FileDrawnSection file) {
        double unit = file.lengths().metres();
        Section section = new Section(
                file.section(),
                file.axisymmetric() ? Symmetry.AXISYMMETRIC : Symmetry.PLANAR,
                file.regions().collect(each -> region(each, unit)),
                file.environments()
                        .collect(each -> new Environment(
                                each.name(),
                                each.value().temperature(),
                                each.value().surfaceResistance())),
                file.boundaries()
                        .collect(each ->
                                new Boundary(each.environment(), points(each.path(), unit), each.surfaceResistance())),
                file.probes().collect(each -> new Probe(each.name(), point(each.at(), unit))));
        return new DrawnSection(section, unit, file);
    }

    private static Region region(FileDrawnSection.FileRegion region, double unit) {
        Polygon outline = region.rectangle()
                .map(each -> Polygon.rectangle(unit * each.x0(), unit * each.y0(), unit * each.x1(), unit * each.y1()))
                .orElseGet(() -> new Polygon(points(region.polygon().orElseThrow(), unit)));
        return new Region(region.material(), region.conductivity(), outline);
    }

    /** The line across a leg where the drawing ends. */
    Geometry cut(FileDrawnSection.FileLeg leg) {
        ImmutableList<Point> ends = points(leg.cut(), unit);
        return Shapes.line(ends.getFirst(), ends.getLast());
    }

    static ImmutableList<Point> points(ImmutableList<FileDrawnSection.FilePlace> places, double unit) {
        return places.collect(each -> point(each, unit));
    }

    private static Point point(FileDrawnSection.FilePlace place, double unit) {
        return new Point(unit * place.x(), unit * place.y());
    }
}
