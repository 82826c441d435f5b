/**
 * What layers are made of: the shipped materials, what they do, and how exact their thickness is.
 *
 * <p>Read {@link org.spile.geometry.house.material.Materials} first: the shipped table, overridden by a house's own
 * words. Each published thickness rule stands in one class with its source: {@link
 * org.spile.geometry.house.material.PlywoodThickness}, {@link org.spile.geometry.house.material.SheetThickness}, {@link
 * org.spile.geometry.house.material.SawnTimber}, {@link org.spile.geometry.house.material.GeneralTolerance}. Outside its
 * table a rule gives nothing; it never extends one.
 */
package org.spile.geometry.house.material;
