package org.spile.geometry.house.told;

import java.util.Optional;
import org.spile.geometry.kernel.measure.Reading;

/**
 * Something that stays; {@code kind} is cabinet, rail, stud, beam, pipe, shelf or tank.
 *
 * @param of the material it is made of; empty if nobody said
 * @param spans the length over which it carries freely, if it does (mm)
 * @param sag how far it may sag in use, if anybody said (mm)
 */
public record ToldFixture(Placed placed, String kind, String of, Optional<Reading> spans, Optional<Reading> sag) {}
