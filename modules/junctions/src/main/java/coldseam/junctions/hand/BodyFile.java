package coldseam.junctions.hand;

import coldseam.conduction.DrawingFault;
import coldseam.conduction.solid.Body;
import coldseam.conduction.solid.BodyEnvironment;
import coldseam.conduction.solid.BodyProbe;
import coldseam.conduction.solid.BodySolver;
import coldseam.conduction.solid.Box;
import coldseam.conduction.solid.Painted;
import coldseam.conduction.solid.Patch;
import coldseam.conduction.solid.Place;
import coldseam.files.Binder;
import coldseam.files.Faults;
import coldseam.files.Position;
import coldseam.files.SourceNode;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.collections.impl.factory.Sets;

/**
 * A drawing in three dimensions.
 *
 * @param body in metres, without faults
 * @param unit m, of the file's coordinates
 * @param chi what the corner or the point adds, where the file asks for it
 */
public record BodyFile(Body body, double unit, Optional<DrawnChi> chi) implements Drawn {

    /** Reads a tree; every fault of it and of the body it draws is added, each with its place. */
    static Optional<Drawn> bind(SourceNode node, Faults faults) {
        return Binder.bind(node, FileBody.class, faults).flatMap(file -> of(file, faults));
    }

    private static Optional<Drawn> of(FileBody file, Faults faults) {
        double unit = file.lengths().metres();
        Body body = new Body(
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
        for (DrawingFault fault : BodySolver.faults(body)) {
            faults.add(place(file, fault), fault.text(), "", "", "");
        }
        if (faults.count() > before) {
            return Optional.empty();
        }
        Optional<DrawnChi> chi = file.chi().map(each -> chi(each.value(), unit));
        chi.ifPresent(each -> each.faults(body)
                .forEach(text -> faults.add(file.chi().orElseThrow().place(), text, "", "", "")));
        return faults.count() > before ? Optional.empty() : Optional.of(new BodyFile(body, unit, chi));
    }

    private static Position place(FileBody file, DrawingFault fault) {
        return switch (fault.about()) {
            case WHOLE, BOUNDARY -> file.place();
            case PAINTED -> file.painted().get(fault.index()).place();
            case ENVIRONMENT -> file.environments().get(fault.index()).place();
            case PATCH -> file.patches().get(fault.index()).place();
            case PROBE -> file.probes().get(fault.index()).place();
        };
    }

    private static Painted painted(FileBody.FilePainted painted, double unit) {
        Box box = box(painted.box(), unit);
        if (painted instanceof FileBody.FilePainted.FileSolid solid) {
            return new Painted.Solid(solid.material(), solid.conductivity(), box);
        }
        return painted instanceof FileBody.FilePainted.FileAirBox air
                ? new Painted.Air(air.environment(), box)
                : new Painted.Adiabatic(box);
    }

    private static BodyEnvironment environment(String name, FileBody.FileAir air) {
        if (air.surfaceResistance() instanceof FileBody.FileResistance.ByWay way) {
            return new BodyEnvironment(name, air.temperature(), way.up(), way.horizontal(), way.down());
        }
        return BodyEnvironment.of(
                name, air.temperature(), ((FileBody.FileResistance.Same) air.surfaceResistance()).all());
    }

    private static DrawnChi chi(FileBody.FileChi chi, double unit) {
        if (chi instanceof FileBody.FileChi.Corner corner) {
            return new DrawnChi.OfCorner(
                    place(corner.corner(), unit), corner.dimensions() == FileBody.Dimensions.INTERNAL);
        }
        return chi instanceof FileBody.FileChi.Edge edge
                ? new DrawnChi.OnEdge(edge.edge())
                : new DrawnChi.OnSurface(
                        ((FileBody.FileChi.Surface) chi).surface().getFirst(),
                        ((FileBody.FileChi.Surface) chi).surface().getLast());
    }

    private static Box box(FileBody.FileBox box, double unit) {
        return Box.of(
                unit * box.x0(), unit * box.y0(), unit * box.z0(), unit * box.x1(), unit * box.y1(), unit * box.z1());
    }

    private static Place place(FileBody.FileSpot at, double unit) {
        return new Place(unit * at.x(), unit * at.y(), unit * at.z());
    }

    @Override
    public <T> T match(Function<SectionFile, T> section, Function<BodyFile, T> body) {
        return body.apply(this);
    }
}
