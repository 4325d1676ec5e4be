package coldseam.cli;

import coldseam.audit.Audit;
import coldseam.audit.BridgeSheet;
import coldseam.audit.JunctionRow;
import coldseam.audit.PointRow;
import coldseam.audit.assumed.Unlisted;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.Opening;
import coldseam.envelope.PointKind;
import coldseam.envelope.PointKind.Service;
import coldseam.envelope.shell.Surface;
import coldseam.files.Groups;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.language.DetailParameter;
import java.util.Optional;
import java.util.function.Predicate;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** The lines of a house file that choose the catalogue's best for every seam and point for which nobody has chosen yet. */
final class ChoiceLines {

    private static final String SENTENCE =
            "The catalogue's best for each of these layers, as lines to add to the house file. Read each detail first"
                    + " (\"coldseam detail ID\"): it must suit the house, its builder and the local code.";

    private static final String OF_POINTS =
            "What stands under points with a kind alone: these in the place of those of the same names.";

    private static final String OF_SERVICES =
            "What serves the house goes through the insulation, too. For each of these that goes through it, a line under"
                    + " points, with the surface and the number it has (\"coldseam catalogue --points\" lists others):";

    /** What a name may be made of to stand in a YAML list without quotes. */
    private static final String PLAIN = "[\\p{L}\\p{N}][\\p{L}\\p{N} ().-]*[\\p{L}\\p{N})]";

    private ChoiceLines() {}

    /** The sentence and the lines, in the order of the sheets; empty where everything is chosen, or nothing fits. */
    static ImmutableList<String> of(Audit audit) {
        ImmutableList<JunctionRow> open =
                audit.junctions().reject(row -> row.source().known());
        ImmutableList<PointRow> points = audit.points()
                .select(row -> !row.source().known() && row.sheet().isPresent());
        boolean junctions = open.anySatisfy(row -> row.sheet().isPresent());
        if (!junctions && points.isEmpty()) {
            return Lists.immutable.empty();
        }
        MutableList<String> lines = Lists.mutable.of("");
        lines.addAllIterable(Columns.fold(SENTENCE, "  ", "  "));
        lines.add("");
        if (junctions) {
            lines.add("junctions:");
            Groups.by(open, JunctionRow::kindLabel).forEach(rows -> ofKind(lines, rows));
            framesApart(lines, open);
        }
        points(lines, points);
        services(lines, audit);
        return lines.toImmutable();
    }

    /** Where a set of points says its kind alone, its detail; how many there are stands in the file as before. */
    private static void points(MutableList<String> lines, ImmutableList<PointRow> open) {
        if (open.notEmpty()) {
            lines.addAllIterable(Columns.fold(OF_POINTS, "# ", "# "));
            open.forEach(row -> lines.addAllIterable(Columns.fold(
                    quoted(row.name()) + ": detail: "
                            + best(row.sheet().orElseThrow()).detail().id() + ", instead of kind: " + row.kindLabel(),
                    "#   ",
                    "#     ")));
        }
    }

    /** Of services for which no point is listed: as remarks, since what the house has and where nobody but its builder knows. */
    private static void services(MutableList<String> lines, Audit audit) {
        ImmutableList<Service> missing = Unlisted.SERVICES.in(audit);
        if (missing.isEmpty()) {
            return;
        }
        lines.addAllIterable(Columns.fold(OF_SERVICES, "# ", "# "));
        lines.add("# points:");
        missing.forEach(service -> through(audit, service)
                .ifPresent(surface -> PointKind.all()
                        .select(kind -> kind.serves().contains(service))
                        .minByOptional(kind -> kind.serves().size())
                        .flatMap(kind -> CatalogueFile.builtIn().options(kind).maxByOptional(detail -> detail.rank()))
                        .ifPresent(detail -> lines.addAllIterable(Columns.fold(
                                Words.word(service) + ": {surface: " + quoted(surface.name()) + ", detail: "
                                        + detail.id() + ", number: 1}",
                                "#   ",
                                "#     ")))));
    }

