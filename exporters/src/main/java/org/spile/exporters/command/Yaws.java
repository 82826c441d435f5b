package org.spile.exporters.command;

import java.util.ArrayList;
import java.util.List;
import org.spile.analysis.place.Place;

/** The ways to turn a unit that a command line asks for. */
sealed interface Yaws {
    /** Full turns are taken off: from 0 up to 360 degrees, each once. */
    record Named(List<Double> degrees) implements Yaws {
        public Named {
            degrees = List.copyOf(degrees);
        }
    }

    /** A word that is no angle. */
    record Wrong(Refusal why) implements Yaws {}

    static Yaws in(List<String> words) {
        var degrees = new ArrayList<Double>();
        for (var word : words) {
            var number = word.replaceFirst("\\s*deg$", "");
            if (!number.matches("-?[0-9]{1,4}(\\.[0-9]{1,6})?")) {
                return new Wrong(new Refusal("\"" + word + "\" is no angle", "write degrees, as --yaw 90"));
            }
            double turned = Double.parseDouble(number) % 360;
            double positive = turned < 0 ? turned + 360 : turned + 0.0;
            if (!degrees.contains(positive)) {
                degrees.add(positive);
            }
        }
        return new Named(degrees.isEmpty() ? Place.QUARTER_TURNS : degrees);
    }
}
