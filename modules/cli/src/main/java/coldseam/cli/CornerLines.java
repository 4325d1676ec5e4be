package coldseam.cli;

import coldseam.conduction.Interval;
import coldseam.envelope.Assembly;
import coldseam.envelope.CornerKind;
import coldseam.envelope.DimensionSystem;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.vertex.TypicalCorner;
import coldseam.junctions.vertex.VertexComputing;
import coldseam.junctions.vertex.VertexResult;
import coldseam.junctions.vertex.VertexSetup;
import coldseam.report.DetailPdf;
import coldseam.report.words.Print;
import org.eclipse.collections.api.list.ImmutableList;

/** Corners' own details in the columns of a terminal, computed between typical build-ups. */
record CornerLines(DetailLines lines, Catalogue catalogue, TypicalBuild build, VertexComputing computing) {

    /** Every option of some kinds with its numbers. */
    void options(ImmutableList<CornerKind> kinds) {
        for (CornerKind kind : kinds) {
            lines.fold("", kind.label() + ": edges " + edges(kind) + " (typical build-ups)", "    ");
            ImmutableList<Detail> options = catalogue.options(kind);
            if (options.isEmpty()) {
                lines.fold("  ", "the details of its edges say all of it; draw one of your own", "    ");
            }
            options.forEach(this::option);
        }
        lines.say("");
        lines.fold(lines.units()
                .told(
                        "chi = L3D - Σ psi·l - Σ U·A, with its proven interval for the corner as drawn; what the corner adds to"
                                + " its edges. fRsi with Rsi 0.25 m²·K/W, an estimate. A corner's own detail is asked where the details of"
                                + " its edges leave it open, or where a house names it under \"corners\"."));
    }

    private static String edges(CornerKind kind) {
        return kind.edges().collect(each -> each.kind().label()).distinct().makeString(", ");
    }

    private void option(Detail detail) {
        lines.option(detail);
        try {
            VertexResult result = compute(detail);
            lines.under("between " + met(result.setup()));
            lines.under(result.heat()
                            .map(heat -> "chi external " + chi(heat.chiExternal()) + ", internal "
                                    + chi(heat.chiInternal()) + ", ")
                            .orElse("")
                    + Format.of("fRsi %.2f", result.temperatureFactor()));
        } catch (DetailDoesNotFit misfit) {
            misfit.reasons().forEach(reason -> lines.under("does not fit: " + reason.in(lines.units())));
        }
    }

    VertexResult compute(Detail detail) {
        return compute(detail, build, catalogue, computing);
    }

    static VertexResult compute(Detail detail, TypicalBuild build, Catalogue catalogue, VertexComputing computing) {
        return computing.compute(TypicalCorner.of(build, detail, catalogue));
    }

    /** The sheet of one of them. */
    static DetailPdf.CornersSheet sheet(VertexResult result) {
        return new DetailPdf.CornersSheet(result, between(result.setup()));
    }

    private static String between(VertexSetup setup) {
        return "between " + met(setup) + ", of "
                + setup.edges()
                        .flatCollect(end -> end.setup().assemblies())
                        .collect(Assembly::name)
                        .distinct()
                        .makeString(", ")
                + " (typical build-ups)";
    }

    private static String met(VertexSetup setup) {
        return setup.edges().collect(end -> end.detail().id()).distinct().makeString(", ");
    }

    private String chi(Interval chi) {
        return new Print(lines.units()).bounds(chi, Dimension.POINT_TRANSMITTANCE);
    }

    /** One of them with all its words. */
    void words(Detail detail, VertexResult result) {
        lines.head(detail, between(result.setup()) + ".");
        lines.say("");
        result.heat().ifPresent(heat -> {
            lines.row("chi external", chi(heat.chi(DimensionSystem.EXTERNAL)) + ", proven for the corner as drawn");
            lines.row("chi internal", chi(heat.chi(DimensionSystem.INTERNAL)));
        });
        lines.factor(result.temperatureFactor());
        lines.parameters(detail.parameters());
        lines.told(detail);
        lines.list("Simplified", result.notes(), false);
    }
}
