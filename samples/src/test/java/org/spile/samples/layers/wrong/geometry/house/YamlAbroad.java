package org.spile.samples.layers.wrong.geometry.house;

import org.snakeyaml.engine.v2.api.LoadSettings;

/** The house knows how its file is read. */
record YamlAbroad(LoadSettings settings) {}
