package org.spile.samples.layers.wrong.exporters.dxf;

import org.spile.samples.layers.wrong.exporters.svg.SoundStroke;

/** One format leans on another. */
record SidewaysArrow(SoundStroke stroke) {}
