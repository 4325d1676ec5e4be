package coldseam.report.words;

import coldseam.audit.Audit;
import coldseam.audit.HeatLoss;
import coldseam.audit.Mould;
import coldseam.audit.engine.Unknown;
import coldseam.envelope.Prices;
import coldseam.envelope.Site;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import java.util.Optional;
import java.util.OptionalDouble;

/** The audit's main numbers for whoever lives in the house: sentences without symbols. */
public final class OwnerWords {

    private OwnerWords() {}

    /** What it takes to keep the rooms warm, and where it is coldest inside. */
    public static String of(Audit audit, Print print) {
        return heating(audit, print) + coldest(audit, print).map(" "::concat).orElse("");
    }

    private static String heating(Audit audit, Print print) {
        Site site = audit.house().site();
        HeatLoss loss = audit.heatLoss();
        String year = loss.annualLoss().isPresent()
                ? ", and " + print.of(loss.annualLoss().getAsDouble(), Dimension.ENERGY) + " a year"
                        + money(loss.annualLoss().getAsDouble(), audit.house().prices())
                        + ", of which sun and people give a part"
                : "";
        return "To keep " + print.of(site.indoorTemperature(), Dimension.TEMPERATURE) + " indoors while it is "
                + print.of(site.outdoorTemperature(), Dimension.TEMPERATURE) + " outdoors takes "
                + (Unknown.of(audit).none() ? "" : "at least ")
                + print.of(loss.designLoad(), Dimension.POWER) + year
                + (loss.ventilation().isPresent() ? ", fresh air included." : ", fresh air not included.");
    }

    private static String money(double energy, Prices prices) {
        OptionalDouble heat = prices.heat();
        return heat.isPresent() ? Format.of(" (%.0f %s)", energy * heat.getAsDouble(), prices.currency()) : "";
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
                            + print.of(warmth, Dimension.TEMPERATURE) + "; mould may grow there from "
                            + Print.percent(sheet.mouldHumidity()) + " of humidity in the rooms on"
                            + (grows ? ", and they have " + Print.percent(site.indoorHumidity()) + "." : ".");
                });
    }
}
