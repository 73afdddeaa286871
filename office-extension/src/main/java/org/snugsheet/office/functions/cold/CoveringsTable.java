package org.snugsheet.office.functions.cold;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.clothing.Covering;
import org.snugsheet.engine.insulation.Materials;
import org.snugsheet.office.functions.shared.FigureWords;
import org.snugsheet.office.words.Language;

/** The table that COLD.COVERINGS answers with. */
final class CoveringsTable {

    private CoveringsTable() {}

    static Object[][] all(Language language) {
        List<Object[]> rows = new ArrayList<>();
        rows.add(language.row(
                ClothingWords.COVERING,
                FigureWords.LOW,
                FigureWords.TYPICAL,
                FigureWords.HIGH,
                FigureWords.FIGURES,
                FigureWords.SOURCE));
        for (Covering covering : Covering.all()) {
            rows.add(new Object[] {
                Materials.nameIn(covering.material(), language.locale()),
                covering.material().low().wattsPerMeterKelvin(),
                covering.material().typical().wattsPerMeterKelvin(),
                covering.material().high().wattsPerMeterKelvin(),
                language.words(covering.material().provenance()),
                covering.material().source()
            });
        }
        return rows.toArray(Object[][]::new);
    }
}
