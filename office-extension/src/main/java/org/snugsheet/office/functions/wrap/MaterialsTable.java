package org.snugsheet.office.functions.wrap;

import java.util.List;
import org.snugsheet.engine.insulation.Material;
import org.snugsheet.engine.insulation.Materials;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.office.functions.shared.FigureWords;
import org.snugsheet.office.words.Language;

/** The table that WRAP.MATERIALS answers with. */
final class MaterialsTable {

    private MaterialsTable() {}

    static Object[][] all(Language language) {
        List<Material> all = Materials.all();
        Object[][] table = new Object[all.size() + 1][];
        table[0] = language.row(
                LayerWords.LISTED_MATERIAL,
                LayerWords.CONDITION,
                FigureWords.LOW,
                FigureWords.TYPICAL,
                FigureWords.HIGH,
                LayerWords.USUAL_LAYER,
                FigureWords.FIGURES,
                FigureWords.SOURCE);
        for (int i = 0; i < all.size(); i++) {
            Material each = all.get(i);
            table[i + 1] = new Object[] {
                Materials.nameIn(each, language.locale()),
                language.words(each.condition()),
                each.low().wattsPerMeterKelvin(),
                each.typical().wattsPerMeterKelvin(),
                each.high().wattsPerMeterKelvin(),
                each.layer().map(MaterialsTable::millimeters).orElse(""),
                language.words(each.provenance()),
                each.source()
            };
        }
        return table;
    }

    private static Object millimeters(Length layer) {
        return Unit.MILLIMETER.from(layer.meters(), Unit.METER);
    }
}
