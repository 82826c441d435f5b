/**
 * The house file: reading it, checking it, editing it.
 *
 * <p>YAML and places in files are known here and nowhere else. {@link org.spile.geometry.file.Problem} is what a reader is
 * told; {@link org.spile.geometry.file.Edits} changes values by splicing the text, so that comments and layout stay. Uses
 * {@code kernel} and {@code house}.
 */
package org.spile.geometry.file;
