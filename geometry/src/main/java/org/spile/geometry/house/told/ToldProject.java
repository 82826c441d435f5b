package org.spile.geometry.house.told;

/** What a title block says of the job; each may be empty. */
public record ToldProject(String number, String by, String forWhom) {}
