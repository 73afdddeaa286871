package org.snugsheet.engine.comparison;

import java.util.List;

/**
 * Several jars combined the usual way, to compare with: weights 1/(s² + τ²) with τ² by R. C. Paule and J. Mandel
 * (Consensus values and weighting factors, Journal of Research of the National Bureau of Standards 87 (1982), 377–385), and
 * the standard error of Hartung, Knapp, Sidik and Jonkman with m − 1 degrees of freedom.
 */
final class PauleMandel {

    private PauleMandel() {}

    /** The standard deviation τ between jars at which the weighted squares Σ w·(y − μ)² are m − 1; zero if they are less. */
    static double spread(List<Estimate> jars) {
        double low = 0;
        double high = 0;
        for (Estimate jar : jars) {
            for (Estimate other : jars) {
                high = Math.max(high, (jar.value() - other.value()) * (jar.value() - other.value()));
            }
        }
        high *= jars.size();
        if (squares(jars, 0) <= jars.size() - 1) {
            return 0;
        }
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (squares(jars, middle) > jars.size() - 1) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.sqrt(low);
    }

    static Estimate estimate(List<Estimate> jars) {
        double between = spread(jars) * spread(jars);
        double weights = jars.stream().mapToDouble(j -> weight(j, between)).sum();
        double mean = mean(jars, between);
        int more = jars.size() - 1;
        return new Estimate(mean, Math.sqrt(squares(jars, between) / more / weights), more);
    }

    private static double squares(List<Estimate> jars, double between) {
        double mean = mean(jars, between);
        return jars.stream()
                .mapToDouble(j -> weight(j, between) * (j.value() - mean) * (j.value() - mean))
                .sum();
    }

    private static double mean(List<Estimate> jars, double between) {
        double weights = 0;
        double sum = 0;
        for (Estimate jar : jars) {
            weights += weight(jar, between);
            sum += weight(jar, between) * jar.value();
        }
        return sum / weights;
    }

    private static double weight(Estimate jar, double between) {
        return 1 / (jar.standardError() * jar.standardError() + between);
    }
}
