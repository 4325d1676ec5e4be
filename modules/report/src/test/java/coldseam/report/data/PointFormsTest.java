package coldseam.report.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import coldseam.assemblies.moisture.SurfaceHumidity;
import coldseam.audit.BridgeSheet;
import coldseam.conduction.Accuracy;
import coldseam.envelope.PointKind;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.PointResult;
import coldseam.junctions.PointSetup;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.detail.Cost;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Maps;
import org.junit.jupiter.api.Test;

class PointFormsTest {

    /** A point's sheet says of its options what a junction's says: each with its price, and the lengths that were set. */
    @Test
    void aSheetHoldsItsOptionsItsLengthsAndTheirPrices() {
        PointKind bracket = PointKind.of("bracket");
        PointSetup wall = TypicalBuild.MASONRY.setup(bracket);
        BridgeComputer computer = BridgeComputers.computer(new Accuracy(3e-2, 60_000));
        ImmutableList<PointResult> options = CatalogueFile.builtIn()
                .options(bracket)
                .collect(detail -> computer.compute(
                        detail.rank().name().equals("WORST")
                                ? detail.at(new Cost(12, Cost.Per.POINT, "EUR", "an offer"))
                                : detail.with(Maps.immutable.of(
                                        detail.parameters().getFirst().name(),
                                        detail.parameters().getFirst().value())),
                        wall));
        Map<?, ?> data = (Map<?, ?>) PointForms.SHEET.written(new BridgeSheet<>(
                "P1",
                options.getLast(),
                Optional.empty(),
                options,
                Lists.immutable.empty(),
                Lists.immutable.of("brackets"),
                4,
                true,
                new SurfaceHumidity(10, 0.5, 0.4),
                OptionalDouble.empty()));
        assertEquals(4, data.get("number"));
        ImmutableList<Map<?, ?>> written = ((ImmutableList<?>) data.get("options")).collect(each -> (Map<?, ?>) each);
        assertEquals(options.collect(option -> option.detail().id()), written.collect(option -> option.get("detail")));
        assertEquals("worst", written.getFirst().get("rank"));
        assertEquals(
                Map.of("amount_each", 12.0, "currency", "EUR", "source", "an offer"),
                written.getFirst().get("cost"));
        assertFalse(written.getLast().containsKey("cost"));
        assertEquals(
                options.getLast()
                        .detail()
                        .connections()
                        .keysView()
                        .collect(Types::word)
                        .toSet(),
                ((ImmutableMap<?, ?>) data.get("connections")).keysView().toSet());
        assertEquals(
                Lists.immutable.of(
                        options.getLast().detail().parameters().getFirst().name()),
                ((ImmutableMap<?, ?>) data.get("parameters")).keysView().toList());
    }
}
