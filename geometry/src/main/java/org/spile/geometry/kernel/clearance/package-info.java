/**
 * How far solids are apart and how they may travel: signed distance with certified bounds, exit intervals, least and
 * greatest free travel, sections by planes, and a tree that finds near pairs.
 *
 * <p>Start with {@link org.spile.geometry.kernel.clearance.Clearance}; for travels with {@link
 * org.spile.geometry.kernel.clearance.LeastTravel}; for drawings with {@link
 * org.spile.geometry.kernel.clearance.Cut}. Answers come from bounds, never from rounding: see {@link
 * org.spile.geometry.kernel.clearance.Sufficiency}.
 */
package org.spile.geometry.kernel.clearance;
