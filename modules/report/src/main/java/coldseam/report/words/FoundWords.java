package coldseam.report.words;

import coldseam.audit.AsFound;
import coldseam.audit.Audit;
import coldseam.audit.BridgeSheet;
import coldseam.audit.BridgeSource;
import coldseam.conduction.Point;
import coldseam.envelope.Assembly;
import coldseam.envelope.Layer;
import coldseam.envelope.Retrofit;
import coldseam.envelope.shell.Surface;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.Phrase;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.plan.SectionPlan.Origin;
import coldseam.junctions.plan.SectionPlan.Piece;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** What was found at a seam, beside what is planned there. */
public record FoundWords(Audit audit, UnitSystem units) {

    /** A line for each seam as it was found, those that nobody knows included, each followed by what is planned; what to say for more. */
    public ImmutableList<String> lines() {
        return audit.sheets()
                .flatCollect(planned -> audit.found().orElseThrow().of(planned).collect(seam -> line(planned, seam)))
                .newWithAll(toName());
    }

    /** Build-ups that stay and that the house file does not name under {@code found}. */
    private ImmutableList<String> toName() {
        Retrofit retrofit = audit.house().retrofit().orElseThrow();
        Retrofit.Found said = retrofit.found().orElseThrow();
        ImmutableList<String> names = audit.shell()
                .surfaces()
                .select(surface -> surface.staysIn(retrofit))
                .collect(Surface::assembly)
                .flatCollect(each -> each.map(Assembly::name).stream().toList())
                .reject(said.assemblies()::containsKey)
                .distinct();
        return names.isEmpty()
                ? names
                : Lists.immutable.of("Under found the house file says nothing of "
                        + Phrases.listed(names.collect(name -> "\"" + name + "\""))
                        + ": name what was there, or itself where it stays as it is (" + names.getFirst() + ": "
                        + names.getFirst() + ").");
    }

    private String line(BridgeSheet<JunctionResult> planned, AsFound.Seam seam) {
        return planned.id() + " " + planned.kind() + ", " + units.format(seam.length(), Dimension.LENGTH)
                + ": "
                + seam.sheet()
                        .map(was -> numbers(was) + " (" + state(seam, units) + "), coldest " + coldest(was.result()))
                        .orElseGet(() -> "as found " + state(seam, units))
                + "; planned: " + numbers(planned);
    }

    private String numbers(BridgeSheet<JunctionResult> sheet) {
        return "psi "
                + new Print(units).of(sheet.result().psi(audit.heatLoss().system()), Dimension.LINEAR_TRANSMITTANCE)
                + Format.of(", fRsi %.2f", sheet.temperatureFactor()) + ", "
                + (sheet.mouldHumidity() >= 1
                        ? "no mould at any humidity"
                        : "mould from " + units.format(sheet.mouldHumidity(), Dimension.SHARE));
    }

    /** Which detail was found, or why that is not known. */
    public static String state(AsFound.Seam seam, UnitSystem units) {
        return seam.sheet()
                .map(was -> was.chosen()
                        ? was.result().detail().name()
                        : (bare(was.result().setup()) ? "no insulation, drawn as \"%s\"" : "%s")
                                        .formatted(was.result().detail().name())
                                + ", a stand-in: the house file does not say which detail was found, so the worst of its"
                                + " kind that fits")
                .or(() -> seam.source().map(source -> without(source, seam.misfits(), units)))
                .orElse(
                        seam.builtNew()
                                ? "not known: it is built new, and the house file does not say what stood there before, if anything"
                                : "not known: the house file does not say what was found beside it");
    }

    /** Whether nothing insulates either surface: names of details tell of insulation that is not there. */
    private static boolean bare(JunctionSetup setup) {
        return setup.first().layers().noneSatisfy(Layer::insulates)
                && setup.second().map(Assembly::layers).stream()
                        .noneMatch(layers -> layers.anySatisfy(Layer::insulates));
    }

    private static String without(BridgeSource source, ImmutableList<Phrase> misfits, UnitSystem units) {
        return "not known: " + SourceWords.brief(source)
                + (misfits.isEmpty()
                        ? ""
                        : ": "
                                + misfits.collect(reason -> Phrases.bare(reason.in(units)))
                                        .makeString("; "));
    }

    /** On what the coldest point of the inner surface lies. */
    public static String coldest(JunctionResult result) {
        Piece nearest = result.plan()
                .pieces()
                .select(Piece::solved)
                // Of those that touch it the last one painted is seen.
                .toReversed()
                .minBy(piece -> distance(piece, result.coldest()));
        String material = nearest.material().name();
        if (nearest.origin() instanceof Origin.OfLayer layer) {
            return "on the " + material + " of the "
                    + (layer.first()
                            ? result.setup().kind().first()
                            : result.setup().kind().bands().getLast());
        }
        return nearest.origin() instanceof Origin.OfDetail part
                ? "on the " + part.what() + " of " + material
                : "on the " + (nearest.origin() instanceof Origin.OfFrame ? "frame" : material);
    }

    /** m, from a piece's outline; in steps of a tenth of a millimetre, so that pieces that touch are alike. */
    private static double distance(Piece piece, Point point) {
        ImmutableList<Point> corners = piece.outline().corners();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < corners.size(); i++) {
            least = Math.min(least, point.distance(corners.get(i), corners.get((i + 1) % corners.size())));
        }
        return Math.rint(least * 1e4);
    }
}
