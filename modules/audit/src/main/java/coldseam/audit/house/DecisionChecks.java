package coldseam.audit.house;

import coldseam.assemblies.AssemblyFaults;
import coldseam.envelope.Alternatives.About;
import coldseam.envelope.Alternatives.Change;
import coldseam.envelope.Alternatives.Decision;
import coldseam.envelope.Alternatives.Option;
import coldseam.envelope.Alternatives.Price;
import coldseam.envelope.BridgeKind;
import coldseam.envelope.PointBridges;
import coldseam.envelope.file.house.LoadedHouse;
import coldseam.envelope.file.house.LoadedHouse.PlacedDecision;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Shell;
import coldseam.files.Faults;
import coldseam.files.quantity.Format;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.catalogue.ChoiceChecks;
import coldseam.junctions.detail.Detail;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;

/** What of a house's alternatives can be checked only beside its shell and the details they name. */
record DecisionChecks(LoadedHouse loaded, Shell shell, Catalogue catalogue, Faults faults) {

    /** Build-ups and openings are combined with one another: beyond this nobody reads the answer, nor waits for it. */
    private static final long MOST_COMBINATIONS = 200;

    /**
     * Adds every decision that is about nothing or about what another decides already, every detail of another kind, every
     * parameter that a detail has not, and too many combinations.
     */
    static void check(LoadedHouse loaded, Shell shell, Catalogue catalogue, Faults faults) {
        DecisionChecks checks = new DecisionChecks(loaded, shell, catalogue, faults);
        loaded.decisions().forEach(checks::check);
        checks.decidedOnce();
        checks.combinations();
    }

    private void check(PlacedDecision placed) {
        ImmutableSet<BridgeKind> kinds = kinds(placed);
        if (kinds.isEmpty() && !placed.decision().about().movesOthers()) {
            faults.add(
                    placed.name(),
                    "a decision is about something of this house",
                    "\"" + placed.decision().name() + "\", which means no junction and no point of it",
                    "correct kinds and surfaces, or remove it");
        }
        if (placed.decision().about() instanceof About.OfAssembly of
                && shell.surfaces().noneSatisfy(surface -> surface.isBuiltAs(of.assembly()))) {
            faults.add(
                    placed.name(),
                    "a decision is about something of this house",
                    "\"" + of.assembly() + "\", which no surface is built of",
                    "name another assembly, or remove it");
        }
        placed.decision().options().forEachWithIndex((option, index) -> {
            if (option.change() instanceof Change.Detail change) {
                catalogue.find(change.detail()).ifPresent(detail -> check(placed, index, detail, kinds));
            }
            if (option.change() instanceof Change.BuildUp other) {
                AssemblyFaults.of(other.assembly())
                        .forEach(fault -> faults.add(
                                placed.options().get(index),
                                "another build-up can be computed",
                                option.name() + ": " + fault,
                                "correct it, or describe the whole assembly and name it"));
                if (placed.decision().about() instanceof About.OfAssembly of) {
                    FoundChecks.checkOption(
                            loaded,
                            shell,
                            of.assembly(),
                            other.assembly(),
                            option.name(),
                            placed.options().get(index),
                            faults);
                }
            }
            if (otherwisePriced(placed.decision(), option)
                    && shell.isDescribed(loaded.house(), placed.decision(), option)) {
                faults.add(
                        placed.options().get(index),
                        "what is described has one price",
                        "\"" + option.name()
                                + "\", which is what the house has there, at another price than the decision's cost"
                                + placed.decision()
                                        .described()
                                        .map(cost -> "")
                                        .orElse(" (none is given, so that options' costs are extra costs)"),
                        "write its price as the decision's cost, or remove the option");
            }
        });
    }

    /** Whether an option costs something else than what is described. */
    private static boolean otherwisePriced(Decision decision, Option option) {
        double described = decision.described().map(Price::amount).orElse(0.0);
        return option.cost().filter(own -> own.amount() != described).isPresent();
    }

    private void check(PlacedDecision placed, int option, Detail detail, ImmutableSet<BridgeKind> kinds) {
        if (kinds.notEmpty() && detail.kinds().noneSatisfy(kinds::contains)) {
            faults.add(
                    placed.options().get(option),
                    "an option is of a kind that is decided",
                    "\"" + detail.id() + "\", for: "
                            + detail.kinds().collect(BridgeKind::label).makeString(", "),
                    "one for: "
                            + kinds.collect(BridgeKind::label).toSortedList().makeString(", "),
                    "choose another detail, or correct the decision's kinds");
        }
        placed.parameters().get(option).forEach(given -> ChoiceChecks.parameter(detail, given, faults));
    }

    /** The kinds of what is decided; empty for build-ups and openings, and where nothing is meant. */
    private ImmutableSet<BridgeKind> kinds(PlacedDecision placed) {
        return placed.decision()
                .about()
                .<ImmutableSet<BridgeKind>>match(
                        junctions -> shell.edges()
                                .select(edge -> edge.isMeantBy(junctions.which()))
                                .<BridgeKind>collect(Edge::kind)
                                .toImmutableSet(),
                        assembly -> Sets.immutable.empty(),
                        openings -> Sets.immutable.empty(),
                        set -> loaded.house()
                                .points()
                                .select(each -> each.name().equals(set.points()))
                                .flatCollect(each -> kind(each).stream().toList())
                                .toImmutableSet());
    }

    private Optional<BridgeKind> kind(PointBridges points) {
        Optional<BridgeKind> chosen = points.detail().flatMap(catalogue::find).map(Detail::kind);
        return chosen.isPresent() ? chosen : points.kind().map(kind -> kind);
    }

    private void decidedOnce() {
        Map<String, String> by = new LinkedHashMap<>();
        for (PlacedDecision placed : loaded.decisions()) {
            if (placed.decision().about() instanceof About.Junctions junctions) {
                ImmutableList<Edge> meant = shell.edges().select(edge -> edge.isMeantBy(junctions.which()));
                meant.detectOptional(edge -> by.containsKey(edge.name()))
                        .ifPresent(edge -> faults.add(
                                placed.name(),
                                "a junction is decided once",
                                edge.name() + ", by \"" + by.get(edge.name()) + "\" and by \""
                                        + placed.decision().name() + "\"",
                                "narrow one of them by kinds or surfaces"));
                meant.forEach(
                        edge -> by.putIfAbsent(edge.name(), placed.decision().name()));
            }
        }
    }

    private void combinations() {
        ImmutableList<PlacedDecision> moving =
                loaded.decisions().select(each -> each.decision().about().movesOthers());
        // Up to 40 decisions of up to 12 options: their product may not be counted in a long.
        double count = 1;
        for (PlacedDecision each : moving) {
            count *= 1 + each.decision().options().size();
        }
        if (count > MOST_COMBINATIONS) {
            faults.add(
                    moving.getLast().name(),
                    "build-ups and openings are compared in all combinations",
                    Format.of("%.0f combinations", count),
                    "up to " + MOST_COMBINATIONS,
                    "leave out options, or decide several openings together");
        }
    }
}
