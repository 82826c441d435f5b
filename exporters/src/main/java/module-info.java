/**
 * From findings to files, and the command a user starts.
 *
 * <p>{@code drawing} is the paper model; each format has a package above it; {@code command} stands above them all.
 *
 * <p>Packages are exported from their first public type on, one line each: an empty one doesn't compile.
 */
module org.spile.exporters {
    requires transitive org.spile.analysis;
    requires com.fasterxml.jackson.core;
    requires com.fasterxml.jackson.databind;
    requires org.apache.commons.cli;
    requires java.xml;
    requires org.apache.fontbox;
    requires org.apache.pdfbox.io;

    exports org.spile.exporters;
    exports org.spile.exporters.command;
    exports org.spile.exporters.drawing;
    exports org.spile.exporters.drawing.layout;
    exports org.spile.exporters.dxf;
    exports org.spile.exporters.sheets;
    exports org.spile.exporters.svg;
    exports org.spile.exporters.table;
}
