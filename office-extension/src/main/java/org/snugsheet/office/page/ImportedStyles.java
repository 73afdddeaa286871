package org.snugsheet.office.page;

import com.sun.star.beans.PropertyValue;
import com.sun.star.container.XNameAccess;
import com.sun.star.container.XNameContainer;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.style.XStyleFamiliesSupplier;
import com.sun.star.style.XStyleLoader2;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.XCloseable;
import java.util.Arrays;
import java.util.List;
import org.snugsheet.office.uno.DocumentFile;
import org.snugsheet.office.uno.Uno;

/**
 * The cell styles that were missing in somebody’s document. Those that it has stay as they are.
 *
 * <p>The office changes no cell style while any sheet of the document is protected, but it lets styles be brought from another
 * document: so they are made in an empty one.
 */
final class ImportedStyles {

    private final XSpreadsheetDocument document;
    private final List<String> names;

    private ImportedStyles(XSpreadsheetDocument document, List<String> names) {
        this.document = document;
        this.names = names;
    }

    static ImportedStyles into(XComponentContext office, XSpreadsheetDocument document)
            throws com.sun.star.uno.Exception {
        XNameAccess present = CellStyle.styles(document);
        if (StyleSheet.besideNames().stream().allMatch(present::hasByName)) {
            return new ImportedStyles(document, List.of());
        }
        List<String> before = List.of(present.getElementNames());
        XComponent empty = DocumentFile.openHidden(office, "private:factory/scalc");
        try {
            StyleSheet.installBeside(Uno.as(XSpreadsheetDocument.class, empty));
            Uno.as(
                            XStyleLoader2.class,
                            Uno.as(XStyleFamiliesSupplier.class, document).getStyleFamilies())
                    .loadStylesFromDocument(empty, new PropertyValue[] {
                        Uno.named("LoadCellStyles", true),
                        Uno.named("LoadPageStyles", false),
                        Uno.named("OverwriteStyles", false)
                    });
        } finally {
            Uno.as(XCloseable.class, empty).close(true);
        }
        return new ImportedStyles(
                document,
                Arrays.stream(CellStyle.styles(document).getElementNames())
                        .filter(name -> !before.contains(name))
                        .toList());
    }

    /** For a page that came to nothing. Once a page was there, the office’s steps to undo may still know the styles. */
    void takeAway() throws com.sun.star.uno.Exception {
        XNameContainer styles = CellStyle.styles(document);
        for (String name : names) {
            styles.removeByName(name);
        }
    }
}
