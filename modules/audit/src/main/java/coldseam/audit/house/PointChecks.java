package coldseam.audit.house;

import coldseam.audit.engine.HousePoints;
import coldseam.envelope.Assembly;
import coldseam.envelope.BridgeKind;
import coldseam.envelope.Opening;
import coldseam.envelope.PointBridges;
import coldseam.envelope.PointBridges.Count;
import coldseam.envelope.PointKind;
import coldseam.envelope.file.house.LoadedHouse.PlacedPoints;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Surface;
import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.Named;
import coldseam.files.Position;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.catalogue.ChoiceChecks;
import coldseam.junctions.detail.Detail;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** What of a house's points can be checked only beside its shell and the point details. */
record PointChecks(Shell shell, Catalogue catalogue, Faults faults) {

    void check(PlacedPoints places) {
        PointBridges points = places.points();
        Optional<Surface> surface =
                shell.surfaces().detectOptional(each -> each.name().equals(points.surface()));
        if (surface.isEmpty()) {
            LateChecks.unknown(
                    places.surface(),
                    "the name of a surface of this house",
                    points.surface(),
                    shell.surfaces().collect(Surface::name),
                    faults);
        }
        Optional<Detail> detail = points.detail().flatMap(catalogue::find);
        surface.ifPresent(each -> along(places, each));
        Optional<PointKind> kind = points.kind().or(() -> detail.map(Detail::point));
        surface.ifPresent(each -> countedTwice(places, each, kind));
        surface.ifPresent(each -> throughVacuum(places, each, kind));
        surface.ifPresent(each -> kind.ifPresent(thing -> looks(places, each, thing)));
        places.parameters().forEach(each -> parameter(each, detail));
    }

    private void along(PlacedPoints places, Surface surface) {
        if (!(places.points().count() instanceof Count.InRow row) || row.along().isEmpty()) {
            return;
        }
        String along = row.along().get();
        if (HousePoints.edgesAlong(along, surface.name(), shell).isEmpty()) {
            LateChecks.unknown(
                    places.along(),
                    "the name of a surface or opening beside \"" + surface.name() + "\"",
                    along,
                    neighbours(surface.name()),
                    faults);
        }
    }

    private ImmutableList<String> neighbours(String surface) {
        return shell.edges()
                .flatCollect(edge -> names(edge, surface))
                .reject(surface::equals)
                .distinct();
    }

    private static ImmutableList<String> names(Edge edge, String surface) {
        ImmutableList<String> surfaces = edge.surfaces().collect(Surface::name);
        return surfaces.contains(surface)
                ? surfaces.newWithAll(edge.opening().stream().map(Opening::name).toList())
                : Lists.immutable.empty();
    }

    /** What is listed where it cannot be would stand there for what nobody listed. */
    private void looks(PlacedPoints places, Surface surface, PointKind kind) {
        if (kind.mayFace().noneSatisfy(way -> way.isOf(surface.normal().z()))) {
            faults.add(
                    places.surface(),
                    "points of the kind " + kind.label() + " go through a surface that looks "
                            + kind.mayFace().collect(PointChecks::way).makeString(" or "),
                    "\"" + surface.name() + "\"",
                    "one of "
                            + shell.surfaces()
                                    .select(each -> kind.mayFace()
                                            .anySatisfy(way ->
                                                    way.isOf(each.normal().z())))
                                    .collect(Surface::name)
                                    .makeString(", "),
                    "name the surface it goes through");
        }
    }

    private static String way(BridgeKind.Facing way) {
        return switch (way) {
            case UP -> "up";
            case SIDE -> "sideways";
            case DOWN -> "down";
        };
    }

    /** Fasteners that the assembly's U holds already may not be listed again as points. */
    private void countedTwice(PlacedPoints places, Surface surface, Optional<PointKind> kind) {
        Optional<Assembly.Fasteners> inU = surface.assembly().flatMap(Assembly::fasteners);
        if (kind.filter(PointKind::countedInU).isPresent() && inU.isPresent()) {
            faults.add(
                    places.name(),
                    "fasteners are counted once, in U or as points",
                    Phrase.of("\"" + places.points().name() + "\" on \"" + surface.name() + "\", whose assembly \""
                                    + surface.assembly().orElseThrow().name() + "\" has ")
                            .and(inU.get().perSquareMetre(), Dimension.PER_AREA)
                            .and(" in its U by ISO 6946 already"),
                    "remove these points, or the key fasteners of the assembly");
        }
    }

    private void throughVacuum(PlacedPoints places, Surface surface, Optional<PointKind> kind) {
        if (kind.filter(PointKind::countedInU).isPresent()) {
            surface.assembly()
                    .flatMap(Assembly::vacuumPierced)
                    .ifPresent(panel -> faults.add(
                            places.name(),
                            "no fastener goes through what holds a vacuum",
                            "\"" + places.points().name() + "\" on \"" + surface.name() + "\", through \""
                                    + panel.material().name() + "\"",
                            "remove these points, and say what holds the panels beside them as framing of their layer; or take boards"
                                    + " that may be screwed through"));
        }
    }

    private void parameter(Named<Double> given, Optional<Detail> detail) {
        Position place = given.place();
        String name = given.name();
        if (detail.isEmpty()) {
            faults.add(
                    place,
                    "parameters belong to a detail",
                    "\"" + name + "\"",
                    "choose a detail, or remove the parameters");
            return;
        }
        ChoiceChecks.parameter(
                detail.get(), new Named<>(given.name(), new Located<>(given.value(), place), place), faults);
    }
}
