package org.spile.geometry.house.duct;

/**
 * Something that stands into the clear passage at a place.
 *
 * @param atMm along the piece's path
 * @param areaMm2 what it covers, seen along the path
 * @param words what it is, as {@code 4 vanes}
 */
public record Intrusion(double atMm, double areaMm2, String words) {}
