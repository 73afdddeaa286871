package org.snugsheet.office.sheets.lessonbook.pupils;

/** The things that the pages for the youngest show, each drawn around a place of a {@link Sketch}. */
final class Pictures {

    /** How many numbers stand beside a thermometer. */
    static final int MARKS = PaperMarks.MARKS;

    private static final int PARTS = 5;
    private static final double TUBE = 4;
    private static final double BULB = 5.8;
    private static final double LONG_MARK = 3.2;
    private static final double SHORT_MARK = 1.6;

    private final Sketch sketch;

    Pictures(Sketch sketch) {
        this.sketch = sketch;
    }

    /** A jar with a lid and water in it; x is its middle, y the upper side of the glass. */
    Pictures jar(double x, double y, double across, double down) {
        sketch.box(x - across / 2, y, across, down, across / 8);
        sketch.box(x - across * 0.4, y - down * 0.11, across * 0.8, down * 0.11, down * 0.03);
        sketch.line(x - across / 2, y + down * 0.22, x + across / 2, y + down * 0.22);
        return this;
    }

    /** Three wavy lines, as warm things have them in picture books. */
    Pictures waves(double x, double bottom, double high) {
        for (int wave = -1; wave <= 1; wave++) {
            double from = x + wave * high * 0.55;
            double sway = high * 0.35;
            sketch.curve(
                    from,
                    bottom,
                    from + sway,
                    bottom - high / 3,
                    from - sway,
                    bottom - high * 2 / 3,
                    from,
                    bottom - high);
        }
        return this;
    }

    /** A snowflake around a point. */
    Pictures flake(double x, double y, double radius) {
        for (int arm = 0; arm < 6; arm++) {
            double angle = Math.PI * arm / 3;
            double across = Math.sin(angle);
            double up = -Math.cos(angle);
            sketch.line(x, y, x + radius * across, y + radius * up);
            double twigX = x + 0.55 * radius * across;
            double twigY = y + 0.55 * radius * up;
            double left = angle - 0.6;
            double right = angle + 0.6;
            double twig = 0.38 * radius;
            sketch.line(
                    twigX + twig * Math.sin(left),
                    twigY - twig * Math.cos(left),
                    twigX,
                    twigY,
                    twigX + twig * Math.sin(right),
                    twigY - twig * Math.cos(right));
        }
        return this;
    }

    /** A clock face without hands. */
    Pictures clock(double x, double y, double radius) {
        sketch.circle(x, y, radius).circle(x, y, 0.4);
        for (int hour = 0; hour < 12; hour++) {
            double across = Math.sin(Math.PI * hour / 6);
            double up = -Math.cos(Math.PI * hour / 6);
            double from = hour % 3 == 0 ? 0.68 * radius : 0.82 * radius;
            sketch.line(x + from * across, y + from * up, x + radius * across, y + radius * up);
        }
        return this;
    }

    /**
     * An empty thermometer to color in, with its marks on the left; the numbers beside them stand in cells.
     *
     * @param x the middle of the tube
     * @param top where the uppermost number stands
     * @param step from one number to the next
     */
    Pictures thermometer(double x, double top, double step) {
        double bottom = top + (MARKS - 1) * step;
        double bulb = bottom + step / 2 + BULB - 0.5;
        tube(x, top - 3, bulb, TUBE, BULB);
        for (int part = 0; part <= (MARKS - 1) * PARTS; part++) {
            double y = top + part * step / PARTS;
            sketch.line(x - TUBE, y, x - TUBE - (part % PARTS == 0 ? LONG_MARK : SHORT_MARK), y);
        }
        return this;
    }

    /** A thermometer without marks. */
    Pictures smallThermometer(double x, double top, double high) {
        double bulb = high * 0.18;
        tube(x, top, top + high - bulb, bulb * 0.6, bulb);
        double tube = bulb * 0.6;
        for (int mark = 1; mark <= 4; mark++) {
            double y = top + mark * high * 0.14;
            sketch.line(x + tube, y, x + tube + 1.5, y);
        }
        return this;
    }

    /** A tube with a round end at the top and a bulb at the bottom, in one line. */
    private void tube(double x, double top, double middle, double half, double radius) {
        double neck = middle - Math.sqrt(radius * radius - half * half);
        double c = half * 0.5523;
        double round = top + half;
        sketch.line(x - half, neck, x - half, round).line(x + half, neck, x + half, round);
        sketch.curve(
                x - half, round, x - half, round - c, x - c, top, x, top, x + c, top, x + half, round - c, x + half,
                round);
        double begin = Math.asin(half / radius);
        int steps = 20;
        double[] arc = new double[2 * (steps + 1)];
        for (int i = 0; i <= steps; i++) {
            double angle = begin + i * (2 * Math.PI - 2 * begin) / steps;
            arc[2 * i] = x + radius * Math.sin(angle);
            arc[2 * i + 1] = middle - radius * Math.cos(angle);
        }
        sketch.line(arc);
    }

    /** A face that smiles, with waves of warmth beside it. */
    Pictures warmFace(double x, double y, double radius) {
        face(x, y, radius);
        double mouth = 0.5 * radius;
        sketch.curve(
                x - mouth,
                y + 0.25 * radius,
                x - mouth * 0.6,
                y + 0.75 * radius,
                x + mouth * 0.6,
                y + 0.75 * radius,
                x + mouth,
                y + 0.25 * radius);
        return waves(x - 2.1 * radius, y + 0.5 * radius, radius);
    }

    /** A face whose teeth chatter, with a snowflake beside it. */
    Pictures coldFace(double x, double y, double radius) {
        face(x, y, radius);
        double[] teeth = new double[14];
        for (int i = 0; i < 7; i++) {
            teeth[2 * i] = x + (i - 3) * 0.17 * radius;
            teeth[2 * i + 1] = y + (i % 2 == 0 ? 0.55 : 0.3) * radius;
        }
        sketch.line(teeth);
        return flake(x + 1.75 * radius, y, 0.6 * radius);
    }

    private void face(double x, double y, double radius) {
        sketch.circle(x, y, radius);
        sketch.circle(x - 0.35 * radius, y - 0.25 * radius, 0.09 * radius);
        sketch.circle(x + 0.35 * radius, y - 0.25 * radius, 0.09 * radius);
    }

    /** Cubes of ice. */
    Pictures ice(double x, double bottom, double side) {
        cube(x - side * 0.75, bottom, side);
        cube(x + side * 0.75, bottom, side);
        return this;
    }

    private void cube(double x, double bottom, double side) {
        double left = x - side * 0.6;
        double right = left + side;
        double top = bottom - side;
        double deep = side * 0.3;
        sketch.line(left, bottom, right, bottom, right, top, left, top, left, bottom);
        sketch.line(left, top, left + deep, top - deep, right + deep, top - deep, right, top);
        sketch.line(right + deep, top - deep, right + deep, bottom - deep, right, bottom);
        sketch.line(left + side * 0.2, top + side * 0.3, left + side * 0.45, top + side * 0.15);
    }
}
