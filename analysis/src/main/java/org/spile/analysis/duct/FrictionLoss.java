package org.spile.analysis.duct;

/**
 * What friction takes from a flow in a straight duct.
 *
 * @param speedMs true mean speed (m/s)
 * @param reynolds on the hydraulic diameter and the true speed
 * @param equivalentReynolds the one at which the friction factor is taken: that of a round duct, times {@link JonesFactor}
 * @param regime by {@code equivalentReynolds}
 * @param paPerM the loss (Pa/m) with its band: what method J scatters in tests; beyond 8:1 also what methods D and H say; in
 *     the transition also 30 % either way and the turbulent value
 */
public record FrictionLoss(double speedMs, double reynolds, double equivalentReynolds, Regime regime, Spread paPerM) {}
