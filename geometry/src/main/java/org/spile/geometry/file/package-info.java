/**
 * The house file: reading it, checking it, editing it.
 *
 * <p>YAML and places in files are known here and nowhere else. {@link org.spile.geometry.file.Problem} is what a reader is
 * told.
 */
package org.spile.geometry.file;
