package coldseam.audit.house;

import coldseam.envelope.file.house.LoadedHouse;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.fault.ShellFault;
import coldseam.files.Faults;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.Phrase;

/** Whether somebody can live in a house of this size, and what is given by hand goes with it. */
record SizeChecks(LoadedHouse loaded, Shell shell, Faults faults) {

    /** m, of the volume over the floor area, inner faces: rooms under a roof have the least (judgement). */
    private static final double LOWEST = 1.6;

    /** m, likewise; halls have the most (judgement). */
    private static final double HIGHEST = 8;

    /** Heat that a cubic metre of air carries, Wh/(m³·K) (ISO 13789, from memory). */
    private static final double OF_AIR = 0.34;

    /** Air changes in an hour that count as heat loss: what a good exchanger and a tight house leave (judgement). */
    private static final double LEAST_CHANGES = 0.04;

    /** The same of a house whose windows stand ajar (judgement). */
    private static final double MOST_CHANGES = 3;

    /** Adds every fault; a shell that is not closed has no volume. */
    static void check(LoadedHouse loaded, Shell shell, Faults faults) {
        if (shell.closed() && shell.internalVolume() > 0 && shell.floorArea() > 0) {
            new SizeChecks(loaded, shell, faults).check();
        }
    }

    private void check() {
        double height = shell.internalVolume() / shell.floorArea();
        if (height < LOWEST || height > HIGHEST) {
            faults.add(
                    loaded.parts().get(new LoadedHouse.Part(ShellFault.Part.BODY, "")),
                    "rooms are as high as rooms are",
                    metres(height).and(" on an average of the volume over all floors"),
                    metres(LOWEST)
                            .and(" to ")
                            .and(metres(HIGHEST))
                            .and("; usual: ")
                            .and("2.3", 2.3, Dimension.LENGTH)
                            .and(" to ")
                            .and("3 m", 3, Dimension.LENGTH),
                    "check heights, levels and their units");
        }
        loaded.house().site().ventilationHeatLoss().ifPresent(this::ventilation);
    }

    private void ventilation(double loss) {
        double once = OF_AIR * shell.internalVolume();
        if (loss < LEAST_CHANGES * once || loss > MOST_CHANGES * once) {
            faults.add(
                    loaded.site(),
                    "ventilation-heat-loss goes with the volume",
                    watts(loss)
                            .and(Format.of(", %.2g air changes an hour of ", loss / once))
                            .and(shell.internalVolume(), Dimension.VOLUME),
                    watts(LEAST_CHANGES * once)
                            .and(" to ")
                            .and(watts(MOST_CHANGES * once))
                            .and("; usual: 0.1 to 0.7 air changes, what a heat exchanger gives back taken off"),
                    "check it, or leave the key out");
        }
    }

    private static Phrase metres(double length) {
        return Phrase.of(length, Dimension.LENGTH);
    }

    private static Phrase watts(double loss) {
        return Phrase.of(loss, Dimension.HEAT_LOSS_COEFFICIENT);
    }
}
