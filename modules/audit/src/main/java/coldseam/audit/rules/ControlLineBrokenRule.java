package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding.Severity;
import coldseam.envelope.Control;
import coldseam.junctions.ControlLine;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The line of each control layer that a detail carries across runs unbroken through the junction's section, on one side of the
 * insulation.
 */
public final class ControlLineBrokenRule extends SheetRule<ControlLineBrokenRule.Found> {

    /**
     * Lines that do not get through.
     *
     * @param layers of all the sheets
     */
    public record Found(BridgeSheet<?> worst, ImmutableList<ControlLine> lines, ImmutableList<Control> layers)
            implements OfSheet {

        /** Whether some layer changes to the other side of the insulation. */
        public boolean changesSide() {
            return lines.anySatisfy(ControlLine.ChangesSide.class::isInstance);
        }
    }

    ControlLineBrokenRule() {
        super(Severity.GAP);
    }

    @Override
    Optional<Found> of(BridgeSheet<?> sheet, Facts facts) {
        return sheet.junction()
                .filter(junction -> sheet.chosen())
                .map(junction ->
                        junction.controls().select(line -> stops(line) && facts.mustJoin(sheet, line.control())))
                .filter(ImmutableList::notEmpty)
                .map(lines -> new Found(sheet, lines, lines.collect(ControlLine::control)));
    }

    @Override
    double badness(Found found) {
        return found.lines().size();
    }

    @Override
    Evidence together(ImmutableList<Found> worstFirst) {
        Found worst = worstFirst.getFirst();
        return new Found(
                worst.worst(),
                worst.lines(),
                worstFirst.flatCollect(Found::layers).distinct().toImmutableSortedList());
    }

    /** What a detail says to be broken is another rule's finding. */
    private static boolean stops(ControlLine line) {
        return line instanceof ControlLine.ChangesSide
                || line instanceof ControlLine.Broken broken && broken.why() == ControlLine.Broken.Reason.OUT_OF_REACH;
    }
}
