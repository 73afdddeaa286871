package org.snugsheet.office.sharing.living;

/**
 * Student’s distribution by the beta distribution, which takes any number of degrees of freedom: what spreadsheet programs call by
 * Student’s name cuts off their decimals. {@code P(|t| > x) = I(ν/(ν + x²); ν/2; ½)} (Abramowitz and Stegun, 26.7.1 and 26.5.27). For many degrees
 * of freedom, its expansion about the normal quantile (26.7.5) is closer than the programs are.
 */
final class Student {

    /** The normal quantile that is exceeded once in twenty, on either side. */
    static final String NORMAL = "NORMSINV(0.975)";

    private static final String MANY = "2000";

    private Student() {}

    /** What is exceeded once in twenty, on either side. */
    static String quantile(String freedom) {
        String z = NORMAL;
        String first = "(" + z + "^3+" + z + ")/4";
        String second = "(5*" + z + "^5+16*" + z + "^3+3*" + z + ")/96";
        String third = "(3*" + z + "^7+19*" + z + "^5+17*" + z + "^3-15*" + z + ")/384";
        String many = z + "+((" + third + "/" + freedom + "+" + second + ")/" + freedom + "+" + first + ")/" + freedom;
        return "IF(" + freedom + ">" + MANY + ";" + many + ";SQRT(" + freedom + "*(1/BETAINV(0.05;" + freedom
                + "/2;0.5)-1)))";
    }

    /**
     * How often chance alone gives at least so much, on either side; for many degrees of freedom by D. L. Wallace, Annals of Mathematical
     * Statistics 30 (1959), 1124–1130 (from memory). Below a millionth it says a millionth: no level is as strict, and not every program has a
     * normal distribution that far out.
     */
    static String twoSided(String t, String freedom) {
        String wallace =
                "(8*" + freedom + "+1)/(8*" + freedom + "+3)*SQRT(" + freedom + "*LN(1+" + t + "^2/" + freedom + "))";
        String normal = "IF(" + freedom + ">1E11;ABS(" + t + ");" + wallace + ")";
        return "IF(" + freedom + ">" + MANY + ";2*(1-NORMSDIST(MIN(4.9;" + normal + ")));IF(" + t + "=0;1;BETADIST("
                + freedom + "/(" + freedom + "+" + t + "^2);" + freedom + "/2;0.5)))";
    }
}
