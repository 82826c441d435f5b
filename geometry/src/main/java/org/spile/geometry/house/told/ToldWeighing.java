package org.spile.geometry.house.told;

import java.util.Map;
import org.spile.geometry.kernel.measure.Reading;

/** One weighing: what the ticket says (a date or name) and the masses read under coupling, axles, wheels or all (kg). */
public record ToldWeighing(String path, String ticket, Map<String, Reading> under) {}
