package org.spile.samples.layers.wrong.exporters.command;

import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.text.DecimalFormat;
import java.text.NumberFormat;
import java.time.ZoneId;
import java.util.Locale;
import java.util.TimeZone;

/** Speaks as the machine's country does. */
final class Abroad {

    private Abroad() {}

    static Locale locale() {
        return Locale.getDefault();
    }

    @SuppressWarnings("DefaultCharset") // the fault this class is here to show
    static Charset charset() {
        return Charset.defaultCharset();
    }

    static TimeZone timeZone() {
        return TimeZone.getDefault();
    }

    static ZoneId zone() {
        return ZoneId.systemDefault();
    }

    static String formats(double gapMm) {
        return String.format("%.1f", gapMm);
    }

    static String formatsItself(double gapMm) {
        return "%.1f".formatted(gapMm);
    }

    @SuppressWarnings("StringCaseLocaleUsage") // the fault this class is here to show
    static String lowers(String name) {
        return name.toLowerCase();
    }

    static void prints(PrintWriter out, double gapMm) {
        out.printf("%.1f", gapMm);
    }

    static NumberFormat number() {
        return NumberFormat.getInstance();
    }

    static DecimalFormat pattern() {
        return new DecimalFormat("0.0");
    }
}
