package org.snugsheet.office.functions.wrap;

import java.util.List;
import org.snugsheet.engine.insulation.Condition;
import org.snugsheet.engine.insulation.Layer;
import org.snugsheet.engine.insulation.Material;
import org.snugsheet.engine.insulation.Materials;
import org.snugsheet.engine.jar.HeatPath;
import org.snugsheet.office.words.Language;

/** The table that WRAP.BETWEEN answers with. */
final class BetweenTable {

    private BetweenTable() {}

    static Object[][] of(DesignCells cells, Language language) {
        HeatPath side = cells.flow().side();
        List<Layer> layers = cells.design().sideWhereItStands().fromInside();
        Object[][] table = new Object[side.resistances().size() + 1][];
        table[0] = language.row(LayerWords.FROM_INSIDE, LayerWords.R_VALUE, LayerWords.INSIDE, LayerWords.OUTSIDE);
        for (int i = 0; i < side.resistances().size(); i++) {
            table[i + 1] = new Object[] {
                name(layers, i, language),
                side.resistances().get(i).squareMeterKelvinsPerWatt(),
                side.faces().get(i).in(cells.scale()),
                side.faces().get(i + 1).in(cells.scale())
            };
        }
        return table;
    }

    private static String name(List<Layer> layers, int row, Language language) {
        if (row == 0) {
            return language.words(LayerWords.FILM_INSIDE);
        }
        return row > layers.size()
                ? language.words(LayerWords.FILM_OUTSIDE)
                : layers.get(row - 1)
                        .material()
                        .map(material -> name(material, language))
                        .orElseGet(() -> language.say(LayerWords.LAYER, row));
    }

    /** A layer that the tub soaks is marked so, even if it was typed as dry. */
    private static String name(Material material, Language language) {
        String name = Materials.nameIn(material, language.locale());
        return material.condition() == Condition.SOAKED
                ? language.say(LayerWords.IN_CONDITION, name, language.words(material.condition()))
                : name;
    }
}
