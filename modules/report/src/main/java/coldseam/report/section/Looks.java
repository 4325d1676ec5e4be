package coldseam.report.section;

import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.report.drawing.Look;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Finds how a material is drawn, from its role, its name and its conductivity. */
public final class Looks {

    /** Words in a material's name, the first that matches wins. */
    private static final ImmutableList<Word> WORDS = Lists.immutable.of(
            new Word("wool", Look.INSULATION_WOOL),
            new Word("cellulose", Look.INSULATION_WOOL),
            new Word("loose", Look.INSULATION_WOOL),
            new Word("plasterboard", Look.PLASTER),
            new Word("gypsum", Look.PLASTER),
            new Word("plaster", Look.PLASTER),
            new Word("render", Look.PLASTER),
            new Word("mortar", Look.PLASTER),
            new Word("screed", Look.PLASTER),
            new Word("concrete", Look.CONCRETE),
            new Word("brick", Look.MASONRY),
            new Word("block", Look.MASONRY),
            new Word("masonry", Look.MASONRY),
            new Word("stone", Look.MASONRY),
            new Word("tile", Look.MASONRY),
            new Word("paving", Look.MASONRY),
            new Word("slate", Look.MASONRY),
            new Word("plywood", Look.BOARD),
            new Word("strand", Look.BOARD),
            new Word("chipboard", Look.BOARD),
            new Word("particle", Look.BOARD),
            new Word("timber", Look.TIMBER),
            new Word("wood", Look.TIMBER),
            new Word("steel", Look.METAL),
            new Word("alumin", Look.METAL),
            new Word("copper", Look.METAL),
            new Word("zinc", Look.METAL),
            new Word("lead", Look.METAL),
            new Word("glass", Look.GLASS),
            new Word("glazing", Look.GLASS),
            new Word("ground", Look.GROUND),
            new Word("soil", Look.GROUND),
            new Word("clay", Look.GROUND),
            new Word("sand", Look.GROUND),
            new Word("gravel", Look.GROUND),
            new Word("silt", Look.GROUND),
            new Word("air", Look.AIR),
            new Word("cavity", Look.AIR));

    private static final double METAL_FROM = 10;
    private static final double GLASS_FROM = 0.9;

    private Looks() {}

    private record Word(String part, Look look) {}

    /** The look of a material of a house. */
    public static Look of(Material material, Role role) {
        if (role == Role.AIR_LAYER) {
            return Look.AIR;
        }
        if (role == Role.MEMBRANE) {
            return Look.MEMBRANE;
        }
        return of(material.name(), material.conductivity(), material.insulates());
    }

    /** The look of a material of which no more is known. */
    public static Look of(String name, double conductivity) {
        return of(name, conductivity, conductivity <= Material.INSULATES_UP_TO);
    }

    private static Look of(String name, double conductivity, boolean insulates) {
        Optional<Look> byName = byName(name);
        if (insulates) {
            boolean wool = byName.filter(look -> look == Look.INSULATION_WOOL).isPresent();
            boolean air = byName.filter(look -> look == Look.AIR).isPresent();
            return air ? Look.AIR : wool ? Look.INSULATION_WOOL : Look.INSULATION_BOARD;
        }
        if (conductivity >= METAL_FROM) {
            return Look.METAL;
        }
        return byName.filter(look -> look != Look.METAL && look != Look.INSULATION_WOOL)
                .orElse(conductivity < 0.25 ? Look.BOARD : conductivity < GLASS_FROM ? Look.MASONRY : Look.OTHER);
    }

    private static Optional<Look> byName(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return Optional.ofNullable(WORDS.detect(word -> lower.contains(word.part())))
                .map(Word::look);
    }
}
