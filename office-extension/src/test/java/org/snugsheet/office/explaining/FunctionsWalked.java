package org.snugsheet.office.explaining;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.declare.TemperatureOf.Matter;
import org.snugsheet.office.functions.Families;
import org.snugsheet.office.words.Language;

/**
 * Walks every function that is declared to take a temperature of water, of the surroundings of jars, or of the weather, with each of these at
 * 39, 44, 60 and 95 °C and at −5, −20 and −30 °C, on both scales, as a number and as a text with its unit.
 *
 * <p>An answer that is a number cannot say more. So a caution counts as found where a person asks about the cell: in what
 * <em>Explain</em> says of it. Limits: 43 °C, UK Department for Education, Building Bulletin 87 (2003); −18 °C (0 °F), Child Care
 * Weather Watch (Healthy Child Care Iowa); −27 °C, Canadian Paediatric Society.
 */
public final class FunctionsWalked {

    private static final List<Integer> HOT = List.of(39, 44, 60, 95);
    private static final List<Integer> COLD = List.of(-5, -20, -30);
    private static final double SCHOOL_LIMIT = 43;
    private static final double FROSTBITE = -18;
    private static final double INDOORS = -27;

    private final List<String> unsaid = new ArrayList<>();
    private int walked;

    private FunctionsWalked() {}

    /**
     * Walks them.
     *
     * @return what is not said though it should be, or said though nothing can hurt; empty if all is well
     */
    public static List<String> unsaid() {
        FunctionsWalked walk = new FunctionsWalked();
        for (FunctionDeclaration function : Families.functions()) {
            for (int at = 0; at < function.arguments().size(); at++) {
                for (Matter matter : Matter.values()) {
                    if (matter != Matter.ANYTHING
                            && function.arguments().get(at).asksFor(matter)) {
                        walk.argument(function, at, matter);
                    }
                }
            }
        }
        if (walk.walked < 2000) {
            walk.unsaid.add("calls walked: " + walk.walked);
        }
        return walk.unsaid;
    }

    private void argument(FunctionDeclaration function, int at, Matter matter) {
        for (String scale : List.of("C", "F")) {
            for (boolean asText : new boolean[] {false, true}) {
                for (int celsius : matter == Matter.WEATHER ? List.<Integer>of() : HOT) {
                    String said = said(function, at, matter, typed(celsius, scale, asText), scale);
                    check(function, at, celsius, said, said.startsWith("Too hot for pupils"), celsius > SCHOOL_LIMIT);
                }
                boolean outdoors = matter == Matter.WEATHER || matter == Matter.SURROUNDINGS;
                for (int celsius : outdoors ? COLD : List.<Integer>of()) {
                    String said = said(function, at, matter, typed(celsius, scale, asText), scale);
                    boolean risk = said.contains("Risk of frostbite for children") || said.contains("is at risk");
                    boolean indoors = said.contains("Stay indoors") || said.contains("they stay in");
                    check(function, at, celsius, said, risk || indoors, celsius <= FROSTBITE);
                    check(function, at, celsius, said, indoors || celsius > INDOORS, true);
                    check(function, at, celsius, said, matter != Matter.WEATHER || said.contains("feels like"), true);
                }
            }
        }
    }

    private void check(FunctionDeclaration function, int at, int celsius, String said, boolean found, boolean wanted) {
        walked++;
        if (found != wanted) {
            unsaid.add(function.name() + " " + function.arguments().get(at).name() + " " + celsius + " °C: “" + said
                    + "”");
        }
    }

    private static String said(FunctionDeclaration function, int at, Matter matter, Object typed, String scale) {
        List<ArgumentValue> givens = leftOut(function);
        for (int i = 0; i < givens.size(); i++) {
            String name = function.arguments().get(i).name();
            if (i == at) {
                givens.set(i, ArgumentValue.of("A1", cells(matter, typed), matter != Matter.SHEET, Optional.empty()));
            } else if (name.equals("scale")) {
                givens.set(i, ArgumentValue.of(scale, new Object[][] {{scale}}, true, Optional.empty()));
            }
        }
        return WhatCanHurt.in(function, givens, Language.ENGLISH).orElse("");
    }

    private static Object[][] cells(Matter matter, Object typed) {
        return matter == Matter.SHEET ? new Object[][] {{"min", "wool"}, {0.0, typed}} : new Object[][] {{typed}};
    }

    private static Object typed(int celsius, String scale, boolean asText) {
        double degrees = scale.equals("F") ? celsius * 1.8 + 32 : celsius;
        return asText ? degrees + " °" + scale : (Object) degrees;
    }

    static FunctionDeclaration function(String name) {
        return Families.functions().stream()
                .filter(function -> function.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    static List<ArgumentValue> leftOut(FunctionDeclaration function) {
        return new ArrayList<>(Collections.nCopies(function.arguments().size(), ArgumentValue.LEFT_OUT));
    }
}
