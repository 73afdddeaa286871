package org.snugsheet.office.functions;

import java.util.List;
import org.snugsheet.engine.insulation.Layer;
import org.snugsheet.engine.insulation.Material;
import org.snugsheet.engine.jar.Path;

/** The table that WRAP.BETWEEN answers with. */
final class BetweenTable {

    private BetweenTable() {}

    static Object[][] of(DesignCells cells) {
        Path side = cells.flow().side();
        List<Layer> layers = cells.design().side().fromInside();
        Object[][] table = new Object[side.resistances().size() + 1][];
        table[0] = new Object[] {"from inside to outside", "R-value, m²·K/W", "inside", "outside"};
        for (int i = 0; i < side.resistances().size(); i++) {
            table[i + 1] = new Object[] {
                name(layers, i),
                side.resistances().get(i).squareMetreKelvinsPerWatt(),
                side.faces().get(i).in(cells.scale()),
                side.faces().get(i + 1).in(cells.scale())
            };
        }
        return table;
    }

    private static String name(List<Layer> layers, int row) {
        if (row == 0) {
            return "film of water inside";
        }
        return row > layers.size()
                ? "film outside"
                : layers.get(row - 1).material().map(Material::name).orElse("layer " + row);
    }
}
