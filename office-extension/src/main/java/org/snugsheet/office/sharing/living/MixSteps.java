package org.snugsheet.office.sharing.living;

import java.util.List;
import java.util.Optional;
import org.snugsheet.engine.lesson.Caution;
import org.snugsheet.engine.lesson.SafeStart;
import org.snugsheet.engine.water.WaterSums;
import org.snugsheet.office.functions.plan.MixWords;
import org.snugsheet.office.sharing.living.Translator.Table;
import org.snugsheet.office.words.Language;

/**
 * The steps of PLAN.MIX and its two amounts, after {@code org.snugsheet.engine.lesson.Taps}: the heat that the hot water gives off is what the
 * cold water takes up. Heat and volume are the sums of powers of {@link WaterSums}; what both sides have in common cancels.
 */
final class MixSteps {

    private static final int SCALE = 4;
    private static final WaterSums SUMS = WaterSums.ofLiquidWater();

    private final Desk desk;
    private final Language language;
    private final String scale;

    private MixSteps(Desk desk, String scale) {
        this.desk = desk;
        this.language = desk.language();
        this.scale = scale.isEmpty() ? "\"\"" : scale;
    }

    /** The table for a call; empty if an argument is missing or is more than one cell. */
    static Optional<Table> of(Desk desk, CallSteps.Given call) {
        for (int i = 0; i < SCALE; i++) {
            if (call.at(i).isEmpty()
                    || desk.cells(call.at(i), 1)
                            .filter(cells -> cells.size() == 1)
                            .isEmpty()) {
                return Optional.empty();
            }
        }
        String key = "mix " + String.join(";", call.living());
        Block mix = desk.block(key, () -> new MixSteps(desk, call.at(SCALE)).mix(call));
        return Optional.of(
                switch (call.name()) {
                    case "PLAN.MIX.HOT" -> mix.table("hot");
                    case "PLAN.MIX.COLD" -> mix.table("cold");
                    default -> mix.table("which", 2);
                });
    }

    private String words(org.snugsheet.engine.Phrase words) {
        return language.words(words);
    }

    private String cell(String argument) {
        return desk.cells(argument, 1).orElseThrow().get(0);
    }

    private Block mix(CallSteps.Given call) {
        Block sums = desk.block("water", this::sums);
        Block hot = water(sums, call.at(0));
        Block cold = water(sums, call.at(1));
        Block start = water(sums, call.at(2));
        Block mix = new Block(
                desk.page(), desk.title(LivingWords.MIX_TITLE, Desk.shown(call.at(2))), tableRows(hot).length);
        mix.known("warm", hot.at("celsius")).known("cool", cold.at("celsius")).known("wanted", start.at("celsius"));
        mix.later("trouble", words(LivingWords.TROUBLE));
        TypedSteps.value(mix, "volume", LivingWords.TYPED, LivingWords.MILLILITERS, cell(call.at(3)), language);
        mix.write(
                "trouble",
                "="
                        + FitSteps.reason(new String[][] {
                            {
                                "NOT(AND(ISNUMBER([warm]);ISNUMBER([cool]);ISNUMBER([wanted]);ISNUMBER([volume])))",
                                words(LivingWords.MIX_UNREADABLE)
                            },
                            {"OR([volumeUnit]<>\"\";[volume]<=0)", words(LivingWords.MIX_UNREADABLE)},
                            {"[wanted]>" + SafeStart.SCHOOL_LIMIT.celsius(), words(LivingWords.MIX_TOO_HOT)},
                            {
                                "OR([cool]<0;[warm]>" + SafeStart.HOTTEST_TAP.celsius()
                                        + ";[cool]>=[wanted];[wanted]>=[warm])",
                                words(LivingWords.MIX_NOT_BETWEEN)
                            }
                        }));
        mix.value(
                "share",
                words(LivingWords.SHARE_OF_HOT),
                "=(" + start.at("heat") + "-" + cold.at("heat") + ")/(" + hot.at("heat") + "-" + cold.at("heat") + ")");
        String all = "=IF([trouble]=\"\";[volume]*";
        mix.value(
                "hot",
                words(LivingWords.HOT_WATER),
                all + "[share]*" + hot.at("room") + "/" + start.at("room") + ";NA())");
        mix.value(
                "cold",
                words(LivingWords.COLD_WATER),
                all + "(1-[share])*" + cold.at("room") + "/" + start.at("room") + ";NA())");
        String[][] rows = tableRows(hot);
        mix.column("which", words(MixWords.WATER), line -> "=IF([trouble]=\"\";" + rows[line][0] + ";NA())");
        mix.column("much", words(LivingWords.ANSWER), line -> "=IF([trouble]=\"\";" + rows[line][1] + ";NA())");
        return mix;
    }

