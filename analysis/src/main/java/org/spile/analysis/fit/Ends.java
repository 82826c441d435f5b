package org.spile.analysis.fit;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** The two points between which a length was measured (site frame, mm). */
record Ends(Vector3D at, Vector3D to) {}
