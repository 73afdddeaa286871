package org.snugsheet.engine.clothing;

import org.snugsheet.engine.insulation.Material;
import org.snugsheet.engine.quantity.ThermalResistance;

/**
 * A garment with its published figures.
 *
 * @param name the name, as printed in its source
 * @param insulation the insulation it adds for the whole body, called Iclu in ISO 9920
 * @param source where the figure was published
 * @param provenance whether the source was seen: {@code retrieved} or {@code from memory}
 * @param note other remarks; may be empty
 */
public record Garment(
        String name, ThermalResistance insulation, String source, Material.Provenance provenance, String note) {}
