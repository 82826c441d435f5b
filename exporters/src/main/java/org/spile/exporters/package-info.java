/**
 * The list of file formats: read {@link org.spile.exporters.Formats} to see what sheets can be written as.
 *
 * <p>May use {@code drawing} and the packages of the formats. A new format adds one line here.
 */
package org.spile.exporters;
