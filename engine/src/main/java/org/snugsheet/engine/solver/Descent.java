package org.snugsheet.engine.solver;

/** A way downhill: from a start to a point whose sum of squares this way can hardly make smaller. */
interface Descent {

    /**
     * Goes downhill.
     *
     * @param task what to fit; each look at the curve is counted there
     * @param start a point where the curve is finite
     * @param firstStride how far the first step may go, as a multiple of the length of the parameters, each measured by
     *     what it changes in the curve
     * @param evaluations how often the curve may be asked
     * @return the lowest point seen; the start itself if none was lower
     */
    Point descend(Task task, Point start, double firstStride, int evaluations);
}
