package org.snugsheet.engine.clothing;

import org.snugsheet.engine.insulation.Material;
import org.snugsheet.engine.quantity.ThermalResistance;

/**
 * A garment, with what is published about it.
 *
 * @param name the name, as its source prints it
 * @param insulation what it adds for the whole body, Iclu in the words of ISO 9920
 * @param source where the figure was published
 * @param provenance how far the source was seen: {@code retrieved} or {@code from memory}
 * @param note what else is worth knowing; may be empty
 */
public record Garment(
        String name, ThermalResistance insulation, String source, Material.Provenance provenance, String note) {}
