package org.snugsheet.engine.jar;

import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;

/** The film on a surface, whose resistance depends on the temperatures on both of its sides. */
@FunctionalInterface
interface Film {

    ThermalResistance between(Temperature surface, Temperature far);
}
