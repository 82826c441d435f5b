package org.spile.samples.layers.wrong.exporters.table;

import picocli.CommandLine.ParseResult;

/** A table knows the command line. */
record OptionAbroad(ParseResult words) {}
