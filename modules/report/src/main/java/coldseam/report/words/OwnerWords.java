package coldseam.report.words;

import coldseam.audit.Audit;
import coldseam.audit.HeatLoss;
import coldseam.audit.Mould;
import coldseam.audit.engine.Unknown;
import coldseam.envelope.Prices;
import coldseam.envelope.Site;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import java.util.OptionalDouble;

/** The audit's main numbers for whoever lives in the house: sentences without symbols. */
public final class OwnerWords {

    /** Degrees: half of the digit that is printed of a temperature. */
    private static final double WHOLE = 0.05;

    private OwnerWords() {}

    /** What it takes to keep the rooms warm, and where it is coldest inside. */
    public static String of(Audit audit, Print print) {
        return heating(audit, print) + coldest(audit, print).map(" "::concat).orElse("");
    }

    private static String heating(Audit audit, Print print) {
        Site site = audit.house().site();
        HeatLoss loss = audit.heatLoss();
        String year = loss.annualLoss().isPresent()
                ? ", and " + print.round(loss.annualLoss().getAsDouble(), Dimension.ENERGY) + " a year"
                        + money(loss.annualLoss().getAsDouble(), audit.house().prices())
                        + ", of which sun and people give a part"
                : "";
        return "To keep " + given(site.indoorTemperature(), print) + " indoors while it is "
                + given(site.outdoorTemperature(), print) + " outdoors takes "
                + (Unknown.of(audit).none() ? "about " : "at least about ")
                + print.round(loss.designLoad().middle(), Dimension.POWER) + year
                + (loss.ventilation().isPresent() ? "; fresh air is included." : "; fresh air is not included.");
    }

    /** As the house file gives it: in whole degrees where those say it. */
    private static String given(double temperature, Print print) {
        double value = print.units().value(temperature, Dimension.TEMPERATURE);
        return Math.abs(value - Math.rint(value)) < WHOLE
                ? warmth(temperature, print)
                : print.of(temperature, Dimension.TEMPERATURE);
    }

    /** In whole degrees, as a household reads them. */
    private static String warmth(double temperature, Print print) {
        return print.units().number(temperature, Dimension.TEMPERATURE, 0) + " "
                + print.units().label(Dimension.TEMPERATURE);
    }

    private static String money(double energy, Prices prices) {
        OptionalDouble heat = prices.heat();
        return heat.isPresent()
                ? " (" + Print.spacedMoney(Print.round(energy * heat.getAsDouble())) + " " + prices.currency() + ")"
                : "";
    }

    private static Optional<String> coldest(Audit audit, Print print) {
        Site site = audit.house().site();
        return audit.mould()
                .surfaces()
                .getFirstOptional()
                .map(Mould.Surface::sheet)
                .map(sheet -> {
                    double warmth = site.outdoorTemperature()
                            + sheet.temperatureFactor() * (site.indoorTemperature() - site.outdoorTemperature());
                    boolean grows = site.indoorHumidity() >= sheet.mouldHumidity();
                    return "The coldest spot inside, on sheet " + sheet.id() + ", then has about "
                            + warmth(warmth, print) + "; mould may grow there once the air indoors has "
                            + Print.percent(sheet.mouldHumidity()) + " of humidity"
                            + (grows ? ", and it has " + Print.percent(site.indoorHumidity()) + "." : ".");
                });
    }
}
