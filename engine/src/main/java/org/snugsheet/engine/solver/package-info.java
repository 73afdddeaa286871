/**
 * Least squares: the curve of a family that lies nearest to some numbers, and how sure its parameters are.
 *
 * <p>Begin at {@link org.snugsheet.engine.solver.LeastSquares}. A family of curves is a {@link
 * org.snugsheet.engine.solver.Curve}, what comes out is a {@link org.snugsheet.engine.solver.LeastSquaresFit}; the rest
 * is hidden. Nothing here knows of jars or degrees: numbers go in, numbers come out.
 *
 * <p>The mathematics. Wanted are the parameters b that make S(b) = Σ w·(y − f(b))² smallest. Levenberg–Marquardt steps
 * go downhill from a guess until S hardly changes. That leaves the parameters right to about half of the digits of a
 * double, since S is flat at its lowest point; Gauss–Newton steps, judged by how orthogonal the residuals are to the
 * slopes J = ∂f/∂b, bring the rest. The same measure (the relative offset of Bates and Watts) decides whether the point
 * is called a fit at all. Each step, and the covariance (JᵀJ)⁻¹, comes from a QR decomposition of J with scaled columns,
 * never from JᵀJ itself; a pivot as small as rounding means that the observations cannot tell the parameters apart, and
 * that is refused. The tests hold all of this against the 27 nonlinear data sets that NIST certified for this purpose.
 *
 * <p>Where only one parameter bends the curve and the others enter straight, as in every law with one cooling constant, {@link
 * org.snugsheet.engine.solver.SeparableFit} searches for that one alone (variable projection), some times faster.
 *
 * <p>What it may use: {@link org.snugsheet.engine.InvalidInputException} and the JDK, no other package of the engine. One class,
 * {@code CommonsMathDescent}, uses Commons Math; nobody else may, so that another library would be a change of that
 * class alone. Who may use it: {@link org.snugsheet.engine.cooling} and other packages of the engine that fit something
 * to readings. It is not exported from the module.
 */
package org.snugsheet.engine.solver;
