package org.spile.geometry.file;

/** Ends the reading of a drawing; {@link OutlineSource} turns it into a value, so that it never leaves this package. */
final class DrawingFault extends Exception {
    private static final long serialVersionUID = 1L;

    private final String says;
    private final String advice;
    private final boolean doubt;

    private DrawingFault(String says, String advice, boolean doubt) {
        super(says, null, false, false);
        this.says = says;
        this.advice = advice;
        this.doubt = doubt;
    }

    static DrawingFault error(String says, String advice) {
        return new DrawingFault(says, advice, false);
    }

    static DrawingFault doubt(String says, String advice) {
        return new DrawingFault(says, advice, true);
    }

    OutlineSource.Refused refused(String file) {
        return new OutlineSource.Refused(file + ": " + says, advice, doubt);
    }
}
