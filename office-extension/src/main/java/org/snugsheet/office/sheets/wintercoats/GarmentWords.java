package org.snugsheet.office.sheets.wintercoats;

import org.snugsheet.engine.Phrase;

/** What children wear outdoors, to choose from, in words that the functions know; {@code garment-names.csv} of the engine has them. Underwear is for nobody’s list in a classroom; the functions know it. */
public enum GarmentWords implements Phrase {
    /** A garment. */
    T_SHIRT("T-shirt"),
    /** A garment. */
    UNDER_TOP("long underwear top"),
    /** A garment. */
    FLANNEL("long-sleeve flannel shirt"),
    /** A garment. */
    HOODIE("hoodie"),
    /** A garment. */
    THIN_SWEATER("thin sweater"),
    /** A garment. */
    SWEATER("sweater"),
    /** A garment. */
    THICK_SWEATER("thick sweater"),
    /** A garment. */
    FLEECE("fleece jacket"),
    /** A garment. */
    VEST("sleeveless vest (thick)"),
    /** A garment. */
    THIN_JACKET("thin jacket"),
    /** A garment. */
    COAT("coat"),
    /** A garment. */
    PADDED_JACKET("padded jacket"),
    /** A garment. */
    DOWN_JACKET("down jacket"),
    /** A garment. */
    PARKA("parka"),
    /** A garment. */
    SNOWSUIT("snowsuit"),
    /** A garment. */
    UNDER_BOTTOMS("long underwear bottoms"),
    /** A garment. */
    LEGGINGS("leggings"),
    /** A garment. */
    JEANS("jeans"),
    /** A garment. */
    THICK_PANTS("thick pants"),
    /** A garment. */
    SWEATPANTS("sweatpants"),
    /** A garment. */
    OVERALLS("overalls"),
    /** A garment. */
    SNOW_PANTS("snow pants"),
    /** A garment. */
    WINTER_SKIRT("winter skirt"),
    /** A garment. */
    ANKLE_SOCKS("ankle socks"),
    /** A garment. */
    KNEE_SOCKS("knee socks (thick)"),
    /** A garment. */
    THICK_SOCKS("thick ankle socks"),
    /** A garment. */
    THICK_LONG_SOCKS("thick long socks"),
    /** A garment. */
    SNEAKERS("sneakers"),
    /** A garment. */
    THICK_SHOES("shoes, thick soled"),
    /** A garment. */
    BOOTS("boots"),
    /** A garment. */
    RUBBER_BOOTS("rubber boots"),
    /** A garment. */
    GLOVES("gloves"),
    /** A garment. */
    MITTENS("mittens");

    private final String english;

    GarmentWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
