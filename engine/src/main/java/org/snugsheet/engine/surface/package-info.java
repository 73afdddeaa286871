/**
 * Surface films: the thin layer of air or water that heat must cross between a wrap and its surroundings.
 *
 * <p>A {@link org.snugsheet.engine.surface.Ambient} is still air, wind, still water, stirred water, plain contact, or a
 * resistance known in advance. Given a {@link org.snugsheet.engine.surface.Face} and two temperatures it gives the surface
 * resistance. The correlations are in {@link org.snugsheet.engine.surface.Convection} and
 * {@link org.snugsheet.engine.surface.Radiation}, each with its source; the properties of air and water in
 * {@link org.snugsheet.engine.surface.Fluid}; the standard’s fixed values in
 * {@code StandardSurface}.
 *
 * <p>A new place is a new record beside {@link org.snugsheet.engine.surface.StillAir}, and a word for it in {@code
 * Ambient.parse}. This package uses {@link org.snugsheet.engine}, {@link org.snugsheet.engine.quantity} and {@link
 * org.snugsheet.engine.water}.
 */
package org.snugsheet.engine.surface;
