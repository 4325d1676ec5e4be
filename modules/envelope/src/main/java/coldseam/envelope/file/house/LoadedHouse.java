package coldseam.envelope.file.house;

import coldseam.envelope.Alternatives;
import coldseam.envelope.House;
import coldseam.envelope.JunctionChoice;
import coldseam.envelope.OwnPsi;
import coldseam.envelope.PointBridges;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.ShellBuilder;
import coldseam.envelope.shell.fault.ShellException;
import coldseam.envelope.shell.fault.ShellFault;
import coldseam.files.Faults;
import coldseam.files.FileFaultException;
import coldseam.files.Located;
import coldseam.files.Named;
import coldseam.files.Position;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * A house with the places of what can only be checked later, once the shell is built and the catalogue is read.
 *
 * @param house checked as far as the file alone allows
 * @param choices the junction choices, as placed in the file, then those of the house as found
 * @param ownPsi the own psi values, likewise
 * @param parts places of the parts of its shape; an opening's and a seam's is that of its surface's name
 * @param points each set of points, as placed in the file
 * @param builtNew surfaces of an old house that are built new
 * @param takenDown parts of it that come down
 * @param foundAssemblies where it says of a planned assembly what is found in its place, by the planned one's name
 * @param balloonFrame where it says that the studs of its framed walls run past the floors; empty where they do not
 * @param detailPrices place of each detail that has a price, by the detail's name
 * @param decisions the alternatives, as placed in the file
 * @param site place of the site
 */
public record LoadedHouse(
        House house,
        ImmutableList<PlacedChoice> choices,
        ImmutableList<PlacedPsi> ownPsi,
        ImmutableMap<Part, Position> parts,
        ImmutableList<PlacedPoints> points,
        ImmutableList<Located<String>> builtNew,
        ImmutableList<Located<String>> takenDown,
        ImmutableMap<String, Position> foundAssemblies,
        Optional<Position> balloonFrame,
        ImmutableMap<String, Position> detailPrices,
        ImmutableList<PlacedDecision> decisions,
        Position site) {

    private static final ImmutableSet<ShellFault.Part> IN_ROWS =
            Sets.immutable.of(ShellFault.Part.OPENING, ShellFault.Part.DORMER);

    private static final Pattern NUMBER = Pattern.compile("[-0-9.]+");

    private static final Pattern NAME = Pattern.compile("\"[^\"]*\"");

    private static final ImmutableSet<ShellFault.Part> NAMESAKES =
            Sets.immutable.of(ShellFault.Part.WALL, ShellFault.Part.DORMER, ShellFault.Part.STOREY);

    /**
     * A part of the shape.
     *
     * @param part what it is
     * @param name empty for parts there is one of
     */
    public record Part(ShellFault.Part part, String name) {}

    /**
     * Builds the shell.
     *
     * @throws FileFaultException with every fault of the shape at its place in the file
     */
    public Shell shell() {
        try {
            return ShellBuilder.build(house);
        } catch (ShellException refused) {
            Faults faults = new Faults();
            Map<Object, MutableList<ShellFault>> rows = new LinkedHashMap<>();
            refused.found()
                    .forEach(fault -> rows.computeIfAbsent(alike(fault), key -> Lists.mutable.empty())
                            .add(fault));
            rows.values().forEach(row -> faults.add(place(row.getFirst()), said(row), "", ""));
            throw new FileFaultException(faults.sorted());
        }
    }

    /** What faults of one row have in common: their place, and all that is said of them but the numbers. */
    private Object alike(ShellFault fault) {
        return IN_ROWS.contains(fault.part())
                ? List.of(place(fault), NUMBER.matcher(fault.message()).replaceAll(""))
                : fault;
    }

    /** What is wrong with all of a row, or with one and a row, said of the first, with whatever else the others name. */
    private static String said(MutableList<ShellFault> row) {
        MutableList<String> others = row.flatCollect(LoadedHouse::named).distinct();
        others.removeAll(named(row.getFirst()).castToList());
        return row.getFirst().message() + (others.isEmpty() ? "" : " The same of " + others.makeString(", ") + ".");
    }

    private static ImmutableList<String> named(ShellFault fault) {
        return Lists.immutable.fromStream(
                NAME.matcher(fault.message()).results().map(MatchResult::group));
    }

    /** Where a part stands; of a surface that the file does not name, where what it is named after does. */
    private Position place(ShellFault fault) {
        return parts.getIfAbsent(new Part(fault.part(), fault.name()), () -> parts.get(namesake(fault)));
    }

    private Part namesake(ShellFault fault) {
        boolean above = fault.name().matches("(roof|top ceiling|collar ceiling)\\b.*");
        boolean below = fault.name().startsWith("lowest floor");
        Part other = new Part(above ? ShellFault.Part.ROOF : below ? ShellFault.Part.BASE : ShellFault.Part.BODY, "");
        return parts.keysView()
                .select(part -> fault.part() == ShellFault.Part.SURFACE && NAMESAKES.contains(part.part()))
                .select(part -> fault.name().contains(part.name()))
                .toSortedListBy(part -> -part.name().length())
                .getFirstOptional()
                .filter(part -> !above && !below)
                .orElse(other);
    }

    /**
     * A junction choice with its places.
     *
     * @param choice one of {@link House#choices()}, or of the house as found
     * @param detail place of the detail's id
     * @param surfaces the selector's surface names
     * @param parameters m, the lengths of the detail that are other here, by name
     */
    public record PlacedChoice(
            JunctionChoice choice,
            Position detail,
            ImmutableList<Located<String>> surfaces,
            ImmutableList<Named<Located<Double>>> parameters) {}

    /**
     * An own psi value with its places.
     *
     * @param psi one of {@link House#ownPsi()}
     * @param value where its value stands
     * @param surfaces the selector's surface names
     */
    public record PlacedPsi(OwnPsi psi, Position value, ImmutableList<Located<String>> surfaces) {}

    /** The same file about a changed house. */
    public LoadedHouse changed(House other) {
        return new LoadedHouse(
                other,
                choices,
                ownPsi,
                parts,
                points,
                builtNew,
                takenDown,
                foundAssemblies,
                balloonFrame,
                detailPrices,
                decisions,
                site);
    }

    /** What might be built otherwise. */
    public Alternatives alternatives() {
        return new Alternatives(decisions.collect(PlacedDecision::decision));
    }

    /**
     * A decision among alternatives with its places.
     *
     * @param decision one of {@link #alternatives()}
     * @param name place of its name
     * @param surfaces of its selector, where it is about junctions
     * @param options place of each option, in order
     * @param parameters m, the lengths of each option's detail that are other, in order
     */
    public record PlacedDecision(
            Alternatives.Decision decision,
            Position name,
            ImmutableList<Located<String>> surfaces,
            ImmutableList<Position> options,
            ImmutableList<ImmutableList<Named<Located<Double>>>> parameters) {}

    /**
     * A set of points with its places.
     *
     * @param points one of {@link House#points()}
     * @param name place of its name
     * @param surface place of the surface's name
     * @param detail place of the detail's id; of the name where there is none
     * @param along place of the neighbour's name; of the name where there is none
     * @param parameters m, the lengths of the detail that are other here, by name
     */
    public record PlacedPoints(
            PointBridges points,
            Position name,
            Position surface,
            Position detail,
            Position along,
            ImmutableList<Named<Double>> parameters) {}
}
