package org.snugsheet.engine.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The correlations against what textbooks and the library <i>ht</i> (PyPI, MIT licence) print for the same numbers. */
class ConvectionTest {

    @Test
    void aVerticalPlateAsInTheExampleOfTheTextbook() {
        // Bergman, Lavine, Incropera and DeWitt, Introduction to Heat Transfer, 6th ed., Example 9.2, prints Nu = 147;
        // the
        // documentation of ht, Nu_vertical_plate_Churchill(0.69, 2.63E9), prints the rest.
        assertEquals(147.16185223770603, Convection.verticalPlate(0.69, 2.63e9), 1e-9);
    }

    @Test
    void anUprightCylinderAsInTheReferenceLibrary() {
        // Documentation of ht, Nu_vertical_cylinder_Popiel_Churchill(0.7, 1E10, 2.5, 1).
        assertEquals(228.8979005514989, Convection.uprightCylinder(0.7, 1e10, 2.5), 1e-9);
    }

    @Test
    void aLyingPlateAsInTheReferenceLibrary() {
        // Documentation of ht, Nu_horizontal_plate_McAdams(5.54, 3.21e8), with and against buoyancy; from memory.
        double rayleigh = 5.54 * 3.21e8;
        assertEquals(181.73121274384457, Convection.free(rayleigh), 1e-9);
        assertEquals(55.44564799362829, Convection.trapped(rayleigh), 1e-9);
    }

    @Test
    void theTwoRegimesOfALyingPlateMeetWithoutAJump() {
        double meeting = Math.pow(0.54 / 0.15, 12);
        assertEquals(Convection.free(meeting * (1 - 1e-9)), Convection.free(meeting * (1 + 1e-9)), 1e-6);
    }

    @Test
    void aStreamAcrossACylinderAsInTheExampleOfTheTextbook() {
        // Bergman and others, as above, Example 7.3 (7.4 in other editions), prints Nu = 40.6; the documentation of ht,
        // Nu_cylinder_Churchill_Bernstein(6071, 0.7), the rest; from memory.
        assertEquals(40.63708594124974, Convection.acrossCylinder(6071, 0.7), 1e-9);
    }

    @Test
    void aSlimCylinderLosesMoreThanAPlateAndABroadOneAsMuch() {
        double plate = Convection.verticalPlate(0.71, 1e6);
        assertTrue(Convection.uprightCylinder(0.71, 1e6, 5) > plate);
        assertEquals(plate, Convection.uprightCylinder(0.71, 1e6, 1e-6), plate * 1e-4);
    }

    @Test
    void aFluidAtRestStillConducts() {
        assertEquals(0.825 * 0.825, Convection.uprightCylinder(0.71, 0, 1), 1e-12);
    }
}
