/**
 * Solids and how they move: upright prisms, convex polyhedra, round bars, bodies made of them, rigid motions.
 *
 * <p>A solid is a core grown by a rounding radius, so round things stay exact. Start with {@link
 * org.spile.geometry.kernel.solid.Solid}. Uses {@code kernel.planar} for plan shapes; knows nothing of distances.
 */
package org.spile.geometry.kernel.solid;
