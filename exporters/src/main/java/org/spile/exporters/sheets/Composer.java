package org.spile.exporters.sheets;

import java.util.List;
import org.spile.exporters.drawing.layout.SheetLayout;

/** Composes one kind of sheet. */
public interface Composer {
    /**
     * The sheets it makes of a house, ready to be laid out.
     *
     * @return in order; none if the house has nothing of the kind
     */
    List<SheetLayout> compose(Subject subject);
}
