package org.spile.samples.layers.wrong.exporters.command;

import java.time.Clock;
import java.time.Instant;
import java.util.Calendar;
import java.util.Date;
import java.util.Locale;

/** Reads clocks, which not even the command may. */
final class Clocks {

    private Clocks() {}

    static long nanos() {
        return System.nanoTime();
    }

    static Instant now() {
        return Instant.now();
    }

    static Clock clock() {
        return Clock.systemUTC();
    }

    @SuppressWarnings("JavaUtilDate") // the fault this class is here to show
    static Date date() {
        return new Date();
    }

    static Calendar calendar() {
        return Calendar.getInstance(Locale.ROOT);
    }
}
