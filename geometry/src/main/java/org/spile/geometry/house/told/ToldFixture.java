package org.spile.geometry.house.told;

/** Something that stays; {@code kind} is cabinet, rail, stud, beam, pipe, shelf or tank. */
public record ToldFixture(Placed placed, String kind) {}
