package org.spile.geometry.house;

/** What kind of thing a part belongs to. */
public enum PartKind {
    /** A unit's own body. */
    UNIT,
    /** Room demanded for service at a unit; no material. */
    SERVICE,
    /** A leg of a duct, with wall and insulation. */
    DUCT,
    /** A leg of a drain, refrigerant pair, cable or water pipe. */
    LINE,
    /** A terminal that takes room: cowl, hood, grille, chamber. */
    TERMINAL,
    /** Something that stays. */
    FIXTURE,
    /** Something that moves, where the stance has it; the leaf of a hinged or sliding opening too. */
    MOVER,
    /** The linings and what is behind them, at one side of a cavity. */
    LINING,
    /** A trailer's own shell: roof, walls, deck. */
    SHELL
}
