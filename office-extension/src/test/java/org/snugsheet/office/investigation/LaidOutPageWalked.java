package org.snugsheet.office.investigation;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.uno.Uno;

/**
 * Types hot water and cold surroundings into a sheet that was laid out, and looks for the cautions. Limits: 43 °C, UK Department for
 * Education, Building Bulletin 87 (2003); −18 °C (0 °F), Child Care Weather Watch (Healthy Child Care Iowa). The readings follow
 * Newton’s law towards 3 °C.
 */
public final class LaidOutPageWalked {

    private static final int[] STARTS = {39, 44, 60, 85, 95};
    private static final int[] COLD = {-5, -20, -30};

    /** The scale of the page, the name of the jar, and the scale it is typed on. */
    private static final String[][] WAYS = {
        {"C", "sock", "C"},
        {"C", "sock", "F"},
        {"C", "sock °F", "F"},
        {"F", "sock", "F"},
        {"F", "sock", "C"},
        {"F", "sock (C)", "C"}
    };

    private final CalcDocument sheet;
    private final List<String> unsaid;
    private final int head;
    private final int jar;
    private final int warmest;
    private final int results;

    private LaidOutPageWalked(CalcDocument sheet, List<String> unsaid) {
        this.sheet = sheet;
        this.unsaid = unsaid;
        this.head = sheet.rowOf("minutes", "Investigation.A1");
        this.jar = sheet.rowOf("sock", "Investigation.A1");
        this.warmest = sheet.rowOf(InvestigationWords.START_LABEL.english(), "Investigation.A1");
        this.results = sheet.rowOf(InvestigationWords.RESULTS.english(), "Investigation.A1") + 2;
    }

    /**
     * Walks it, on both scales, typed as numbers and as text.
     *
     * @param office the office to do it in
     * @return what is not said though it should be, or said though nothing can hurt; empty if all is well
     */
    public static List<String> unsaid(Office office) {
        List<String> unsaid = new ArrayList<>();
        for (String[] way : WAYS) {
            for (boolean asText : new boolean[] {false, true}) {
                // A number bears no scale, so it is on that of its jar.
                if (asText || way[0].equals(way[2]) || way[1].length() > "sock".length()) {
                    try (CalcDocument sheet = office.newDocument()) {
                        layOut(office, sheet, way[0]);
                        LaidOutPageWalked page = new LaidOutPageWalked(sheet, unsaid);
                        page.hot(way, asText);
                        page.cold(way, asText);
                    }
                }
            }
        }
        return unsaid;
    }

    private void hot(String[] way, boolean asText) {
        sheet.text("Investigation.A" + jar, way[1]);
        // Beside it a jar that is cool enough: its 41 says nothing of the other.
        type("B" + (head + 1), 41, way[0], false);
        for (int start : STARTS) {
            for (int i = 0; i < 5; i++) {
                type("C" + (head + 1 + i), 3 + (start - 3) * Math.exp(-0.03 * 3 * i), way[2], asText);
            }
            sheet.calculateAll();
            String where = String.join(" ", way) + " " + start + ": ";
            String said = sheet.at("Investigation.B" + warmest).text();
            check(said.startsWith("Too hot for pupils") == start > 43, where + said);
            String found = sheet.at("Investigation.C" + jar).text();
            check(found.contains("too hot for pupils") == start > 43, where + found);
            if (start < 80) {
                check(sheet.at("Investigation.I" + (results + 1)).text().equals("OK"), where + "held back");
                double rate = sheet.at("Investigation.C" + (results + 1)).number();
                check(Math.abs(rate - 0.03) < 0.005, where + rate);
            }
        }
    }

    private void cold(String[] way, boolean asText) {
        String around = "A" + sheet.rowOf(surroundingsLabel(way[0]), "Investigation.B1");
        for (int celsius : COLD) {
            for (int i = 0; i < 5; i++) {
                type("C" + (head + 1 + i), celsius + (39 - celsius) * Math.exp(-0.03 * 3 * i), way[2], asText);
            }
            type(around, celsius, way[0], asText);
            String found = sheet.calculateAll().at("Investigation.C" + jar).text();
            check(
                    found.contains("can freeze bare skin") == celsius <= -18,
                    String.join(" ", way) + " around " + celsius + ": " + found);
        }
    }

    private static String surroundingsLabel(String scale) {
        return InvestigationWords.SURROUNDINGS_LABEL.english().replace("{0}", "°" + scale);
    }

    private void check(boolean well, String said) {
        if (!well) {
            unsaid.add(said);
        }
    }

    static void layOut(Office office, CalcDocument sheet, String scale) {
        Menu.choose(
                office,
                sheet,
                MenuItem.LAY_OUT,
                Menu.QUIET,
                Uno.named("Materials", "bare;sock"),
                Uno.named("Scale", scale),
                Uno.named("Surroundings", scale.equals("F") ? "37.4" : "3"),
                Uno.named("Minutes", 30));
    }

    private void type(String cell, double celsius, String scale, boolean asText) {
        double degrees = Math.rint((scale.equals("F") ? celsius * 1.8 + 32 : celsius) * 10) / 10;
        if (asText) {
            sheet.text("Investigation." + cell, degrees + " °" + scale);
        } else {
            sheet.number("Investigation." + cell, degrees);
        }
    }
}
