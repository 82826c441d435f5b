package org.spile.analysis.finding;

import java.util.List;
import org.spile.geometry.kernel.measure.Origin;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;

/**
 * One layer of a stack-up.
 *
 * @param label as "cavities.lobby-top.ceiling.at"
 * @param factor how much of it counts, with its sign: +1 opens, -1 fills
 * @param size nominal
 * @param plus and minus its tolerance, both positive, same unit
 * @param takes how much of the value its tolerance takes away at worst, in the unit of the value
 * @param origin measured, maker, assumed, default or empty
 */
public record Layer(
        String label, double factor, Quantity size, double plus, double minus, double takes, String origin) {
    /** The layers of a sum, in its order. */
    public static List<Layer> of(Stack stack) {
        return stack.layers().stream().map(Layer::of).toList();
    }

    private static Layer of(org.spile.geometry.kernel.measure.Layer layer) {
        Reading reading = layer.reading();
        return new Layer(
                reading.path(),
                layer.factor(),
                new Quantity(reading.value(), reading.kind().baseSymbol()),
                reading.plus(),
                reading.minus(),
                layer.downMm(),
                reading.origin() == Origin.DEFAULT
                        ? "default"
                        : reading.origin().word());
    }
}
