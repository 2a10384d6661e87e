package org.roastfield.core.outcome;

import org.roastfield.core.internal.Check;

/**
 * A change of first order whose rate follows Arrhenius, eq. (66).
 *
 * @param name of what changes
 * @param rate at the reference temperature [1/s]
 * @param reference temperature [K]
 * @param activationEnergy [J/mol]
 * @param status what the numbers rest on
 * @param source in words
 */
public record FirstOrder(
    String name,
    double rate,
    double reference,
    double activationEnergy,
    Status status,
    String source) {

  private static final double GAS = 8.314462618;

  /**
   * Myoglobin of beef chuck [Geileskey1998]: 7.98e43 exp(−290 000/RT) per minute, as a thesis gives
   * it; here at 60 °C. Six and a half percent changed look rare, 93 % well done.
   */
  public static final FirstOrder MYOGLOBIN =
      new FirstOrder(
          "myoglobin",
          7.98e43 / 60 * StrictMath.exp(-290_000 / (GAS * 333.15)),
          333.15,
          290_000,
          Status.LITERATURE,
          "Geileskey et al. 1998, beef chuck, through a later text");

  /**
   * The same for lamb: 200 kJ/mol [Geileskey1998]; its rate at 60 °C is taken to be that of beef.
   */
  public static final FirstOrder MYOGLOBIN_OF_LAMB =
      new FirstOrder(
          "myoglobin",
          MYOGLOBIN.rate(),
          333.15,
          200_000,
          Status.ASSUMED,
          "activation energy: Geileskey et al. 1998; rate at 60 °C assumed to be that of beef");

  /** Actin of pork with little salt: 0.10 per minute at 70 °C, 250 kJ/mol [Kajitani2011]. */
  public static final FirstOrder ACTIN =
      new FirstOrder(
          "actin",
          0.10 / 60,
          343.15,
          250_000,
          Status.LITERATURE,
          "Kajitani, Fukuoka and Sakai 2011, pork; other methods give other energies");

  /** Collagen to gelatine in slow cuts: 0.25 per hour at 80 °C, 120 kJ/mol; no measurement. */
  public static final FirstOrder COLLAGEN =
      new FirstOrder(
          "collagen",
          0.25 / 3600,
          353.15,
          120_000,
          Status.ASSUMED,
          "judgement: tender at about 60 to 70 %");

  /**
   * @throws IllegalArgumentException if a number is not greater than 0
   */
  public FirstOrder {
    Check.notBlank("name", name);
    Check.positive("rate", rate);
    Check.positive("reference", reference);
    Check.positive("activationEnergy", activationEnergy);
  }

  /** Rate at a temperature [K], in 1/s. */
  public double rateAt(double temperature) {
    return rate * StrictMath.exp(-activationEnergy / GAS * (1 / temperature - 1 / reference));
  }

  /** Share changed after a history, in [0, 1], from none at its start. */
  public double changed(TemperatureHistory history) {
    return 1 - StrictMath.exp(-history.integral(this::rateAt));
  }
}
