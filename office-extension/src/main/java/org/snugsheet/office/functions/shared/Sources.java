package org.snugsheet.office.functions.shared;

/**
 * Where the formulas of several functions come from, cited in a form that every language reads; the engine’s Javadoc says more.
 * The words “from memory”, “common practice, no source” and “see” are translated where they are shown.
 */
public final class Sources {

    private static final String INCROPERA = "Incropera & DeWitt, Fundamentals of Heat and Mass Transfer";

    public static final String LUMPED = INCROPERA + ", § 5.1";
    public static final String SIDE_BY_SIDE = INCROPERA + ", § 5.3; Millman, Proc. IRE 28 (1940) 413 (from memory)";
    public static final String DISC = INCROPERA + ", Table 4.1";
    public static final String NEWTON = LUMPED + "; Newton, Phil. Trans. 22 (1701) 824";
    public static final String UNITS = "NIST SP 811 (2008), 4.2.1.1 & App. B.8";
    public static final String ROUNDING = "JCGM 100:2008 (GUM), 4.3.7 & F.2.2.1";
    public static final String ERRORS = "JCGM 100:2008 (GUM), 5.1.2";
    public static final String FIT =
            "Bates & Watts, Nonlinear Regression Analysis and Its Applications (1988), § 2.2.1";
    public static final String LIMITS =
            "Bates & Watts, Nonlinear Regression Analysis and Its Applications (1988), § 6.1;"
                    + " Milanese & Belforte, IEEE Trans. Autom. Control 27 (1982) 408";
    public static final String SCHOOL_LIMIT = "UK DfE, Building Bulletin 87 (2003)";
    public static final String LAWS = "Sugiura, Commun. Stat. A 7 (1978) 13; Hurvich & Tsai, Biometrika 76 (1989) 297;"
            + " Burnham & Anderson, Model Selection and Multimodel Inference (2002), § 2.6";
    public static final String OUTLIERS = "Cook & Weisberg, Residuals and Influence in Regression (1982), § 2.2";
    public static final String WELCH = "Welch, Biometrika 34 (1947) 28";
    public static final String FIELLER = "Fieller, J. R. Stat. Soc. B 16 (1954) 175";
    public static final String HOLM = "Holm, Scand. J. Stat. 6 (1979) 65";
    public static final String JARS =
            "Hartung & Knapp, Stat. Med. 20 (2001) 1771; Sidik & Jonkman, Stat. Med. 21 (2002) 3153";
    public static final String HEAT = "IAPWS SR6-08(2011); Çengel & Boles, Thermodynamics, § 4-5 (from memory)";
    public static final String MIXING = "Halliday, Resnick & Walker, Fundamentals of Physics, § 18-4";
    public static final String FLAT = "ISO 6946:2017, 6.7.1";
    public static final String ROUND = "ISO 12241:2008, 4.1.2 (from memory); " + INCROPERA + ", § 3.3.1";
    public static final String TURNING = INCROPERA + ", Ex. 3.5; Holman, Heat Transfer, § 2-6";
    public static final String SURFACE = "Churchill & Chu, Int. J. Heat Mass Transfer 18 (1975) 1323;"
            + " Popiel, Wojtkowiak & Bober, Exp. Thermal Fluid Sci. 32 (2007) 607;"
            + " Churchill & Bernstein, J. Heat Transfer 99 (1977) 300; ISO 6946:2017, App. C";
    public static final String OUTFIT = "ANSI/ASHRAE 55; Olesen, ASHRAE Trans. (1985) HI-85-09";
    public static final String CLOTHING_NEEDED = "ISO 11079:2007 (from memory); R comf, calcIREQ; ISO 7933:2004;"
            + " ANSI/ASHRAE 55; Compendium of Physical Activities (2011) (from memory)";
    public static final String PLAN = "Seber & Wild, Nonlinear Regression (1989), § 2.1";
    public static final String POWER = "Casella & Berger, Statistical Inference, 5.3.1";

    private Sources() {}
}
