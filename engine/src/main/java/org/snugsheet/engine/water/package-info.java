/**
 * Liquid water under the air’s pressure: its density, its specific heat, the heat it gives off between two temperatures.
 *
 * <p>{@link org.snugsheet.engine.water.Water} covers 0 °C to 100 °C and refuses ice and steam. The figures are those of IAPWS
 * SR6-08(2011), Revised Supplementary Release on Properties of Liquid Water at 0.1 MPa
 * (http://iapws.org/relguide/LiquidWater.html), which holds from 253.15 K to 383.15 K; one atmosphere, 0.101325 MPa, makes
 * the water denser by less than 0.001 kg/m³. Tap water, with its air and salts, differs from pure water by less than any
 * classroom measurement shows (common practice, no source).
 *
 * <p>This package uses {@link org.snugsheet.engine} and {@link org.snugsheet.engine.quantity}, nothing else.
 */
package org.snugsheet.engine.water;
