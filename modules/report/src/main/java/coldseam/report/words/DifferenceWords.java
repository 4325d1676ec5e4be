package coldseam.report.words;

import coldseam.audit.Audit;
import coldseam.audit.BridgeRow;
import coldseam.envelope.Assembly;
import coldseam.envelope.House;
import coldseam.envelope.Layer;
import coldseam.envelope.LightWell;
import coldseam.envelope.Opening;
import coldseam.envelope.Submittal;
import coldseam.envelope.shell.Surface;
import coldseam.files.Groups;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * What differs in two files of one house, as whoever reviews a revision asks: what went in, what it is built of, the windows and
 * doors, which detail each seam has, and the areas.
 */
public final class DifferenceWords {

    private final UnitSystem units;
    private final MutableList<Difference> all = Lists.mutable.empty();

    private DifferenceWords(UnitSystem units) {
        this.units = units;
    }

    /**
     * What differs.
     *
     * @param before in the first file; empty where only the second has it
     * @param after in the second; empty where only the first has it
     */
    public record Difference(String what, Optional<String> before, Optional<String> after) {

        /** In one line. */
        public String line() {
            return what + ": "
                    + before.map(was -> after.map(is -> was + ", now " + is).orElse(was + ", now left out"))
                            .orElseGet(() -> "new, " + after.orElse(""));
        }
    }

    /** Everything that differs from one audit to the other, in the order in which a report has it. */
    public static ImmutableList<Difference> between(Audit before, Audit after, UnitSystem units) {
        DifferenceWords found = new DifferenceWords(units);
        found.differ(before, after, DifferenceWords::handedIn);
        found.layers(before.house(), after.house());
        ImmutableSet<String> common = names(before).intersect(names(after));
        found.differ(before, after, audit -> surfaces(audit, common));
        found.differ(before, after, found::openings);
        found.differ(before, after, DifferenceWords::retrofit);
        found.differ(
                before,
                after,
                audit -> listed(audit.junctions(), row -> Phrases.capital(row.kindLabel()), DifferenceWords::builtAs));
        found.differ(
                before,
                after,
                audit -> listed(
                        audit.points(),
                        row -> Phrases.capital(row.name()),
                        row -> row.number() + " × " + row.kindLabel() + " in "
                                + row.surface().name() + ", " + builtAs(row)));
        found.differ(
                before,
                after,
                audit -> found.areas(
                        audit, before.house().body().equals(after.house().body())));
        found.differ(
                before,
                after,
                audit -> listed(
                        InputWords.besideOpenings(audit, units),
                        InputRow::what,
                        row -> row.value() + " (" + row.source() + ")"));
        return found.all.toImmutable();
    }

    /** Of all that both or one of the audits have by a name, what differs. */
    private void differ(Audit before, Audit after, Function<Audit, Map<String, String>> of) {
        Map<String, String> was = of.apply(before);
        Map<String, String> is = of.apply(after);
        Lists.mutable
                .withAll(was.keySet())
                .withAll(is.keySet())
                .distinct()
                .forEach(name -> differ(name, Optional.ofNullable(was.get(name)), Optional.ofNullable(is.get(name))));
    }

    private void differ(String what, Optional<String> was, Optional<String> is) {
        if (!was.equals(is)) {
            all.add(new Difference(what, was, is));
        }
    }

    /** Values by their names, in the order in which they come; different ones of one name together. */
    private static <T> Map<String, String> listed(
            ImmutableList<T> all, Function<T, String> name, Function<T, String> value) {
        Map<String, String> values = new LinkedHashMap<>();
        Groups.by(all, name)
                .forEach(alike -> values.put(
                        name.apply(alike.getFirst()),
                        alike.collect(value::apply).distinct().makeString("; ")));
        return values;
    }

    private static Map<String, String> handedIn(Audit audit) {
        Submittal submittal = audit.house().submittal();
        Map<String, String> values = new LinkedHashMap<>();
        values.put("House", audit.house().name());
        submittal.address().ifPresent(text -> values.put("Address", text));
        submittal.client().ifPresent(text -> values.put("Client", text));
        submittal.preparedBy().ifPresent(text -> values.put("Prepared by", text));
        submittal.date().ifPresent(date -> values.put("Date", date.toString()));
        submittal.revision().ifPresent(text -> values.put("Revision", text));
        audit.digests().details().forEach(each -> values.put("Detail file " + each.file(), each.digest()));
        return values;
    }

    /** The layers that came and went of each build-up. */
    private void layers(House before, House after) {
        before.assemblies()
                .keysView()
                .toList()
                .withAll(after.assemblies().keysView())
                .distinct()
                .toSortedList()
                .forEach(name -> {
                    ImmutableList<String> was = layers(before.assemblies().get(name));
                    ImmutableList<String> is = layers(after.assemblies().get(name));
                    String what = "Build-up " + name;
                    boolean moved = was.toSortedList().equals(is.toSortedList());
                    differ(
                            what,
                            said(moved ? was : was.reject(is::contains)),
                            said(moved ? is : is.reject(was::contains)));
                });
    }

    private static Optional<String> said(ImmutableList<String> layers) {
        return layers.isEmpty() ? Optional.empty() : Optional.of(layers.makeString("; "));
    }

    private ImmutableList<String> layers(Assembly assembly) {
        return assembly == null
                ? Lists.immutable.empty()
                : assembly.layers()
                        .collect(this::layer)
                        .newWithAll(assembly
                                .fasteners()
                                .map(each -> "fasteners of " + each.material().name() + " "
                                        + units.format(each.diameter(), Dimension.THICKNESS) + ", "
                                        + units.format(each.perSquareMetre(), Dimension.PER_AREA)
                                        + (each.recess() > 0
                                                ? ", heads " + units.format(each.recess(), Dimension.THICKNESS)
                                                        + " deep"
                                                : ""))
                                .stream()
                                .toList())
                        .newWithAll(
                                assembly.gaps() == Assembly.AirGaps.NONE
                                        ? Lists.immutable.empty()
                                        : Lists.immutable.of("air gaps " + Words.word(assembly.gaps())));
    }

