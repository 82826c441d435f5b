package org.spile.exporters.drawing;

import java.io.IOException;
import java.io.OutputStream;

/**
 * One file format for sheets. The same sheets give the same bytes, on every machine and in every locale.
 *
 * <p>A new format is a package with one public implementation, one line in {@code Formats}, and passes the contract test
 * that all writers share.
 */
public interface SheetWriter {
    /** The file name's ending, without the dot, lower case. */
    String ending();

    /** Whether a file holds one sheet only; else all sheets go into one file. */
    boolean oneSheetAFile();

    /**
     * Writes sheets as one file.
     *
     * @param sheets what to write; one sheet only if {@link #oneSheetAFile()}
     * @param out taken to the end, not closed
     * @throws IOException if the stream does
     */
    void write(SheetSet sheets, OutputStream out) throws IOException;
}
