package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding.Severity;
import coldseam.envelope.Control;
import coldseam.junctions.ControlLine;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The line of each control layer that a detail carries across runs unbroken through the junction's section, on one side of the
 * insulation.
 */
public final class ControlLineBrokenRule extends SheetRule {

    /**
     * Lines that do not get through.
     *
     * @param worst of the sheets
     * @param lines of that sheet
     * @param layers of all the sheets
     */
    public record Found(BridgeSheet<?> worst, ImmutableList<ControlLine> lines, ImmutableList<Control> layers)
            implements Evidence {

        /** Whether some layer changes to the other side of the insulation. */
        public boolean changesSide() {
            return lines.anySatisfy(ControlLine.ChangesSide.class::isInstance);
        }
    }

    ControlLineBrokenRule() {
        super(Severity.GAP);
    }

    @Override
    ImmutableList<BridgeSheet<?>> breaking(Facts facts) {
        return facts.sheets()
                .select(sheet -> sheet.chosen() && stopped(facts, sheet).notEmpty());
    }

    @Override
    double badness(Facts facts, BridgeSheet<?> sheet) {
        return stopped(facts, sheet).size();
    }

    @Override
    Evidence evidence(Facts facts, ImmutableList<BridgeSheet<?>> worstFirst) {
        return new Found(
                worstFirst.getFirst(),
                stopped(facts, worstFirst.getFirst()),
                worstFirst
                        .flatCollect(sheet -> stopped(facts, sheet).collect(ControlLine::control))
                        .distinct()
                        .toImmutableSortedList());
    }

    private static ImmutableList<ControlLine> stopped(Facts facts, BridgeSheet<?> sheet) {
        return sheet.junction()
                .map(junction ->
                        junction.controls().select(line -> stops(line) && facts.mustJoin(sheet, line.control())))
                .orElse(Lists.immutable.empty());
    }

    /** What a detail says to be broken is another rule's finding. */
    private static boolean stops(ControlLine line) {
        return line instanceof ControlLine.ChangesSide
                || line instanceof ControlLine.Broken broken && broken.why() == ControlLine.Broken.Reason.OUT_OF_REACH;
    }
}
