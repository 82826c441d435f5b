package org.spile.geometry.file;

/**
 * A face of a trailer, {@code bunk.rear}.
 *
 * @param trailer the trailer's id
 * @param face rear, front, left or right
 */
record TrailerFace(String trailer, String face) {}
