package coldseam.cli;

import coldseam.envelope.Duty;
import coldseam.envelope.Material;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.UnitSystem;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** The built-in materials, what a layer of each can control and what it bears, in the columns of a terminal. */
record MaterialTable(Terminal terminal, UnitSystem units) {

    private static final String ROW = "  %-33s  %17s  %6s  %s";

    void print() {
        terminal.out().println(ROW.formatted("", "λ", "mu", "").stripTrailing());
        terminal.out().println(ROW.formatted("material", units.label(Dimension.CONDUCTIVITY), "", "λ is"));
        // Air layers have no conductivity of their own.
        MaterialLibrary.materials().reject(Material::isAir).forEach(this::row);
        terminal.out().println();
        terminal.fold(
                "Generic values for a first audit: write the product's own under materials, with its source. mu is"
                        + " the vapour resistance factor, mostly from memory. λ is read in its source, remembered from it, or"
                        + " common practice; an audit's inputs name the source. Where a material does not say that it can control air,"
                        + " water or vapour, or that it bears ground, splash, load or rain, a layer of it is not taken for that; floors and"
                        + " lintels are of wood in walls of timber that carries, else of concrete.");
    }

    private void row(Material material) {
        terminal.out()
                .println(ROW.formatted(
                        material.name(),
                        units.number(material.conductivity(), Dimension.CONDUCTIVITY),
                        material.vapourResistanceFactor().isPresent()
                                ? factor(material.vapourResistanceFactor().getAsDouble())
                                : "–",
                        Words.word(material.provenance().sureness())));
        ImmutableList<String> said = Lists.immutable
                .of(
                        named(
                                "controls",
                                material.controls()
                                        .keysView()
                                        .collect(Words::word)
                                        .toImmutableSortedList()),
                        named(
                                "bears",
                                Lists.immutable
                                        .with(Duty.values())
                                        .select(material::canBear)
                                        .collect(Words::word)),
                        carries(material))
                .reject(String::isEmpty);
        if (said.notEmpty()) {
            terminal.out().println("      " + said.makeString("; "));
        }
    }

    private static String carries(Material material) {
        return switch (material.carries()) {
            case FILL -> "carries nothing, nor a coat";
            case COAT, NOTHING -> "carries nothing by itself";
            case STANDS -> "stands, and spans nothing by itself";
            case SPANS -> "";
            case TIMBER -> "timber that carries";
        };
    }

    private static String factor(double factor) {
        return Double.isInfinite(factor) ? "tight" : Format.of("%.0f", factor);
    }

    private static String named(String verb, ImmutableList<String> what) {
        return what.isEmpty() ? "" : verb + " " + what.makeString(", ");
    }
}
