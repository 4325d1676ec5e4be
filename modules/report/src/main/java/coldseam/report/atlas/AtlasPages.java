package coldseam.report.atlas;

import coldseam.envelope.JunctionKind;
import coldseam.files.Groups;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Phrase;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.atlas.AtlasCurve;
import coldseam.junctions.atlas.Sweep;
import coldseam.junctions.detail.Detail;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Spot;
import coldseam.report.drawing.Type;
import coldseam.report.pdf.Block;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import coldseam.report.pdf.Table;
import coldseam.report.words.Phrases;
import coldseam.report.words.Print;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.multimap.list.MutableListMultimap;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Multimaps;

/** The pages of the atlas: one for each kind, with curves for each option. */
record AtlasPages(Flow flow, UnitSystem units) {

    /** Below it mould is likely in a dwelling; common practice, no source. */
    private static final double FACTOR_LIMIT = 0.7;

    private static final double CHART = 150;

    /**
     * What the curves are, before the first of them.
     *
     * @param most m, the thickest insulation swept
     */
    void introduction(String origin, ImmutableList<JunctionKind> kinds, double most) {
        flow.add(Blocks.text("Junction atlas", Style.TITLE));
        flow.space(10);
        flow.add(Blocks.text(
                "What each option of the catalogue loses as the insulation beside it grows from nothing to "
                        + units.format(most, Dimension.THICKNESS) + ".",
                Style.LEAD));
        flow.space(10);
        for (String text : Lists.immutable.of(
                "Layers: " + origin
                        + ". One surface's insulation changes at a time, or both where both surfaces are the"
                        + " same build-up; everything else stays as given. Where there are several insulation layers they"
                        + " keep their shares.",
                "ψ is the linear thermal transmittance in external dimensions, at 20 °C indoors and the outdoor"
                        + " temperature given; each value has a proven interval, drawn as a bar, which is mostly smaller"
                        + " than the marker. Internal dimensions stand in the CSV file.",
                "f_{Rsi} is the temperature factor of the coldest indoor point with R_{si} 0.25 m²·K/W, an estimate; below"
                        + " 0.70 mould is likely in a dwelling (common practice, no source; a house's own climate decides).",
                "A curve's letter, marker and dashes name its option. Where an option does not fit a thickness its curve has"
                        + " no point there, and the reason stands below the charts.",
                "Without insulation (0) a wall loses so much by itself that a seam adds little: a small ψ on the left of a"
                        + " chart is no good sign.",
                "What carries loads through the insulation, or must resist fire, needs an engineer's word before it is"
                        + " built.")) {
            flow.body(Rich.marked(text));
            flow.space(5);
        }
        flow.space(6);
        flow.body(
                kinds.size() == 1
                        ? "One kind of junction: " + kinds.getFirst().label() + "."
                        : kinds.size() + " kinds of junction, one to a page; the bookmarks list them.");
    }

    /** One kind's page. */
    void kind(JunctionKind kind, ImmutableList<AtlasCurve> curves) {
        String label = kind.label();
        flow.section(Phrases.capital(label));
        flow.add(options(curves.collect(AtlasCurve::detail).distinct()));
        flow.space(4);
        for (ImmutableList<AtlasCurve> own : Groups.by(curves, AtlasCurve::sweep)) {
            Sweep sweep = own.getFirst().sweep();
            flow.need(CHART + 95);
            flow.space(8);
            flow.body(words(sweep));
            flow.space(3);
            flow.add(Blocks.beside(
                    14,
                    Lists.immutable.of(0.6, 0.4),
                    Blocks.drawing(
                            CHART,
                            "Curves of psi; the table has their numbers.",
                            (canvas, box) -> psi(sweep, own).draw(canvas, box)),
                    Blocks.drawing(
                            CHART,
                            "Curves of the temperature factor; the table has their numbers.",
                            (canvas, box) -> factor(sweep, own).draw(canvas, box))));
            flow.add(numbers(own));
            misfits(own);
        }
    }

    private String words(Sweep sweep) {
        JunctionSetup setup = sweep.setup();
        String changing =
                "Insulation of the " + sweep.surface() + " (" + sweep.changed().name() + ", given with "
                        + units.format(sweep.given(), Dimension.THICKNESS) + ") changes";
        String place = sweep.origin().isEmpty() ? "" : " In the house: " + sweep.origin() + ".";
        return place(setup, sweep, changing) + place;
    }

    private static String place(JunctionSetup setup, Sweep sweep, String changing) {
        return switch (sweep.which()) {
            case BOTH -> changing + ".";
            case FIRST ->
                setup.second()
                        .map(other -> changing + "; beside it: " + other.name() + ".")
                        .orElse(changing + ".");
            case SECOND -> changing + "; beside it: " + setup.first().name() + ".";
        };
    }