    /**
     * Where a service is likely to go through: the widest surface of its use, towards the cold; for waste water the widest floor on the
     * ground, since it mostly leaves under the lowest floor.
     */
    private static Optional<Surface> through(Audit audit, Service service) {
        return switch (service) {
            case VENT_OF_WASTE_PIPES ->
                widest(
                        audit,
                        surface -> (surface.use() == Body.Use.ROOF || surface.use() == Body.Use.CEILING)
                                && !isOn(surface, Exposure.Kind.GROUND));
            case WASTE_WATER ->
                widest(audit, surface -> surface.use() == Body.Use.FLOOR && isOn(surface, Exposure.Kind.GROUND))
                        .or(() -> widest(audit, surface -> surface.use() == Body.Use.FLOOR))
                        .or(() -> widest(audit, ChoiceLines::isWallInTheAir));
            default -> widest(audit, ChoiceLines::isWallInTheAir);
        };
    }

    private static boolean isWallInTheAir(Surface surface) {
        return surface.use() == Body.Use.WALL && !isOn(surface, Exposure.Kind.GROUND);
    }

    private static boolean isOn(Surface surface, Exposure.Kind kind) {
        return surface.exposure().kind() == kind;
    }

    private static Optional<Surface> widest(Audit audit, Predicate<Surface> among) {
        return audit.shell()
                .surfaces()
                .select(surface -> !isOn(surface, Exposure.Kind.PARTY) && among.test(surface))
                .maxByOptional(Surface::externalArea);
    }

    /**
     * One line where one detail is the best throughout; else those of fewer metres first, by the surfaces beside them. A line
     * without surfaces means every seam of its kind, so there is none where nothing fits one of them: that one is named instead.
     *
     * @param all of the kind for which nobody has chosen
     */
    private static void ofKind(MutableList<String> lines, ImmutableList<JunctionRow> all) {
        ImmutableList<JunctionRow> none = all.reject(row -> row.sheet().isPresent());
        ImmutableList<JunctionRow> rows = all.select(row -> row.sheet().isPresent());
        if (rows.isEmpty()) {
            return;
        }
        String kind = rows.getFirst().kindLabel();
        Optional<ImmutableList<String>> most = Optional.of(Groups.by(rows, ChoiceLines::best)
                        .maxBy(alike -> alike.sumOfDouble(JunctionRow::length))
                        .getFirst())
                .filter(row -> none.isEmpty())
                .map(ChoiceLines::best);
        MutableList<JunctionRow> left = Lists.mutable.withAll(
                rows.reject(row -> most.filter(best(row)::equals).isPresent()));
        while (left.notEmpty()) {
            ImmutableList<String> names = fewest(left.getFirst(), all);
            ImmutableList<JunctionRow> meant =
                    left.select(row -> names(row).containsAllIterable(names)).toImmutable();
            choose(lines, kind, names, best(left.getFirst()));
            withheld(lines, meant);
            left.removeAllIterable(meant);
        }
        none.distinctBy(ChoiceLines::names)
                .forEach(row -> lines.addAllIterable(Columns.fold(
                        kind + " of " + names(row).collect(ChoiceLines::quoted).makeString(" and ")
                                + ": nothing of the catalogue fits; name a detail file of your own",
                        "# ",
                        "#   ")));
        most.ifPresent(best -> {
            choose(lines, kind, Lists.immutable.empty(), best);
            withheld(lines, rows.select(row -> best(row).equals(best)));
        });
    }

    /** One of the names beside an edge that means none built otherwise, the one that means most; where there is none, all of them. */
    private static ImmutableList<String> fewest(JunctionRow edge, ImmutableList<JunctionRow> all) {
        return names(edge)
                .collect(name -> all.select(row -> names(row).contains(name)))
                .zip(names(edge))
                .select(meant -> meant.getOne()
                        .allSatisfy(row -> row.sheet().isPresent() && best(row).equals(best(edge))))
                .maxByOptional(meant -> meant.getOne().size())
                .map(meant -> Lists.immutable.of(meant.getTwo()))
                .orElseGet(() -> names(edge));
    }

