package org.spile.geometry.file;

import java.util.Optional;
import org.spile.geometry.kernel.measure.Doubt;
import org.spile.geometry.kernel.measure.QuantityText;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Usual;

/**
 * The sizes that something mostly has; our own bounds, no source.
 *
 * <p>A number is asked about only if it is below the least, or more than ten times the most: a size somewhat over the
 * most is rare but no likelier in another unit.
 *
 * @param leastMm the least usual (mm)
 * @param mostMm the most usual (mm)
 */
record UsualSize(double leastMm, double mostMm) {
    private static final double FAR_OVER = 10;

    Optional<Doubt> doubt(Reading reading, QuantityText quantities) {
        double size = Math.abs(reading.value());
        return size >= leastMm && size <= FAR_OVER * mostMm
                ? Optional.empty()
                : quantities.doubt(reading, new Usual(leastMm, mostMm));
    }
}
