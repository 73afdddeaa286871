package org.snugsheet.office.sheets;

import com.sun.star.beans.PropertyValue;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.SheetLine;
import org.snugsheet.office.page.Paper;
import org.snugsheet.office.sheets.builder.Setting;
import org.snugsheet.office.sheets.builder.WorkedSheet;
import org.snugsheet.office.uno.Uno;

/** Worked sheets for tests, opened by the menu: inside the office they are filled in a fraction of the time that it takes from outside. */
public final class MenuSheets {

    private MenuSheets() {}

    /** Whether the menu opens sheets so: a region says both the scale and the paper. */
    public static boolean canBeChosen(Setting setting) {
        return setting.paper() == (isAmerican(setting) ? Paper.LETTER : Paper.A4);
    }

    /** What a macro names as the Language of a new sheet. */
    public static PropertyValue language(Setting setting) {
        return Uno.named("Language", setting.language().code() + (isAmerican(setting) ? "-US" : ""));
    }

    /**
     * Opens one.
     *
     * @param office where it is opened
     * @param sheet which
     * @param setting how it is written
     * @return the open sheet, whose formulas may not be worked out yet
     */
    public static CalcDocument opened(Office office, WorkedSheet sheet, Setting setting) {
        if (!canBeChosen(setting)) {
            throw new IllegalArgumentException(setting.toString());
        }
        try (CalcDocument window = office.newDocument()) {
            return office.openedBy(() -> Menu.asAPerson(
                    office, () -> Menu.call(office, window, SheetLine.address(sheet), Menu.QUIET, language(setting))));
        }
    }

    private static boolean isAmerican(Setting setting) {
        return setting.scale() == Scale.FAHRENHEIT;
    }
}
