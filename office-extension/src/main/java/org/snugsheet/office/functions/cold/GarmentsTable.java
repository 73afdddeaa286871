package org.snugsheet.office.functions.cold;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.clothing.Garment;
import org.snugsheet.engine.clothing.Garments;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.office.functions.shared.FigureWords;
import org.snugsheet.office.words.Language;

/** The table that COLD.GARMENTS answers with. */
final class GarmentsTable {

    private GarmentsTable() {}

    static Object[][] all(Language language) {
        List<Object[]> rows = new ArrayList<>();
        rows.add(new Object[] {
            language.words(ClothingWords.GARMENT),
            "clo",
            language.words(FigureWords.FIGURES),
            language.words(FigureWords.SOURCE)
        });
        for (Garment garment : Garments.all()) {
            rows.add(new Object[] {
                Garments.nameIn(garment, language.locale()),
                garment.insulation().in(Unit.CLO),
                language.words(garment.provenance()),
                garment.source()
            });
        }
        return rows.toArray(Object[][]::new);
    }
}
