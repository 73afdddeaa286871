package org.snugsheet.office.sharing.living;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Invented jars of one class, each wrapped in something: exponentials with noise, rounded to the marks of the thermometers, with gaps. It shares
 * no code with the product.
 */
record InventedClass(
        List<Double> minutes, List<List<Object>> jars, List<String> names, Object around, double mark, String scale) {

    private static final String[] WRAPS = {"bare", "socks", "newspaper", "fleece", "leaves", "hay", "felt", "wool"};

    /** The second jar’s readings are the same forward and backward: its constant is exactly zero, which nothing may be divided by. */
    static InventedClass withJarThatStandsStill() {
        List<Object> still = List.of(40.0, 39.5, 40.0);
        return new InventedClass(
                List.of(0.0, 10.0, 20.0),
                List.of(List.of(40.0, 36.0, 33.0), still, List.of(40.0, 38.0, 37.0)),
                List.of("bare", "fleece", "socks"),
                0.0,
                0.5,
                "C");
    }

    static InventedClass of(Random random) {
        boolean fahrenheit = random.nextInt(3) == 0;
        int n = 4 + random.nextInt(11);
        double step = new double[] {2, 3, 5, 10}[random.nextInt(4)];
        List<Double> minutes = new ArrayList<>();
        double first = random.nextInt(4) == 0 ? step : 0;
        for (int i = 0; i < n; i++) {
            minutes.add(first + i * step);
        }
        double mark = new double[] {0.1, 0.5, 1, 2}[random.nextInt(4)];
        double surroundings = Math.round(-5 + 20 * random.nextDouble());
        double start = 35 + 15 * random.nextDouble();
        double noise = random.nextInt(3) == 0 ? 0.02 : 0.1 + 0.5 * random.nextDouble();
        double lag = random.nextInt(4) == 0 ? 0.8 : 0;
        boolean ice = random.nextInt(6) == 0;
        double around = ice ? 0 : surroundings;
        int count = 2 + random.nextInt(4);
        List<List<Object>> jars = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (int jar = 0; jar < count; jar++) {
            double rate = 0.004 + 0.04 * random.nextDouble() * random.nextDouble();
            List<Object> readings = new ArrayList<>();
            double error = 0;
            for (int i = 0; i < n; i++) {
                error = lag * error + noise * random.nextGaussian();
                double celsius = around + (start - around) * Math.exp(-rate * minutes.get(i)) + error;
                double shown = fahrenheit ? celsius * 9 / 5 + 32 : celsius;
                double read = Math.round(shown / mark) * mark;
                boolean gap = random.nextInt(12) == 0;
                readings.add(gap ? (random.nextBoolean() ? "" : "-") : typed(read, random, fahrenheit));
            }
            jars.add(readings);
            names.add(WRAPS[random.nextInt(4) == 0 ? 0 : jar % WRAPS.length]);
        }
        Object cold = ice ? "melting ice" : (Object) (fahrenheit ? around * 9 / 5 + 32 : around);
        return new InventedClass(minutes, jars, names, cold, mark, fahrenheit ? "F" : "C");
    }

    /** Now and then somebody types a comma, or the sign of the scale. */
    private static Object typed(double read, Random random, boolean fahrenheit) {
        String plain = String.valueOf(Math.round(read * 10) / 10.0);
        return switch (random.nextInt(30)) {
            case 0 -> plain.replace('.', ',');
            case 1 -> plain + (fahrenheit ? " °F" : " °C");
            default -> Double.parseDouble(plain);
        };
    }
}
