package org.spile.samples.layers.wrong.geometry.kernel.solid;

import com.fasterxml.jackson.databind.JsonNode;

/** A solid knows JSON. */
record JsonAbroad(JsonNode node) {}
