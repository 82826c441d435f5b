package org.spile.geometry.file;

import java.util.Optional;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Unit;

/** Units of length of drawings. */
final class DrawingUnit {
    private DrawingUnit() {}

    /** The unit stated in the house file; none if it is empty. */
    static Optional<Unit> stated(String symbol) {
        return Kind.LENGTH.units().stream()
                .filter(unit -> unit.symbol().equals(symbol))
                .findFirst();
    }

    /**
     * The unit that a DXF header's {@code $INSUNITS} means, by the codes of the published DXF reference: 1 inches, 2 feet,
     * 4 millimetres, 5 centimetres, 6 metres; 0 is none.
     */
    static Unit coded(int code) throws DrawingFault {
        return switch (code) {
            case 1 -> Unit.INCH;
            case 2 -> Unit.FOOT;
            case 4 -> Unit.MILLIMETRE;
            case 5 -> Unit.CENTIMETRE;
            case 6 -> Unit.METRE;
            case 0 ->
                throw DrawingFault.error(
                        "it says no unit ($INSUNITS is missing or 0).", "State it beside the file's name: unit: mm.");
            default ->
                throw DrawingFault.error(
                        "its unit ($INSUNITS " + code + ") is not one that houses are drawn in.",
                        "State the unit of its numbers: unit: mm.");
        };
    }
}
