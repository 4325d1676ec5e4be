package coldseam.report.data;

import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** An edge of the shell. */
record EdgeData(
        String name,
        String kind,
        ImmutableList<String> surfaces,
        Optional<String> opening,
        @Says("where a person finds it") String place,
        @Says("in the dimensions in use") double length_m,
        double externalLength_m,
        double internalLength_m,
        double angle_deg,
        ImmutableList<Double> from_m,
        ImmutableList<Double> to_m,
        Optional<String> sheet,
        @Says("in the dimensions in use") BoundsData psi_W_per_mK,
        double temperatureFactor,
        BoundsData loss_W_per_K,
        @Says("of psi: computed, stand-in, own or none") String source,

        @Says("the same in words; of an own psi what the house file cites")
        String sourceSays,

        @Says("whether psi is a stand-in") boolean unknown) {}
