package org.spile.samples.layers;

import java.util.List;

/** Same input, same bytes: nothing that differs from run to run, machine to machine or country to country. */
final class Bans {

    private Bans() {}

    static List<Ban> all() {
        return List.of(console(), lineEnds(), clocks(), chance(), places(), hashes());
    }

    private static Ban console() {
        return Ban.outsideCommand(
                "only the command prints, exits or asks the process",
                "java\\.lang\\.System\\.(out|err|in)",
                "java\\.lang\\.(System|Runtime)\\.(exit|halt)\\(.*",
                "java\\.lang\\.System\\.(getenv|getProperty|getProperties)\\(.*",
                ".*\\.printStackTrace\\(.*");
    }

    private static Ban lineEnds() {
        return Ban.outsideCommand(
                "only the command ends lines as the machine does",
                "java\\.lang\\.System\\.lineSeparator\\(\\)",
                "java\\.io\\.Print(Writer|Stream)\\.println\\(.*",
                "java\\.io\\.BufferedWriter\\.newLine\\(\\)");
    }

    private static Ban clocks() {
        return Ban.everywhere(
                "nothing reads a clock",
                "java\\.lang\\.System\\.(currentTimeMillis|nanoTime)\\(\\)",
                "java\\.time\\..*\\.now\\(.*",
                "java\\.time\\.Clock\\..*",
                "java\\.util\\.(Date|GregorianCalendar)\\.<init>\\(\\)",
                "java\\.util\\.Calendar\\.getInstance\\(.*");
    }

    private static Ban chance() {
        return Ban.everywhere(
                "nothing is random or numbered by its place in memory",
                "java\\.lang\\.(Math|StrictMath)\\.random\\(\\)",
                "java\\.util\\.(Random|SplittableRandom)\\.<init>\\(.*",
                "java\\.util\\.concurrent\\.ThreadLocalRandom\\..*",
                "java\\.security\\.SecureRandom\\..*",
                "java\\.util\\.UUID\\.randomUUID\\(\\)",
                "java\\.util\\.Collections\\.shuffle\\(.*",
                "java\\.lang\\.System\\.identityHashCode\\(.*");
    }

    private static Ban places() {
        return Ban.everywhere(
                "nothing asks the machine's locale, character set or time zone",
                "java\\.util\\.Locale\\.getDefault\\(.*",
                "java\\.nio\\.charset\\.Charset\\.defaultCharset\\(\\)",
                "java\\.util\\.TimeZone\\.getDefault\\(\\)",
                "java\\.time\\.ZoneId\\.systemDefault\\(\\)",
                "java\\.lang\\.String\\.format\\(java\\.lang\\.String, .*",
                "java\\.lang\\.String\\.formatted\\(.*",
                "java\\.lang\\.String\\.to(Lower|Upper)Case\\(\\)",
                "java\\.io\\.Print(Writer|Stream)\\.(printf|format)\\(java\\.lang\\.String, .*",
                "java\\.text\\.NumberFormat\\.get(Number)?Instance\\(\\)",
                "java\\.text\\.DecimalFormat\\.<init>\\((java\\.lang\\.String)?\\)");
    }

    /** A map or set made here and only looked up in may hash; one that is kept, handed on or gone through may not. */
    private static Ban hashes() {
        return Ban.everywhere(
                "what is copied or collected keeps its order from run to run",
                "java\\.util\\.Map\\.copyOf\\(.*",
                "java\\.util\\.Set\\.copyOf\\(.*",
                "java\\.util\\.stream\\.Collectors\\.(toSet|toUnmodifiableSet|toUnmodifiableMap)\\(.*",
                "java\\.util\\.stream\\.Collectors\\.toMap\\(\\S+, \\S+\\)",
                "java\\.util\\.stream\\.Collectors\\.groupingBy\\([^,]+(, \\S+Collector)?\\)");
    }
}
