package org.roastfield.lab.calibration;

import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;

/**
 * A way of inferring that is put to the test on data whose truth is known.
 *
 * @param <D> data
 */
public interface SimulatedStudy<D> {

  /**
   * Coordinates drawn from the prior. A truth that is turned down here, because its data cannot be
   * computed or nobody would cook so, must be turned down by the posterior as well.
   */
  double[] truth(RandomGenerator random);

  /** Data that a truth gives, with their errors. */
  D data(double[] truth, RandomGenerator random);

  /**
   * Draws from the posterior of data, of equal weight and close to independent.
   *
   * @param count how many
   * @return coordinates, [count][parameter]; empty if the inference gives up
   */
  Optional<double[][]> posterior(D data, int count, RandomGenerator random);

  /** Names of what is ranked. */
  List<String> names();

  /**
   * What is ranked, in the order of the names: coordinates, and at least one quantity that depends
   * on the data, such as the logarithm of the likelihood. Coordinates alone cannot tell a posterior
   * from its prior [Modrak2023].
   */
  double[] quantities(double[] coordinates, D data);
}
