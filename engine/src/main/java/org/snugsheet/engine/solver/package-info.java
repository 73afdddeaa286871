/**
 * Least squares: the curve of a family that lies nearest to some numbers, and how sure its parameters are.
 *
 * <p>Begin at {@link org.snugsheet.engine.solver.SeparableFit}, for families with a single nonlinear parameter and any number of linear
 * ones, as in every law with one cooling constant. Only the nonlinear one is searched for (variable projection). {@link
 * org.snugsheet.engine.solver.NonlinearFit} is for families with several nonlinear parameters, and {@link
 * org.snugsheet.engine.solver.Minimum} for the lowest point of a function of one number, {@link org.snugsheet.engine.solver.Crossing} for
 * where one passes through zero. Nothing here knows of jars or degrees: numbers go in, numbers come out.
 *
 * <p>The mathematics. Wanted are the parameters b that minimize S(b) = Σ (y − f(b))². S is flat at its minimum, so that its values alone
 * fix only about half of the digits of b. Both searches therefore end with Gauss–Newton steps that are judged by how nearly orthogonal the
 * residuals are to the slopes J = ∂f/∂b. Steps and the covariance (JᵀJ)⁻¹ come from an orthogonal decomposition of J, never from JᵀJ
 * itself. The tests compare both searches with the nonlinear data sets that NIST certified for this purpose, all 27 of them.
 *
 * <p>This package uses {@link org.snugsheet.engine.InvalidInputException}, the JDK and Commons Math. It is not exported from the module.
 */
package org.snugsheet.engine.solver;