    private String[][] tableRows(Block hot) {
        String caution = Formulas.text(words(MixWords.CAUTION));
        return new String[][] {
            {Formulas.text(words(MixWords.WATER)), Formulas.text(words(MixWords.MILLILITRES))},
            {Formulas.text(words(MixWords.HOT)), "[hot]"},
            {Formulas.text(words(MixWords.COLD)), "[cold]"},
            {
                caution,
                "IF(" + hot.at("celsius") + ">=" + SafeStart.ADULTS_ONLY.celsius() + ";"
                        + Formulas.text(words(Caution.HOT_TAP)) + ";" + Formulas.text(words(Caution.ADULT_POURS)) + ")"
            },
            {caution, Formulas.text(words(Caution.SCHOOL_RULES))}
        };
    }

    /** The coefficients, once for all waters. */
    private Block sums() {
        List<WaterSums.Row> rows = SUMS.rows();
        Block sums = new Block(desk.page(), words(LivingWords.WATER_TITLE), rows.size());
        sums.value("volume", words(LivingWords.VOLUME_CONSTANT), "=" + SUMS.volume());
        sums.value("heat", words(LivingWords.HEAT_CONSTANT), "=" + SUMS.heat());
        sums.value("slope", words(LivingWords.HEAT_SLOPE), "=" + SUMS.heatSlope());
        sums.open("n", words(LivingWords.POWER))
                .open("va", words(LivingWords.VOLUME_ALPHA))
                .open("vb", words(LivingWords.VOLUME_BETA))
                .open("ga", words(LivingWords.HEAT_ALPHA))
                .open("gb", words(LivingWords.HEAT_BETA));
        for (int line = 0; line < rows.size(); line++) {
            WaterSums.Row row = rows.get(line);
            sums.constant("n", line, (double) row.power())
                    .constant("va", line, row.volumeAlpha())
                    .constant("vb", line, row.volumeBeta())
                    .constant("ga", line, row.heatAlpha())
                    .constant("gb", line, row.heatBeta());
        }
        return sums;
    }

    /** How much room a kilogram of one water takes, and how much heat is in it. */
    private Block water(Block sums, String given) {
        return desk.block("water " + given + "|" + scale, () -> {
            Block water = new Block(desk.page(), desk.title(LivingWords.HEAT_TITLE, Desk.shown(given)), sums.lines());
            for (String column : List.of("n", "va", "vb", "ga", "gb")) {
                water.known(column, sums.at(column));
            }
            water.value("scale", words(LivingWords.SCALE), TypedSteps.scale(scale));
            TypedSteps.value(water, "water", LivingWords.TYPED, LivingWords.READ, cell(given), language);
            water.value(
                    "celsius",
                    words(LivingWords.CELSIUS),
                    "=IF([scale]=\"x\";\"\";" + TypedSteps.celsius("[water]", "[waterUnit]", "[scale]") + ")");
            water.value("tau", words(LivingWords.TENS_OF_KELVINS), "=([celsius]+273.15)/10");
            water.value("alpha", words(LivingWords.WATER_ALPHA), "=10/(593-10*[tau])");
            water.value("beta", words(LivingWords.WATER_BETA), "=10/(10*[tau]-232)");
            water.column("a", words(LivingWords.ALPHA_POWER), line -> "=[alpha]^" + sums.at("n", line));
            water.column("b", words(LivingWords.BETA_POWER), line -> "=[beta]^" + sums.at("n", line));
            water.value(
                    "room",
                    words(LivingWords.ROOM),
                    "=" + sums.at("volume") + "+SUMPRODUCT([va];[a])+SUMPRODUCT([vb];[b])");
            water.value(
                    "heat",
                    words(LivingWords.HEAT),
                    "=" + sums.at("heat") + "-" + sums.at("slope")
                            + "*[tau]+SUMPRODUCT([ga];[a])-[tau]*[alpha]*SUMPRODUCT([ga];[n];[a])"
                            + "+SUMPRODUCT([gb];[b])+[tau]*[beta]*SUMPRODUCT([gb];[n];[b])");
            return water;
        });
    }
}
