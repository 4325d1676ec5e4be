package coldseam.envelope.file.house;

import coldseam.envelope.Material;
import coldseam.files.BadValueException;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Phrase;
import java.util.Optional;

/**
 * What a file may say of a material that counts as insulation. The pen line runs through whatever counts, so that saying so of
 * concrete would close every gap.
 */
public final class InsulationClaim {

    private InsulationClaim() {}

    /**
     * Refuses a claim that the conductivity belies, or that has no source; also that something as good as insulation is none,
     * which would let it stand in places that insulation must bear.
     *
     * @param conductivity W/(m·K)
     * @param insulates what the file says; empty where the conductivity decides
     * @param source that says so
     * @throws BadValueException at the key {@code insulates}
     */
    public static void check(double conductivity, Optional<Boolean> insulates, Optional<String> source) {
        boolean good = conductivity <= Material.INSULATES_UP_TO;
        if (insulates.isPresent() && !insulates.get() && good && source.isEmpty()) {
            throw new BadValueException(
                    "insulates",
                    "what conducts as little insulates, unless a source says otherwise",
                    Phrase.of(conductivity, Dimension.CONDUCTIVITY),
                    Phrase.of("more than ").and(Material.INSULATES_UP_TO, Dimension.CONDUCTIVITY),
                    "remove insulates, or add insulates-source: the document that says so");
        }
        if (!insulates.orElse(false) || good) {
            return;
        }
        Phrase got = Phrase.of(conductivity, Dimension.CONDUCTIVITY);
        if (!(conductivity <= Material.INSULATES_AT_MOST)) {
            throw new BadValueException(
                    "insulates",
                    "a material that conducts as much does not insulate",
                    got,
                    Phrase.of("at most ")
                            .and(Material.INSULATES_AT_MOST, Dimension.CONDUCTIVITY)
                            .and("; up to ")
                            .and(Material.INSULATES_UP_TO, Dimension.CONDUCTIVITY)
                            .and(" it does without being told"),
                    "remove insulates, or correct the conductivity");
        }
        if (source.isEmpty()) {
            throw new BadValueException(
                    "insulates",
                    "what counts as insulation though it conducts as much needs a source",
                    got,
                    Phrase.of("up to ")
                            .and(Material.INSULATES_UP_TO, Dimension.CONDUCTIVITY)
                            .and(" without one"),
                    "add insulates-source: the document that says so");
        }
    }
}