    private Block options(ImmutableList<Detail> details) {
        MutableList<Block> rows = Lists.mutable.empty();
        for (int i = 0; i < details.size(); i++) {
            int n = i;
            Detail detail = details.get(i);
            Block sample = Blocks.drawing(Style.BODY.leading(), "Line " + Mark.letter(n), (canvas, box) -> {
                double y = box.middleY();
                canvas.text(Mark.letter(n), box.x0(), y - 3, Type.of(9).with(Face.SEMIBOLD), Align.LEFT);
                canvas.line(box.x0() + 12, y, box.x0() + 44, y, Mark.of(n).pen());
                Mark.of(n).draw(canvas, new Spot(box.x0() + 28, y));
            });
            rows.add(Blocks.beside(
                    6,
                    Lists.immutable.of(0.1, 0.9),
                    sample,
                    Blocks.text(
                            Rich.of(detail.name() + " ")
                                    .plus(Rich.of("(" + Words.word(detail.rank()) + ", "
                                                    + detail.id()
                                                    + detail.cost()
                                                            .map(cost -> "; " + cost.sourced(units))
                                                            .orElse("")
                                                    + ")")
                                            .with(Palette.SLATE)),
                            Style.BODY)));
        }
        return Blocks.stack(rows.toImmutable(), 1);
    }

    private CurveChart psi(Sweep sweep, ImmutableList<AtlasCurve> curves) {
        return new CurveChart(
                "ψ, external, " + units.label(Dimension.LINEAR_TRANSMITTANCE),
                across(sweep),
                curves.collect(curve -> curve.points()
                        .select(point -> point.measures().isPresent())
                        .collect(point -> {
                            var psi = point.measures().orElseThrow().psiExternal();
                            return new CurveChart.Value(
                                    units.value(point.thickness(), Dimension.THICKNESS),
                                    units.value(psi.lower(), Dimension.LINEAR_TRANSMITTANCE),
                                    units.value(psi.upper(), Dimension.LINEAR_TRANSMITTANCE));
                        })),
                units.value(sweep.given(), Dimension.THICKNESS),
                OptionalDouble.empty(),
                "");
    }

    private CurveChart factor(Sweep sweep, ImmutableList<AtlasCurve> curves) {
        return new CurveChart(
                "fRsi, an estimate",
                across(sweep),
                curves.collect(curve -> curve.points()
                        .select(point -> point.measures().isPresent())
                        .collect(point -> {
                            double factor = point.measures().orElseThrow().temperatureFactor();
                            return new CurveChart.Value(
                                    units.value(point.thickness(), Dimension.THICKNESS), factor, factor);
                        })),
                units.value(sweep.given(), Dimension.THICKNESS),
                OptionalDouble.of(FACTOR_LIMIT),
                "0.70");
    }

    private String across(Sweep sweep) {
        return "insulation of the " + sweep.surface() + ", " + units.label(Dimension.THICKNESS);
    }

    private Block numbers(ImmutableList<AtlasCurve> curves) {
        MutableList<Table.Column> columns = Lists.mutable.of(Table.Column.share("ψ", 1));
        curves.getFirst()
                .points()
                .forEach(each ->
                        columns.add(Table.Column.number(units.format(each.thickness(), Dimension.THICKNESS), 63)));
        Table table = new Table(columns.toImmutable(), Lists.immutable.empty());
        for (int i = 0; i < curves.size(); i++) {
            MutableList<Table.Cell> cells = Lists.mutable.of(Table.Cell.of(Rich.strong(Mark.letter(i))));
            curves.get(i)
                    .points()
                    .forEach(point -> cells.add(
                            Table.Cell.of(point.measures().map(this::psi).orElse(Rich.of("does not fit")))));
            table = table.with(new Table.Row(Table.Kind.PLAIN, cells.toImmutable()));
        }
        return Blocks.table(table);
    }

    /** Both bounds, one below the other: a column is too narrow for both. */
    private Rich psi(AtlasCurve.Measures measures) {
        String text = new Print(units).number(measures.psiExternal(), Dimension.LINEAR_TRANSMITTANCE);
        int between = text.indexOf('…') + 1;
        return between == 0
                ? Rich.of(text)
                : Rich.of(text.substring(0, between)).plus(Rich.newLine()).plus(text.substring(between));
    }

    /** A reason as it stands for several options. */
    private record Misfit(String thicknesses, String reason) {}

    /** Once for each thickness's first reason (the CSV file has all), with the options and the thicknesses it is said of. */
    private void misfits(ImmutableList<AtlasCurve> curves) {
        MutableListMultimap<Misfit, String> letters = Multimaps.mutable.list.empty();
        MutableList<Misfit> order = Lists.mutable.empty();
        for (int i = 0; i < curves.size(); i++) {
            AtlasCurve curve = curves.get(i);
            String name = "\"" + curve.detail().name() + "\" (" + curve.detail().id() + ") ";
            for (Phrase reason :
                    curve.points().flatCollect(point -> point.reasons().take(1)).distinct()) {
                String at = curve.points()
                        .select(point -> point.reasons().take(1).contains(reason))
                        .collect(point -> units.format(point.thickness(), Dimension.THICKNESS))
                        .makeString(", ");
                Misfit misfit = new Misfit(at, reason.in(units).replace(name, ""));
                if (!letters.containsKey(misfit)) {
                    order.add(misfit);
                }
                letters.put(misfit, Mark.letter(i));
            }
        }
        for (Misfit misfit : order) {
            flow.space(2);
            ImmutableList<String> named = letters.get(misfit).toImmutable();
            flow.small(named.makeString(", ") + (named.size() == 1 ? " does" : " do") + " not fit at "
                    + misfit.thicknesses() + ": " + misfit.reason());
        }
    }
}
