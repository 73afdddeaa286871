package org.snugsheet.office.sharing.living;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.junit.jupiter.api.Test;

/** Random classes in a living copy, recalculated by Apache POI, against the engine. {@code -Dliving.classes=1000} for many. */
class LivingClassesTest {

    private static final int CLASSES = Integer.getInteger("living.classes", 6);
    private static final long SEED = Long.getLong("living.seed", 20261127);

    private static final System.Logger LOG = System.getLogger(LivingClassesTest.class.getName());
    private static final int TOLD = 50;

    @Test
    void aClassIsToldTheSameAsByTheEngine() {
        Random random = new Random(SEED);
        ClassComparison comparison = new ClassComparison();
        for (int i = 0; i < CLASSES; i++) {
            for (ClassPages pages : ClassPages.of(random, SEED, i, i + 1)) {
                PoiBook book = new PoiBook();
                book.add(pages.typed());
                book.add(pages.steps());
                comparison.compare(pages, cell -> shown(book.value(pages.steps().name(), cell)));
            }
            if ((i + 1) % TOLD == 0) {
                LOG.log(System.Logger.Level.INFO, comparison.told());
            }
        }
        assertEquals(List.of(), comparison.differences());
        assertTrue(comparison.compared() > 20 * CLASSES, comparison::told);
    }

    private static Object shown(CellValue value) {
        return value.getCellType() == CellType.NUMERIC
                ? (Object) value.getNumberValue()
                : value.getCellType() == CellType.STRING ? value.getStringValue() : value.formatAsString();
    }
}
