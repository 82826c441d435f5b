package org.spile.exporters.command;

import java.io.IOException;
import java.io.OutputStream;

/** What goes into one file: the same bytes each time it is asked. */
@FunctionalInterface
interface FileContent {
    void writeTo(OutputStream out) throws IOException;
}
