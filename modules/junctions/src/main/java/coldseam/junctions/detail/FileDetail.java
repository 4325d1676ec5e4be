package coldseam.junctions.detail;

import coldseam.envelope.JunctionKind;
import coldseam.envelope.Provenance;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Located;
import coldseam.files.Named;
import coldseam.files.Position;
import coldseam.files.Positional;
import coldseam.files.SourceNode;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A detail file as it is written; README.md beside the built-in details explains each key.
 *
 * @param place of the file's mapping
 * @param detail its id
 * @param needs layers that must be there, such as {@code wall.insulation}
 * @param angles degrees
 * @param thickness allowed, by layer
 * @param requires conditions such as {@code upstand >= 150 mm}
 * @param parameters lengths of its own
 * @param materials of its own
 * @param lines of its own
 * @param drawing statements in painting order
 */
public record FileDetail(
        Position place,
        Located<String> detail,
        JunctionKind kind,
        String name,
        Rank rank,
        String looksLike,
        @Default("") ImmutableList<Located<String>> needs,
        Optional<FileAngles> angles,
        @Default("") ImmutableList<Named<FileSpan>> thickness,
        @Default("") ImmutableList<Located<String>> requires,
        @Default("") ImmutableList<Named<FileParameter>> parameters,
        @Default("") ImmutableList<Named<FileOwnMaterial>> materials,
        @Default("") ImmutableList<Named<Located<String>>> lines,
        ImmutableList<SourceNode> drawing,
        ImmutableList<String> order,
        FileConnections connections,
        ImmutableList<String> failures,
        ImmutableList<String> photographs,
        @Default("") ImmutableList<String> cautions,
        @Bounds(atLeast = "0") OptionalDouble costPerMetre) {

    /** Least and most. */
    @Positional
    public record FileAngles(
            @Unit(Dimension.ANGLE) @Bounds(atLeast = "10 °", atMost = "350 °")
            double least,

            @Unit(Dimension.ANGLE) @Bounds(atLeast = "10 °", atMost = "350 °")
            double most) {}

    /** Least and most. */
    @Positional
    public record FileSpan(
            @Unit(Dimension.THICKNESS) @Bounds(atLeast = "0 mm")
            double least,

            @Unit(Dimension.THICKNESS) @Bounds(above = "0 mm")
            double most) {}

    /**
     * A length of the detail's own.
     *
     * @param value it has unless a copy of the file says otherwise
     * @param from least that makes sense
     * @param to most that makes sense
     * @param says what it is
     */
    public record FileParameter(
            @Unit(Dimension.LENGTH) double value,
            @Unit(Dimension.LENGTH) double from,
            @Unit(Dimension.LENGTH) double to,
            String says) {}

    /**
     * A material of the detail's own.
     *
     * @param conductivity W/(m·K)
     * @param insulates whether it counts for the pen line
     * @param source where the conductivity comes from
     */
    public record FileOwnMaterial(
            @Unit(Dimension.CONDUCTIVITY) @Bounds(above = "0 W/(m·K)")
            double conductivity,

            Optional<Boolean> insulates,
            String source,
            @Default("declared") Provenance.Sureness sureness) {}

    /** How each control layer crosses; what is left out is not shown. */
    public record FileConnections(
            @Default("not shown") Connection air,
            @Default("not shown") Connection water,
            @Default("not shown") Connection vapour) {}
}