    private String layer(Layer layer) {
        return layer.material().name() + " " + units.format(layer.thickness(), Dimension.THICKNESS)
                + layer.framing()
                        .map(framing -> ", " + new Phrases(units).framing(framing))
                        .orElse("")
                + layer.taper()
                        .map(taper -> ", to falls, at most " + units.format(taper.thickest(), Dimension.THICKNESS))
                        .orElse("")
                + layer.air().map(air -> ", " + Words.word(air.ventilation())).orElse("")
                + ", " + Words.word(layer.role())
                + (layer.controls().isEmpty()
                        ? ""
                        : ", controls "
                                + layer.controls()
                                        .toSortedList()
                                        .collect(Words::word)
                                        .makeString(" and "));
    }

    private Map<String, String> openings(Audit audit) {
        Map<String, String> values = new LinkedHashMap<>();
        TakeOff.openings(audit).forEach(each -> {
            Opening opening = each.opening();
            String name = Phrases.capital(opening.name());
            values.put(name, length(opening.width()) + " × " + length(opening.height()));
            values.put(
                    "U of " + opening.name(),
                    units.format(each.transmittance(), Dimension.TRANSMITTANCE) + ", of its frame "
                            + units.format(opening.frameTransmittance(), Dimension.TRANSMITTANCE)
                            + opening.rating()
                                    .source()
                                    .map(source -> " (" + source + ")")
                                    .orElse(""));
            values.put(
                    "Frame of " + opening.name(),
                    units.format(opening.frameDepth(), Dimension.THICKNESS) + " deep"
                            + (opening.shutterBox() ? ", under a shutter's box" : ""));
            opening.lintel().ifPresent(lintel -> values.put("Lintel of " + opening.name(), Words.word(lintel)));
            opening.lightWell().ifPresent(well -> values.put("Light well of " + opening.name(), lightWell(well)));
            values.put(
                    "Place of " + opening.name(),
                    opening.surface() + ", sill at " + length(opening.sill())
                            + (opening.left().isPresent()
                                    ? ", " + length(opening.left().getAsDouble()) + " from the left"
                                    : "")
                            + (opening.setBack().isPresent()
                                    ? ", set back by "
                                            + units.format(opening.setBack().getAsDouble(), Dimension.THICKNESS)
                                    : ""));
        });
        return values;
    }

    private String lightWell(LightWell well) {
        return length(well.width()) + " wide, " + length(well.projection()) + " deep from the wall, its floor "
                + length(well.belowSill()) + " under the sill, drain: " + Words.word(well.drain())
                + (well.left().isPresent() ? ", " + length(well.left().getAsDouble()) + " from the left" : "");
    }

    private static ImmutableSet<String> names(Audit audit) {
        return audit.shell().surfaces().collect(Surface::name).toImmutableSet();
    }

    /** What each surface is built as and faces; of other shapes those that both have. */
    private static Map<String, String> surfaces(Audit audit, ImmutableSet<String> names) {
        return listed(
                TakeOff.surfaces(audit)
                        .select(each -> names.contains(each.surface().name())),
                each -> Phrases.capital(each.surface().name()),
                each -> each.surface().assembly().map(Assembly::name).orElse("missing") + ", faces " + each.faces());
    }

    /** What an old house keeps, and in which order it is built. */
    private static Map<String, String> retrofit(Audit audit) {
        Map<String, String> values = new LinkedHashMap<>();
        audit.house().retrofit().ifPresent(retrofit -> {
            values.put(
                    "Retrofit",
                    retrofit.builtNew().isEmpty()
                            ? "the old structure stays"
                            : "the old structure stays, but for what is built new");
            named(values, "Built new", retrofit.builtNew().toSortedList().toImmutable());
            named(values, "Taken down", retrofit.takenDown().toSortedList().toImmutable());
            named(values, "Order of building", retrofit.order());
            if (retrofit.balloonFrame()) {
                values.put("Old studs", "run past the floors");
            }
        });
        return values;
    }

    private static void named(Map<String, String> values, String what, ImmutableList<String> names) {
        if (names.notEmpty()) {
            values.put(what, names.makeString(", "));
        }
    }

    private String length(double metres) {
        return units.number(metres, Dimension.LENGTH, 2) + " " + units.label(Dimension.LENGTH);
    }

    private static String builtAs(BridgeRow row) {
        return row.sheet().map(sheet -> sheet.result().detail().name()).orElse("no value")
                + row.source().match(computed -> "", standIn -> ", not chosen", own -> ", own psi", none -> "");
    }

    /** Of all surfaces; where the shape is another, of each as well. */
    private Map<String, String> areas(Audit audit, boolean together) {
        ImmutableList<TakeOff.OfSurface> surfaces = TakeOff.surfaces(audit);
        Map<String, String> values = new LinkedHashMap<>();
        values.put("Area of all surfaces, net", area(surfaces.sumOfDouble(TakeOff.OfSurface::net)));
        values.put("Heated floor area", area(audit.shell().floorArea()));
        if (!together) {
            surfaces.forEach(each -> values.put("Area of " + each.surface().name() + ", net", area(each.net())));
        }
        return values;
    }

    private String area(double area) {
        return units.number(area, Dimension.AREA, 2) + " " + units.label(Dimension.AREA);
    }
}
