package org.snugsheet.engine.solver;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * One set of the NIST Statistical Reference Datasets for nonlinear regression, read from the test resources.
 *
 * @param name the name NIST gave it
 * @param starts the two starting points that NIST prescribes
 * @param certified the certified parameters
 * @param deviations the certified standard deviations of the parameters
 * @param sumOfSquares the certified residual sum of squares
 * @param deviation the certified residual standard deviation
 * @param degreesOfFreedom observations less parameters
 * @param observed y
 * @param predictors x, one column for each predictor
 */
@SuppressWarnings("ArrayRecordComponent") // read once, compared never
record ReferenceSet(
        String name,
        double[][] starts,
        double[] certified,
        double[] deviations,
        double sumOfSquares,
        double deviation,
        int degreesOfFreedom,
        double[] observed,
        double[][] predictors) {

    static ReferenceSet read(String name) {
        List<double[]> parameters = new ArrayList<>();
        List<double[]> observations = new ArrayList<>();
        double[] summary = new double[3];
        for (String line : lines("nist-strd/" + name + ".txt")) {
            String[] words = line.split(" ");
            switch (words[0]) {
                case "#", "data" -> {}
                case "parameter" -> parameters.add(numbers(words, 2));
                case "residual_sum_of_squares" -> summary[0] = Double.parseDouble(words[1]);
                case "residual_standard_deviation" -> summary[1] = Double.parseDouble(words[1]);
                case "degrees_of_freedom" -> summary[2] = Double.parseDouble(words[1]);
                default -> observations.add(numbers(words, 0));
            }
        }
        double[][] starts = {column(parameters, 0), column(parameters, 1)};
        double[][] predictors = new double[observations.get(0).length - 1][];
        for (int k = 0; k < predictors.length; k++) {
            predictors[k] = column(observations, k + 1);
        }
        return new ReferenceSet(
                name,
                starts,
                column(parameters, 2),
                column(parameters, 3),
                summary[0],
                summary[1],
                (int) summary[2],
                column(observations, 0),
                predictors);
    }

    /** What the model gives: y, but in Nelson, as its file says, log(y). */
    double[] response() {
        return name.equals("Nelson") ? Arrays.stream(observed).map(Math::log).toArray() : observed;
    }

    @Override
    public String toString() {
        return name;
    }

    private static double[] numbers(String[] words, int from) {
        double[] numbers = new double[words.length - from];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = Double.parseDouble(words[from + i]);
        }
        return numbers;
    }

    private static double[] column(List<double[]> rows, int column) {
        return rows.stream().mapToDouble(row -> row[column]).toArray();
    }

    private static List<String> lines(String resource) {
        try (InputStream in = Objects.requireNonNull(ReferenceSet.class.getResourceAsStream(resource), resource);
                BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return reader.lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
