package org.spile.geometry.house.material;

import java.util.List;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Tolerance;

/**
 * How exact metal sheet's thickness is: normal tolerance, soft grades, by thickness and width.
 *
 * <p>Each row holds for thicknesses from above the row before it up to its own; for stainless sheet from its own up to
 * below the next row.
 */
public final class SheetThickness {
    /** Cold rolled steel below 260 MPa; width classes to 1200, to 1500 and over, in mm. */
    public static final SheetThickness COLD_ROLLED = new SheetThickness(
            "EN 10131:2006, as printed in a steelmaker's data sheet",
            false,
            new Widths(1200, 1500, Double.MAX_VALUE),
            List.of(
                    new Row(0.40, 0, 0, 0),
                    new Row(0.60, 0.03, 0.04, 0.05),
                    new Row(0.80, 0.04, 0.05, 0.06),
                    new Row(1.00, 0.05, 0.06, 0.07),
                    new Row(1.20, 0.06, 0.07, 0.08),
                    new Row(1.60, 0.08, 0.09, 0.10),
                    new Row(2.00, 0.10, 0.11, 0.12),
                    new Row(2.50, 0.12, 0.13, 0.14),
                    new Row(3.00, 0.15, 0.15, 0.16)));

    /** Hot-dip coated steel below 260 MPa; width classes to 1200, to 1500 and over, in mm. */
    public static final SheetThickness HOT_DIP_COATED = new SheetThickness(
            "EN 10143, as printed by a service centre",
            false,
            new Widths(1200, 1500, Double.MAX_VALUE),
            List.of(
                    new Row(0.40, 0, 0, 0),
                    new Row(0.60, 0.04, 0.05, 0.06),
                    new Row(0.80, 0.05, 0.06, 0.07),
                    new Row(1.00, 0.06, 0.07, 0.08),
                    new Row(1.20, 0.07, 0.08, 0.09),
                    new Row(1.60, 0.10, 0.11, 0.12),
                    new Row(2.00, 0.12, 0.13, 0.14),
                    new Row(2.50, 0.14, 0.15, 0.16),
                    new Row(3.00, 0.17, 0.17, 0.18)));

    /** Stainless cold rolled; widths to 1000, to 1250 and to 1500, in mm; zero where the table has no value. */
    public static final SheetThickness STAINLESS = new SheetThickness(
            "EN 10259 / ISO 9445, as printed in a stockholder's data sheet",
            true,
            new Widths(1000, 1250, 1500),
            List.of(
                    new Row(0.50, 0.045, 0.05, 0),
                    new Row(0.60, 0.05, 0.05, 0),
                    new Row(0.80, 0.055, 0.06, 0.06),
                    new Row(1.00, 0.06, 0.07, 0.07),
                    new Row(1.20, 0.07, 0.08, 0.08),
                    new Row(1.50, 0.08, 0.09, 0.10),
                    new Row(2.00, 0.09, 0.10, 0.11),
                    new Row(2.50, 0, 0, 0)));

    private final String source;
    private final boolean rowIsLeast;
    private final Widths widths;
    private final List<Row> rows;

    private SheetThickness(String source, boolean rowIsLeast, Widths widths, List<Row> rows) {
        this.source = source;
        this.rowIsLeast = rowIsLeast;
        this.widths = widths;
        this.rows = rows;
    }

    /** Where the table comes from. */
    public String source() {
        return source;
    }

    /**
     * The tolerance of a sheet.
     *
     * @param thickMm its thickness (mm)
     * @param widthMm the width it was rolled at (mm)
     * @return nothing outside the table
     */
    public Optional<Tolerance> of(double thickMm, double widthMm) {
        double thick = TableSize.of(thickMm);
        for (int i = 1; i < rows.size(); i++) {
            Row row = rowIsLeast ? rows.get(i - 1) : rows.get(i);
            double least = rows.get(i - 1).thickMm;
            double most = rows.get(i).thickMm;
            boolean inside = rowIsLeast ? thick >= least && thick < most : thick > least && thick <= most;
            if (inside) {
                double either = row.at(widths, widthMm);
                return either > 0 ? Optional.of(new Tolerance(either, either)) : Optional.empty();
            }
        }
        return Optional.empty();
    }

    private record Widths(double narrowMm, double middleMm, double wideMm) {}

    private record Row(double thickMm, double narrow, double middle, double wide) {
        double at(Widths widths, double widthMm) {
            double wideMm = TableSize.of(widthMm);
            if (!(wideMm > 0 && wideMm <= widths.wideMm)) {
                return 0;
            }
            return wideMm <= widths.narrowMm ? narrow : wideMm <= widths.middleMm ? middle : wide;
        }
    }
}
