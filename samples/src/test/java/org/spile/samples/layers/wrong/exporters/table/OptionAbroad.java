package org.spile.samples.layers.wrong.exporters.table;

import org.apache.commons.cli.CommandLine;

/** A table knows the command line. */
record OptionAbroad(CommandLine words) {}
