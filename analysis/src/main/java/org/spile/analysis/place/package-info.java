/**
 * Where else a unit could go: the exact map of every place in the plan where it fits, at each yaw, at the height it comes to
 * stand there.
 *
 * <p>It asks what {@code fit} asks ({@link org.spile.analysis.fit.Bans}) and adds no demand of its own. {@link
 * org.spile.analysis.place.Place} is the way in; its answer is a {@link org.spile.analysis.place.PlaceAnswer}.
 */
package org.spile.analysis.place;
