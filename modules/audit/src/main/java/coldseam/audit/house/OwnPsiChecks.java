package coldseam.audit.house;

import coldseam.audit.engine.LeastPsi;
import coldseam.envelope.file.house.LoadedHouse;
import coldseam.envelope.file.house.LoadedHouse.PlacedPsi;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Shell;
import coldseam.files.Faults;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Phrase;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** Refuses a psi of the house's own that no seam of such surfaces can have, whoever says so. */
final class OwnPsiChecks {

    private OwnPsiChecks() {}

    /** @param names that a psi may be of; one of another name is refused for that alone */
    static void check(LoadedHouse loaded, Shell shell, ImmutableList<String> names, Faults faults) {
        ImmutableList<PlacedPsi> own = loaded.ownPsi();
        own.select(placed -> placed.surfaces().allSatisfy(each -> names.contains(each.value())))
                .reject(placed -> shell.edges()
                        .anySatisfy(edge -> edge.isMeantBy(placed.psi().which())))
                .forEach(placed -> faults.add(
                        placed.value(),
                        "a psi of the house's own is of a seam that the house has",
                        say(placed.psi().psi()).and(" for a seam that is nowhere"),
                        "correct its kinds and surfaces, or remove it: it would count nothing"));
        if (own.allSatisfy(each -> each.psi().psi() >= 0)) {
            return;
        }
        LeastPsi least = new LeastPsi(loaded.house(), shell);
        for (PlacedPsi placed : own) {
            Optional<Edge> worst = shell.edges()
                    .select(edge -> own.detect(each -> edge.isMeantBy(each.psi().which())) == placed)
                    .maxByOptional(least::at)
                    .filter(edge -> !(placed.psi().psi() >= least.at(edge)));
            worst.ifPresent(edge -> faults.add(
                    placed.value(),
                    "psi takes off no more than the surfaces beside the seam lose there",
                    say(placed.psi().psi()).and(" at " + edge.name()),
                    Phrase.of("from ").and(say(least.at(edge))),
                    "correct the value, or its dimension system; leave it out to have the detail computed"));
        }
    }

    private static Phrase say(double psi) {
        return Phrase.of(psi, Dimension.LINEAR_TRANSMITTANCE);
    }
}
