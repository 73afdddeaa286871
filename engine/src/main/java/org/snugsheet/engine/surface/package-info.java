/**
 * What clings to a surface: the thin film of air or water that heat must cross between a wrap and the place it stands in.
 *
 * <p>A {@link org.snugsheet.engine.surface.Ambient} is still air, wind, still water, stirred water, plain contact, or a
 * resistance known beforehand. Given a {@link org.snugsheet.engine.surface.Face} and two temperatures it tells the surface
 * resistance. The correlations stand in {@link org.snugsheet.engine.surface.Convection} and {@link
 * org.snugsheet.engine.surface.Radiation}, each with its source; what air and water are like in {@link
 * org.snugsheet.engine.surface.Fluid}; the standard’s fixed values in {@link
 * org.snugsheet.engine.surface.StandardSurface}.
 *
 * <p>A new place is a new record beside {@link org.snugsheet.engine.surface.StillAir}, and a word for it in {@code
 * Ambient.parse}. This package uses {@link org.snugsheet.engine}, {@link org.snugsheet.engine.quantity} and {@link
 * org.snugsheet.engine.water}.
 */
package org.snugsheet.engine.surface;