    /** What could be built there besides, were something taken down. */
    private static void withheld(MutableList<String> lines, ImmutableList<JunctionRow> rows) {
        rows.flatCollect(row -> row.sheet().orElseThrow().withheld())
                .distinct()
                .forEach(each -> lines.add("  # " + each.id() + " once taken down: "
                        + each.suits().takesDown().makeString(", ")));
    }

    /** Where no details fit that draw one frame in one plane, which openings are to be given one. */
    private static void framesApart(MutableList<String> lines, ImmutableList<JunctionRow> open) {
        Groups.by(
                        open.select(row -> row.sheet().stream()
                                .anyMatch(sheet -> sheet.framesElsewhere().isPresent()
                                        && best(sheet).frameSetBack().isPresent())),
                        row -> row.sheet().orElseThrow().id())
                .forEach(rows -> {
                    BridgeSheet<JunctionResult> sheet = rows.getFirst().sheet().orElseThrow();
                    JunctionResult best = best(sheet);
                    lines.addAllIterable(Columns.fold(
                            rows.flatCollect(row -> row.edge().opening().stream()
                                                    .toList())
                                            .collect(Opening::name)
                                            .distinct()
                                            .collect(name -> "\"" + name + "\"")
                                            .makeString(", ")
                                    + ": " + best.detail().id() + " sets the frame back "
                                    + thickness(best.frameSetBack().getAsDouble())
                                    + " from the wall's outer face, the lines for the other sides "
                                    + thickness(sheet.framesElsewhere().getAsDouble())
                                    + ", and nothing else fits; say under openings where it stands (set-back)",
                            "# ",
                            "#   "));
                });
    }

    private static String thickness(double metres) {
        return UnitSystem.SI.format(metres, Dimension.THICKNESS);
    }

    private static <R extends BridgeResult> R best(BridgeSheet<R> sheet) {
        return sheet.best().orElse(sheet.result());
    }

    /** What a selector needs to mean this edge. */
    private static ImmutableList<String> names(JunctionRow row) {
        return row.surfaces()
                .collect(Surface::name)
                .newWithAll(row.edge().opening().map(Opening::name).stream().toList());
    }

    /**
     * Its detail, and its lengths that are not its file's own; behind them, to whoever reads the file, where even the best is no way
     * through for insulation.
     */
    private static ImmutableList<String> best(JunctionRow row) {
        JunctionResult best = best(row.sheet().orElseThrow());
        ImmutableList<DetailParameter> given = best.detail().parameters().select(DetailParameter::given);
        ImmutableList<String> keys =
                Lists.immutable.of("detail: " + best.detail().id());
        if (given.notEmpty()) {
            keys = keys.newWith(given.collect(each -> each.name() + ": " + thickness(each.value()))
                    .makeString("parameters: {", ", ", "}"));
        }
        return best.penLine().unbroken()
                ? keys
                : keys.take(keys.size() - 1).newWith(keys.getLast() + "  # nothing unbroken fits");
    }

    private static void choose(
            MutableList<String> lines, String kind, ImmutableList<String> surfaces, ImmutableList<String> detail) {
        MutableList<String> keys = Lists.mutable.of("kinds: [" + kind + "]");
        if (surfaces.notEmpty()) {
            keys.add("surfaces: [" + surfaces.collect(ChoiceLines::quoted).makeString(", ") + "]");
        }
        keys.addAllIterable(detail);
        String line = keys.makeString("- {", ", ", "}");
        if (line.length() <= Terminal.WIDTH && !line.contains("#")) {
            lines.add(line);
        } else {
            keys.forEachWithIndex((key, i) -> lines.add((i == 0 ? "- " : "  ") + key));
        }
    }

    private static String quoted(String name) {
        return name.matches(PLAIN) ? name : "\"" + name.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
