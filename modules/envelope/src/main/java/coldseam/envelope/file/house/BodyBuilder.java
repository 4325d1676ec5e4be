package coldseam.envelope.file.house;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.Material;
import coldseam.envelope.Point2;
import coldseam.files.Named;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.map.MutableMap;

/** Turns the file's body into the checked one. */
final class BodyBuilder {

    /** What can be faced without being named among the neighbours. */
    static final ImmutableMap<String, Exposure> ALWAYS_THERE = Maps.immutable.with(
            "outdoors",
            Exposure.outdoors(),
            "ground",
            Exposure.ground(),
            "crawl space",
            new Exposure(Exposure.Kind.CRAWL_SPACE, "", 1));

    private final FileHouse file;
    private final Function<String, Material> materials;
    private final ImmutableMap<String, Exposure> neighbours;

    BodyBuilder(FileHouse file, Function<String, Material> materials) {
        this.file = file;
        this.materials = materials;
        this.neighbours = file.neighbours()
                .toImmutableMap(Named::name, each -> each.value().exposure(each.name()));
    }

    Body body() {
        return file.body() instanceof FileBody.FileStoreys storeys
                ? storeys(storeys)
                : surfaces((FileBody.FileSurfaces) file.body());
    }

    private Body storeys(FileBody.FileStoreys given) {
        return new Body.Storeys(
                given.footprintLine(),
                stack("", given),
                given.wings().collect(each -> stack(each.name(), each.value())));
    }

    private Body.Stack stack(String name, FileBody.FileStack given) {
        StoreyOutlines lowest = given.storeys().getFirst().outlines();
        return new Body.Stack(
                name,
                given.storeys().collect(this::storey),
                base(given.base()),
                roof(given.roof(), given.storeys().getLast().outlines()),
                given.otherBases()
                        .collect(each -> new Body.AreaBase(
                                counterclockwise(each.area().orElseThrow().corners()), base(each))),
                lowest.turnedCorners(given.ground().collect(FileBody.FileHeight::height)));
    }

    static ImmutableList<Point2> counterclockwise(ImmutableList<Point2> outline) {
        return Outline.signedArea(outline) < 0 ? outline.toReversed() : outline;
    }

    private Body.Storey storey(FileStorey given) {
        StoreyOutlines outlines = given.outlines();
        ImmutableList<ImmutableList<Point2>> turned = outlines.turned();
        return new Body.Storey(
                given.name(),
                turned.getFirst(),
                turned.drop(1),
                given.height(),
                outlines.turned(walls(given)),
                given.terrace(),
                given.terrace().isPresent(),
                given.overhang().map(FileStorey.FileOverhang::assembly),
                given.floorThickness().orElse(0),
                given.floor(),
                given.lowerRoof().map(roof -> roof.roof(outlines, given.height(), exposure(roof.faces()))),
                given.base().map(this::base).or(() -> facing(given)));
    }

    private ImmutableList<Body.Wall> walls(FileStorey storey) {
        ImmutableList<String> names = names(storey);
        return storey.walls()
                .bySide(storey.outlines())
                .collectWithIndex((wall, side) ->
                        new Body.Wall(names.get(side), assembly(wall.assembly()), exposure(wall.faces())));
    }

    /** Names of a storey's walls: the given one, or storey, compass word and, where several face one way, their number. */
    static ImmutableList<String> names(FileStorey storey) {
        StoreyOutlines outlines = storey.outlines();
        ImmutableList<FileWalls.FileWall> given = storey.walls().bySide(outlines);
        ImmutableList<String> plain =
                given.collectWithIndex((wall, side) -> storey.name() + " " + outlines.word(side) + " wall");
        MutableMap<String, Integer> count = Maps.mutable.empty();
        MutableList<String> names = Lists.mutable.empty();
        for (int side = 0; side < given.size(); side++) {
            FileWalls.FileWall wall = given.get(side);
            String base = wall.name().orElse(plain.get(side));
            boolean several =
                    wall.name().isPresent() ? given.count(each -> each == wall) > 1 : plain.count(base::equals) > 1;
            int number = count.merge(base, 1, Integer::sum);
            names.add(several ? base + " " + number : base);
        }
        return names.toImmutable();
    }

    private static Optional<String> assembly(String name) {
        return name.equals(HouseFile.NONE) ? Optional.empty() : Optional.of(name);
    }

    private Exposure exposure(String name) {
        Exposure always = ALWAYS_THERE.get(name);
        return always != null ? always : neighbours.get(name);
    }

    private Body.Base base(FileBase given) {
        return new Body.Base(
                given.kind(),
                assembly(given.assembly()),
                given.edge()
                        .map(each -> new Body.EdgeInsulation(
                                each.direction() == FileBase.Direction.VERTICAL,
                                each.extent(),
                                each.thickness(),
                                materials.apply(each.material()))),
                given.depth(),
                given.level(),
                given.crawlSpace()
                        .map(each -> new Body.CrawlSpace(
                                each.height(),
                                each.wallTransmittance(),
                                each.vents(),
                                each.windSpeed(),
                                each.windShielding().factor(),
                                each.groundResistance())),
                exposure(given.faces().orElse(given.kind() == Body.Base.Kind.SUSPENDED ? "crawl space" : "ground")));
    }

    /** An overhang that faces something. */
    private Optional<Body.Base> facing(FileStorey given) {
        return given.overhang()
                .filter(each -> !each.faces().equals("outdoors"))
                .map(each -> new Body.Base(
                        Body.Base.Kind.OVER_UNHEATED,
                        Optional.of(each.assembly()),
                        Optional.empty(),
                        0,
                        0,
                        Optional.empty(),
                        exposure(each.faces())));
    }

    private static Body.Roof roof(FileRoof roof, StoreyOutlines outlines) {
        MutableMap<Integer, Body.RoofSide> sides = Maps.mutable.empty();
        roof.ownSides(outlines).forEachKeyValue((side, rise) -> sides.put(outlines.turned(side), rise));
        return new Body.Roof(
                roof.form(),
                roof.insulatedAt() == FileRoof.InsulatedAt.CEILING,
                assembly(roof.assembly()),
                roof.gableAssembly(),
                roof.pitch(),
                outlines.turned(roof.lowSideIndex(outlines)),
                roof.parapetHeight(),
                roof.loftFactor(),
                sides.toImmutable(),
                roof.collar(),
                roof.dormers().flatCollect(each -> each.value().dormers(each.name(), outlines, roof.assembly())));
    }

    private Body surfaces(FileBody.FileSurfaces given) {
        return new Body.Explicit(
                given.points().toImmutableMap(Named::name, Named::value),
                given.surfaces()
                        .collect(each -> new Body.ExplicitSurface(
                                each.name(),
                                each.value().points(),
                                assembly(each.value().assembly()),
                                exposure(each.value().faces()),
                                each.value().use(),
                                each.value().parapetHeight(),
                                each.value().gable())),
                given.groundLevel(),
                given.ground(),
                given.levels()
                        .collect(each -> new Body.Level(
                                each.name(),
                                each.value().height(),
                                each.value().floorThickness().orElse(0),
                                each.value().floor())));
    }
}
