package org.snugsheet.engine.water;

import java.util.ArrayList;
import java.util.List;

/**
 * The equations of IAPWS SR6-08(2011) for liquid water at 0.1 MPa, and their coefficients (Tables 1, 2, 4 and 5
 * there; the last two, of viscosity and conductivity, typed in from memory and checked against IAPWS values).
 *
 * <p>They are valid from 253.15 K to 383.15 K. With {@code τ = T/10 K}, {@code α = 10 K/(593 K − T)} and
 * {@code β = 10 K/(T − 232 K)} the Gibbs energy is {@code g = R·10 K·(c₁ + c₂·τ + c₃·τ·ln τ + Σ aᵢ·α^nᵢ + Σ bᵢ·β^mᵢ)}, and
 * the specific volume is a sum of the same form.
 */
final class LiquidWater {

    /** Specific gas constant of water, J/(kg·K). */
    private static final double GAS_CONSTANT = 461.51805;

    private static final double REDUCING_TEMPERATURE = 10;
    private static final double PRESSURE = 100_000;

    private static final double C1 = -2.452093414e2;
    private static final double C3 = -8.983025854;
    private static final List<Term> GIBBS_ALPHA =
            List.of(new Term(-1.661470539e5, 4), new Term(2.708781640e6, 5), new Term(-1.557191544e8, 7));
    private static final List<Term> GIBBS_BETA = List.of(
            new Term(-8.237426256e-1, 2),
            new Term(1.908956353, 3),
            new Term(-2.017597384, 4),
            new Term(8.546361348e-1, 5));

    private static final double VOLUME_CONSTANT = 1.93763157e-2;
    private static final List<Term> VOLUME_ALPHA = List.of(
            new Term(6.74458446e3, 4),
            new Term(-2.22521604e5, 5),
            new Term(1.00231247e8, 7),
            new Term(-1.63552118e9, 8),
            new Term(8.32299658e9, 9));
    private static final List<Term> VOLUME_BETA = List.of(
            new Term(5.78545292e-3, 1),
            new Term(-1.53195665e-2, 2),
            new Term(3.11337859e-2, 3),
            new Term(-4.23546241e-2, 4),
            new Term(3.38713507e-2, 5),
            new Term(-1.19946761e-2, 6));

    private static final int HIGHEST_POWER = 9;

    private static final double TRANSPORT_TEMPERATURE = 300;
    private static final List<Power> VISCOSITY = List.of(
            new Power(280.68, -1.9), new Power(511.45, -7.7), new Power(61.131, -19.6), new Power(0.45903, -40.0));
    private static final List<Power> CONDUCTIVITY = List.of(
            new Power(0.80201, -0.32),
            new Power(-0.25992, -5.7),
            new Power(0.10024, -12.0),
            new Power(-0.032005, -15.0));

    private LiquidWater() {}

    private record Power(double coefficient, double power) {

        static double sum(List<Power> powers, double kelvins) {
            double sum = 0;
            for (Power each : powers) {
                sum += each.coefficient * Math.pow(kelvins / TRANSPORT_TEMPERATURE, each.power);
            }
            return sum;
        }
    }

    private record Term(double coefficient, int power) {

        double value(double base) {
            return coefficient * Math.pow(base, power);
        }
    }

    /** What volume and enthalpy are summed up from. */
    static WaterSums sums() {
        List<WaterSums.Row> rows = new ArrayList<>();
        for (int power = 1; power <= HIGHEST_POWER; power++) {
            rows.add(new WaterSums.Row(
                    power,
                    coefficient(VOLUME_ALPHA, power),
                    coefficient(VOLUME_BETA, power),
                    coefficient(GIBBS_ALPHA, power),
                    coefficient(GIBBS_BETA, power)));
        }
        return new WaterSums(VOLUME_CONSTANT, C1, C3, rows);
    }

    private static double coefficient(List<Term> terms, int power) {
        return terms.stream()
                .filter(term -> term.power() == power)
                .mapToDouble(Term::coefficient)
                .sum();
    }

    /** kg/m³ at a temperature in kelvins. */
    static double density(double kelvins) {
        double alpha = alpha(kelvins);
        double beta = beta(kelvins);
        double sum = VOLUME_CONSTANT;
        for (Term term : VOLUME_ALPHA) {
            sum += term.value(alpha);
        }
        for (Term term : VOLUME_BETA) {
            sum += term.value(beta);
        }
        return PRESSURE / (GAS_CONSTANT * REDUCING_TEMPERATURE * sum);
    }

    /** J/(kg·K) at a temperature in kelvins: {@code c_p = −T·∂²g/∂T²}. */
    static double specificHeat(double kelvins) {
        double alpha = alpha(kelvins);
        double beta = beta(kelvins);
        double sum = 0;
        for (Term term : GIBBS_ALPHA) {
            sum += term.power() * (term.power() + 1) * term.value(alpha) * alpha * alpha;
        }
        for (Term term : GIBBS_BETA) {
            sum += term.power() * (term.power() + 1) * term.value(beta) * beta * beta;
        }
        return -GAS_CONSTANT * (C3 + kelvins / REDUCING_TEMPERATURE * sum);
    }

    /**
     * J/kg at a temperature in kelvins: {@code h = g − T·∂g/∂T}, in which c₂ and the logarithm cancel. Its zero is arbitrary;
     * only differences are used.
     */
    static double enthalpy(double kelvins) {
        double tau = kelvins / REDUCING_TEMPERATURE;
        double alpha = alpha(kelvins);
        double beta = beta(kelvins);
        double sum = C1 - C3 * tau;
        for (Term term : GIBBS_ALPHA) {
            sum += term.value(alpha) * (1 - term.power() * tau * alpha);
        }
        for (Term term : GIBBS_BETA) {
            sum += term.value(beta) * (1 + term.power() * tau * beta);
        }
        return GAS_CONSTANT * REDUCING_TEMPERATURE * sum;
    }

    /** Pa·s at a temperature in kelvins: equation (8) of the release. */
    static double viscosity(double kelvins) {
        return 1e-6 * Power.sum(VISCOSITY, kelvins);
    }

    /** W/(m·K) at a temperature in kelvins: equation (9) of the release. */
    static double conductivity(double kelvins) {
        return Power.sum(CONDUCTIVITY, kelvins);
    }

    private static double alpha(double kelvins) {
        return REDUCING_TEMPERATURE / (593 - kelvins);
    }

    private static double beta(double kelvins) {
        return REDUCING_TEMPERATURE / (kelvins - 232);
    }
}
