package coldseam.audit.engine;

import coldseam.audit.InputRow;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.Limits;
import coldseam.envelope.Material;
import coldseam.envelope.Opening;
import coldseam.envelope.Provenance;
import coldseam.envelope.Site;
import coldseam.envelope.quantity.Dimension;
import coldseam.envelope.quantity.UnitSystem;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.Cost;
import java.util.Locale;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** The values that went in, each with its source. */
final class Inputs {

    private static final String FILE = "house file";

    private final House house;
    private final Shell shell;
    private final UnitSystem units;
    private final MutableList<InputRow> rows = Lists.mutable.empty();

    private Inputs(House house, Shell shell, UnitSystem units) {
        this.house = house;
        this.shell = shell;
        this.units = units;
    }

    static ImmutableList<InputRow> of(House house, Shell shell, UnitSystem units) {
        Inputs inputs = new Inputs(house, shell, units);
        inputs.site();
        inputs.neighbours();
        inputs.limits();
        inputs.openings();
        inputs.ownPsi();
        inputs.parameters();
        inputs.prices();
        inputs.materials();
        return inputs.rows.toImmutable();
    }

    private void site() {
        Site site = house.site();
        row("Indoor design temperature", say(site.indoorTemperature(), Dimension.TEMPERATURE), FILE);
        row("Outdoor design temperature", say(site.outdoorTemperature(), Dimension.TEMPERATURE), FILE);
        row("Indoor humidity at the design condition", say(site.indoorHumidity(), Dimension.SHARE), FILE);
        site.heatingDegreeDays().ifPresent(days -> row("Heating degree days", say(days, Dimension.DEGREE_DAYS), FILE));
        row(
                "Conductivity of the ground (" + site.groundName() + ")",
                say(site.groundConductivity(), Dimension.CONDUCTIVITY),
                "house file; named kinds by ISO 13370:2017 (from memory)");
        row("Dimension system", site.dimensions().name().toLowerCase(Locale.ROOT), FILE);
        site.ventilationHeatLoss()
                .ifPresent(loss -> row("Ventilation heat loss", say(loss, Dimension.HEAT_LOSS_COEFFICIENT), FILE));
        house.prices()
                .heat()
                .ifPresent(price -> row(
                        "Price of heat",
                        String.format(
                                Locale.ROOT,
                                "%.3f %s per kWh",
                                price,
                                house.prices().currency()),
                        FILE));
    }

    private void neighbours() {
        shell.surfaces()
                .collect(Surface::exposure)
                .select(exposure -> exposure.kind() == Exposure.Kind.UNHEATED)
                .distinct()
                .forEach(exposure -> row(
                        "Temperature factor b of " + exposure.neighbour(),
                        say(exposure.factor(), Dimension.RATIO),
                        FILE));
    }

    private void limits() {
        Limits limits = house.limits();
        String judgement = "house file, or the default: judgement";
        row("Least neck of the insulation", say(limits.neckShare(), Dimension.SHARE), judgement);
        row("Least ratio of the weakest path", say(limits.pathShare(), Dimension.SHARE), judgement);
        row(
                "Largest psi, external dimensions",
                say(limits.psi(), Dimension.LINEAR_TRANSMITTANCE),
                "house file, or the default: the trade's rule for a bridge-free junction");
        row(
                "Largest psi around windows and doors",
                say(limits.openingPsi(), Dimension.LINEAR_TRANSMITTANCE),
                "house file, or the default: common practice, no source");
        row(
                "Least temperature factor fRsi",
                say(limits.temperatureFactor(), Dimension.RATIO),
                "house file, or the default: 20 °C, 50 % and -5 °C by ISO 13788:2012 (from memory)");
    }

    private void openings() {
        house.openings()
                .groupBy(Opening::transmittance)
                .keyMultiValuePairsView()
                .toSortedListBy(pair -> pair.getOne())
                .forEach(pair -> row(
                        "U of " + pair.getTwo().collect(Opening::name).makeString(", "),
                        say(pair.getOne(), Dimension.TRANSMITTANCE),
                        FILE));
    }

    private void ownPsi() {
        house.ownPsi()
                .forEach(own -> row(
                        "psi of "
                                + own.which()
                                        .kinds()
                                        .collect(kind -> kind.label())
                                        .toSortedList()
                                        .makeString(", ")
                                + own.which().surfaces().makeString(" ", ", ", ""),
                        say(own.psi(), Dimension.LINEAR_TRANSMITTANCE),
                        own.source()));
    }

    private void parameters() {
        house.choices()
                .forEach(choice -> choice.parameters()
                        .keyValuesView()
                        .toSortedListBy(pair -> pair.getOne())
                        .forEach(pair -> row(
                                pair.getOne() + " of " + choice.detail(), say(pair.getTwo(), Dimension.LENGTH), FILE)));
    }

    private void prices() {
        house.prices()
                .details()
                .keyValuesView()
                .toSortedListBy(pair -> pair.getOne())
                .forEach(pair -> row(
                        "Cost of " + pair.getOne(),
                        new Cost(
                                        pair.getTwo().perMetre(),
                                        house.prices().currency(),
                                        pair.getTwo().source())
                                .text(units),
                        pair.getTwo().source()));
    }

    private void materials() {
        for (Material material : house.materials().toSortedListBy(Material::name)) {
            row(
                    "Conductivity of " + material.name(),
                    say(material.conductivity(), Dimension.CONDUCTIVITY),
                    source(material.provenance()));
        }
    }

    private static String source(Provenance provenance) {
        return switch (provenance.sureness()) {
            case READ, DECLARED -> provenance.source();
            case FROM_MEMORY -> provenance.source() + " (from memory)";
            case COMMON_PRACTICE -> "common practice, no source";
        };
    }

    private String say(double value, Dimension dimension) {
        return units.format(value, dimension);
    }

    private void row(String what, String value, String source) {
        rows.add(new InputRow(what, value, source));
    }
}
