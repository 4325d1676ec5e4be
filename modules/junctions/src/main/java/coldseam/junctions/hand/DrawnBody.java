package coldseam.junctions.hand;

import coldseam.conduction.DrawingFault;
import coldseam.conduction.solid.BodyEnvironment;
import coldseam.conduction.solid.BodyProbe;
import coldseam.conduction.solid.BodySolver;
import coldseam.conduction.solid.Cuboid;
import coldseam.conduction.solid.PaintedBox;
import coldseam.conduction.solid.Patch;
import coldseam.conduction.solid.Place;
import coldseam.conduction.solid.SolidBody;
import coldseam.envelope.DimensionSystem;
import coldseam.files.Binder;
import coldseam.files.Faults;
import coldseam.files.Position;
import coldseam.files.SourceNode;
import java.util.Optional;
import org.eclipse.collections.impl.factory.Sets;

/**
 * A drawing in three dimensions.
 *
 * @param body in metres, without faults
 * @param unit m, of the file's coordinates
 * @param chi what the corner or the point adds, where the file asks for it
 */
public record DrawnBody(SolidBody body, double unit, Optional<DrawnChi> chi) implements Drawn {

    /** Reads a tree; every fault of it and of the body it draws is added, each with its place. */
    static Optional<Drawn> bind(SourceNode node, Faults faults) {
        return Binder.bind(node, FileDrawnBody.class, faults).flatMap(file -> of(file, faults));
    }

    private static Optional<Drawn> of(FileDrawnBody file, Faults faults) {
        double unit = file.lengths().metres();
        SolidBody body = new SolidBody(
                file.section(),
                box(file.body(), unit),
                file.multiplicity(),
                Sets.immutable.withAll(file.cutPlanes()),
                file.painted().collect(each -> painted(each.value(), unit)),
                file.environments().collect(each -> environment(each.name(), each.value())),
                file.patches()
                        .collect(each -> new Patch(
                                each.value().name(),
                                each.value().environment(),
                                box(each.value().box(), unit))),
                file.probes()
                        .collect(each -> new BodyProbe(
                                each.value().name(), place(each.value().at(), unit))));
        int before = faults.count();
        Cuboid extent = body.extent();
        file.lengths().check(Math.max(extent.size(0), Math.max(extent.size(1), extent.size(2))), file.place(), faults);
        file.painted().forEach(each -> {
            if (each.value() instanceof FileDrawnBody.FilePainted.FileSolid solid) {
                HandBounds.material(solid.material(), solid.conductivity(), each.place(), faults);
            }
        });
        covered(file, body, faults);
        for (DrawingFault fault : BodySolver.faults(body)) {
            faults.add(place(file, fault), fault.text(), "", "");
        }
        if (faults.count() > before) {
            return Optional.empty();
        }
        Optional<DrawnChi> chi = file.chi().map(each -> chi(each.value(), unit));
        chi.ifPresent(each -> each.faults(body)
                .forEach(text -> faults.add(file.chi().orElseThrow().place(), text, "", "")));
        return faults.count() > before ? Optional.empty() : Optional.of(new DrawnBody(body, unit, chi));
    }

    /** Refuses what one later box leaves nothing of: whoever painted it meant it to be there. */
    private static void covered(FileDrawnBody file, SolidBody body, Faults faults) {
        body.painted()
                .forEachWithIndex((box, i) -> body.painted()
                        .drop(i + 1)
                        .detectOptional(later -> later.box().covers(box.box()))
                        .map(later -> file.painted()
                                .get(body.painted().lastIndexOf(later))
                                .place())
                        .ifPresent(over -> faults.add(
                                file.painted().get(i).place(),
                                "what is painted later leaves something of a box",
                                "nothing: the box of line " + over.line() + " covers it whole",
                                "paint it after that one, or remove it")));
    }

    private static Position place(FileDrawnBody file, DrawingFault fault) {
        return switch (fault.about()) {
            case WHOLE, BOUNDARY -> file.place();
            case PAINTED -> file.painted().get(fault.index()).place();
            case ENVIRONMENT -> file.environments().get(fault.index()).place();
            case PATCH -> file.patches().get(fault.index()).place();
            case PROBE -> file.probes().get(fault.index()).place();
        };
    }

    private static PaintedBox painted(FileDrawnBody.FilePainted painted, double unit) {
        Cuboid box = box(painted.box(), unit);
        if (painted instanceof FileDrawnBody.FilePainted.FileSolid solid) {
            return new PaintedBox.Solid(solid.material(), solid.conductivity(), box);
        }
        return painted instanceof FileDrawnBody.FilePainted.FileAirBox air
                ? new PaintedBox.Air(air.environment(), box)
                : new PaintedBox.Adiabatic(box);
    }

    private static BodyEnvironment environment(String name, FileDrawnBody.FileAir air) {
        if (air.surfaceResistance() instanceof FileDrawnBody.FileResistance.ByWay way) {
            return new BodyEnvironment(name, air.temperature(), way.up(), way.horizontal(), way.down());
        }
        return BodyEnvironment.of(
                name,
                air.temperature(),
                ((FileDrawnBody.FileResistance.Same) air.surfaceResistance()).surfaceResistance());
    }

    private static DrawnChi chi(FileDrawnBody.FileChi chi, double unit) {
        if (chi instanceof FileDrawnBody.FileChi.Corner corner) {
            return new DrawnChi.OfCorner(place(corner.corner(), unit), corner.dimensions() == DimensionSystem.INTERNAL);
        }
        if (chi instanceof FileDrawnBody.FileChi.Edge edge) {
            return new DrawnChi.OnEdge(edge.edge(), edge.repeated());
        }
        FileDrawnBody.FileChi.Surface on = (FileDrawnBody.FileChi.Surface) chi;
        return new DrawnChi.OnSurface(on.surface().getFirst(), on.surface().getLast(), on.repeated());
    }

    private static Cuboid box(FileDrawnBody.FileBox box, double unit) {
        return Cuboid.of(
                unit * box.x0(), unit * box.y0(), unit * box.z0(), unit * box.x1(), unit * box.y1(), unit * box.z1());
    }

    private static Place place(FileDrawnBody.FileSpot at, double unit) {
        return new Place(unit * at.x(), unit * at.y(), unit * at.z());
    }
}
