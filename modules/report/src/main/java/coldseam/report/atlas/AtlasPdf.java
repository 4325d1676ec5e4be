package coldseam.report.atlas;

import coldseam.envelope.JunctionKind;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.atlas.AtlasCsv;
import coldseam.junctions.atlas.AtlasCurve;
import coldseam.report.pdf.DocumentInfo;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Paper;
import org.eclipse.collections.api.list.ImmutableList;

/** The atlas as a PDF, readable in black and white; the same curves give the same bytes. */
public final class AtlasPdf {

    private AtlasPdf() {}

    /**
     * The atlas's bytes.
     *
     * @param curves by kind
     * @param origin where the layers come from, in words
     * @param tool name and version
     */
    public static byte[] bytes(
            ImmutableList<AtlasCurve> curves, String origin, UnitSystem units, Paper paper, String tool) {
        ImmutableList<JunctionKind> kinds =
                curves.collect(curve -> curve.detail().junction()).distinct();
        DocumentInfo info = new DocumentInfo(
                "Junction atlas",
                "Options for " + kinds.size() + " kinds of junction over thicknesses of insulation; " + origin,
                tool,
                "thermal bridges, junctions, insulation thickness",
                (AtlasCsv.write(curves, units) + origin + units + paper + tool).hashCode());
        try (Flow flow = new Flow(paper, info)) {
            AtlasPages pages = new AtlasPages(flow, units);
            pages.introduction(
                    origin,
                    kinds,
                    curves.flatCollect(AtlasCurve::points)
                            .collectDouble(AtlasCurve.AtlasPoint::thickness)
                            .max());
            kinds.forEach(kind ->
                    pages.kind(kind, curves.select(curve -> curve.detail().kind() == kind)));
            return flow.finish("Junction atlas", tool);
        }
    }
}
