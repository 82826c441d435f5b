package org.spile.geometry.house.told;

import org.spile.geometry.kernel.measure.Reading;

/** One layer of a lining or a wrap: a material's id and its thickness (mm), square to the surface. */
public record ToldLayer(String path, String material, Reading thick) {}
