package org.snugsheet.office.functions.cold;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.clothing.Garment;
import org.snugsheet.engine.clothing.Garments;
import org.snugsheet.engine.clothing.Outfit;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.office.cells.Cells;

/** The cells that name the garments of an outfit. */
final class OutfitCells {

    /** More than a whole class wears at once; a whole column has a million. Common practice, no source. */
    private static final int MOST = 1000;

    private OutfitCells() {}

    /**
     * An outfit from cells; blank ones are skipped.
     *
     * @param names the garments
     * @return the outfit
     * @throws org.snugsheet.engine.InvalidInputException if more than {@value #MOST} cells are filled, none is, or a garment is
     *     unknown
     */
    static Outfit of(Object[][] names) {
        List<Entry> cells = Cells.line(names, MOST);
        List<Garment> worn = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            if (!(cells.get(i) instanceof Entry.Missing)) {
                worn.add(Garments.find(cells.get(i).written(), i + 1));
            }
        }
        return new Outfit(worn);
    }
}
