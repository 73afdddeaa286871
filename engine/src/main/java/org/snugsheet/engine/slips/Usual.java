package org.snugsheet.engine.slips;

/**
 * How unusual the temperatures of a lesson are, as twice the logarithm of the odds against them (common practice, no source):
 * the water is liquid and hardly hotter than a hand can bear, a jar that cools was warm at first, and the surroundings are
 * outdoors or a room.
 */
final class Usual {

    private static final double IMPOSSIBLE = 40;

    private Usual() {}

    static double cost(Column column, RobustFit robust) {
        double warmest = Double.NEGATIVE_INFINITY;
        double coldest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < column.size(); i++) {
            if (!robust.isMisread(i)) {
                warmest = Math.max(warmest, column.at(i).celsius());
                coldest = Math.min(coldest, column.at(i).celsius());
            }
        }
        double around = column.at(0).around();
        double cost = ofWater(warmest, coldest);
        if (column.knowsSurroundings()) {
            cost += ofSurroundings(around);
            boolean cools = column.at(0).celsius() > around;
            cost += cools ? share(warmest, 20, 5, 10) : 0;
        } else {
            cost += share(warmest, 20, 5, 10);
        }
        return cost;
    }

    private static double ofWater(double warmest, double coldest) {
        return warmest > 101 || coldest < -1.5 ? IMPOSSIBLE : share(warmest, 62, 92, 24);
    }

    private static double ofSurroundings(double around) {
        return share(around, 35, 60, 16) + share(around, -20, -45, 16);
    }

    /** Zero up to one temperature, the full cost from another on, and linear in between. */
    private static double share(double celsius, double none, double all, double cost) {
        return cost * Math.min(1, Math.max(0, (celsius - none) / (all - none)));
    }
}
