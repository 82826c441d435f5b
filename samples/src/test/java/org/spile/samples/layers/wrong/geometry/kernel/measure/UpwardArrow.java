package org.spile.samples.layers.wrong.geometry.kernel.measure;

import org.spile.samples.layers.wrong.geometry.file.SoundPlace;

/** The kernel knows a place in a file. */
record UpwardArrow(SoundPlace place) {}
