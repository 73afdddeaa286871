package org.snugsheet.engine.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.quantity.Temperature;

class FluidTest {

    /** The textbook’s air is at 0.1 MPa, where ν and a are larger than at sea level by this. */
    private static final double THINNER = 1.01325;

    /**
     * Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, Table A.4, air at 0.1 MPa; from memory. Half of its last
     * digit is up to 0.3 % of a value; its viscosity at 350 K is 0.4 % over that of the standard atmosphere; its specific heat, which is taken for constant here, rises by 0.2 % to 350 K.
     */
    @ParameterizedTest
    @CsvSource({
        "250, 11.44e-6, 22.3e-3, 15.9e-6, 0.720",
        "300, 15.89e-6, 26.3e-3, 22.5e-6, 0.707",
        "350, 20.92e-6, 30.0e-3, 29.9e-6, 0.700"
    })
    void airIsAsTheTextbookSays(double kelvins, double viscosity, double conductivity, double diff, double prandtl) {
        Fluid air = Fluid.air(kelvins);
        assertEquals(viscosity, THINNER * air.kinematicViscosity(), 0.005 * viscosity);
        assertEquals(conductivity, air.conductivity(), 0.003 * conductivity);
        assertEquals(diff, THINNER * air.diffusivity(), 0.006 * diff);
        assertEquals(prandtl, air.prandtl(), 0.0075 * prandtl);
    }

    @Test
    void waterAtItsDensestHasNoBuoyancy() {
        // 3.98 °C is where water is densest (Kell 1975); as much warmer as colder, it hardly differs.
        double across = Fluid.buoyancyOfWater(new Temperature(2.98), new Temperature(4.98));
        double above = Fluid.buoyancyOfWater(new Temperature(23), new Temperature(25));
        assertEquals(0, across, above / 100);
    }
}
