package org.spile.exporters.command;

/** A fault of Spile's own: told in one line; with SPILE_TRACE set, with everything a developer wants. */
final class OwnFault {
    private static final String TRACE = "SPILE_TRACE";

    private OwnFault() {}

    static ExitStatus told(Throwable fault, Console console) {
        var places = fault.getStackTrace();
        var place = places.length == 0 ? "a place unknown" : places[0].toString();
        if (fault instanceof OutOfMemoryError) {
            console.complain("out of memory", "give it more, as in java -Xmx512m -jar spile.jar");
        } else {
            console.complain(
                    "a fault of Spile's own: " + fault + " at " + place,
                    "the house file is not to blame; please report this line with the file that caused it");
        }
        if (System.getenv(TRACE) != null) {
            fault.printStackTrace(console.err());
        }
        return ExitStatus.OWN_FAULT;
    }
}
