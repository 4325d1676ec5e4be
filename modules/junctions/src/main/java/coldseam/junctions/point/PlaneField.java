package coldseam.junctions.point;

import coldseam.conduction.Point;
import coldseam.conduction.TemperatureField;
import coldseam.conduction.solid.BodyCut;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** The temperatures of a body in a plane, as far as a picture asks for them. */
record PlaneField(BodyCut cut) implements TemperatureField {

    private static UnsupportedOperationException isothermsOnly() {
        return new UnsupportedOperationException("a plane through a body has isotherms only");
    }

    @Override
    public double temperatureAt(double x, double y) {
        throw isothermsOnly();
    }

    @Override
    public double[] fluxAt(double x, double y) {
        throw isothermsOnly();
    }

    @Override
    public ImmutableList<ImmutableList<Point>> isotherm(double temperature) {
        return Lists.immutable
                .withAll(cut.isotherm(temperature))
                .collect(each -> Lists.immutable.of(new Point(each.x0(), each.y0()), new Point(each.x1(), each.y1())));
    }

    @Override
    public ImmutableList<Cell> cells() {
        throw isothermsOnly();
    }
}
