package org.spile.geometry.file;

import java.util.Optional;
import org.spile.geometry.kernel.measure.Reading;

/**
 * How far a leg goes one way.
 *
 * @param length its length (mm); empty for {@code rest}
 */
record Reach(Optional<Reading> length) {}
