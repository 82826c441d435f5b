package org.spile.geometry.house.told;

import org.spile.geometry.kernel.measure.Reading;

/**
 * A hinge: the edge that stays, the way the leaf first goes, and how far it opens (deg). The pin lies on that edge, in
 * the face that the leaf opens to.
 */
public record ToldHinge(String path, String edge, String opens, Reading by) {}
