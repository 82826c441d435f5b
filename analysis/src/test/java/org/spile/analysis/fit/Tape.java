package org.spile.analysis.fit;

import java.util.LinkedHashMap;
import java.util.Map;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Origin;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;

/** Readings for a house made by hand: each has its value unless a what-if says another. */
final class Tape {
    private final Map<String, Double> changes;
    private final Map<String, Reading> readings = new LinkedHashMap<>();

    Tape(Map<String, Double> changes) {
        this.changes = changes;
    }

    Stack exact(String path, double mm) {
        return read(path, mm, 0, 0);
    }

    Stack read(String path, double mm, double tolerance) {
        return read(path, mm, tolerance, tolerance);
    }

    Stack read(String path, double mm, double plus, double minus) {
        return read(path, mm, plus, minus, Origin.MEASURED);
    }

    Stack read(String path, double mm, double plus, double minus, Origin origin) {
        double value = changes.getOrDefault(path, mm);
        Reading reading = new Reading(path, value, plus, minus, origin, true, Kind.LENGTH, "");
        readings.put(path, reading);
        return Stack.of(reading);
    }

    Map<String, Reading> readings() {
        return readings;
    }

    Reading now(Reading told) {
        Double value = changes.get(told.path());
        return value == null ? told : told.withValue(value);
    }
}
