package org.roastfield.lab.cooker;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.roastfield.core.inference.ErrorModel;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;

/**
 * What logs say of a cooker: a normal distribution of the coordinates of its own numbers, where it
 * holds, and what it was made from. Immutable.
 *
 * @param id words in lower case joined by hyphens, as in the name of its file
 * @param model version of the model whose numbers these are, see {@link #MODEL}
 * @param madeUp whether a log that it was made from is
 * @param complete whether the search came to its end
 * @param parameters of the cooker with the priors from before its first log
 * @param belief mean and covariance of their coordinates after all logs
 * @param validity where it may be used as it is
 * @param errors of core traces, as the residuals of its last log speak for
 * @param diagnosis how well the search went
 * @param logs that it was made from, the oldest first
 */
public record CookerProfile(
    String id,
    String model,
    boolean madeUp,
    boolean complete,
    ParameterSet parameters,
    Prior belief,
    Validity validity,
    ErrorModel errors,
    Diagnosis diagnosis,
    List<Log> logs) {

  /** Version of this model; another first number is another model. */
  public static final String MODEL = "1.2";

  /** Share of a prior's variance below which nothing is claimed of a parameter. */
  public static final double LEAST_CONTRACTION = 0.3;

  /** Factor of all spreads outside the range of validity; assumed. */
  private static final double OUTSIDE = 2;

  /**
   * Where the logs were.
   *
   * @param coolestAir [K]
   * @param hottestAir [K]
   * @param thinnest thickness of a cut [m]
   * @param thickest [m]
   */
  public record Validity(double coolestAir, double hottestAir, double thinnest, double thickest) {

    /** How far beyond the logs' mean air a profile holds [K]; assumed. */
    static final double AIR = 20;

    /** By what factor thinner or thicker cuts it holds for; assumed. */
    static final double THICKNESS = 1.5;

    /** Whether a cook is in it. */
    public boolean holds(double air, double thickness) {
      return air >= coolestAir
          && air <= hottestAir
          && thickness >= thinnest
          && thickness <= thickest;
    }

    /** One that holds where either does, and between. */
    Validity with(Validity other) {
      return new Validity(
          Math.min(coolestAir, other.coolestAir),
          Math.max(hottestAir, other.hottestAir),
          Math.min(thinnest, other.thinnest),
          Math.max(thickest, other.thickest));
    }
  }

  /**
   * How well a search went.
   *
   * @param status whether the profile can be relied on: as-stated, in-doubt, misfit or unchecked
   * @param starts searches
   * @param agreement share of them that ended within 0.1 nat of the best
   * @param objective minus the logarithm of likelihood and prior [nat]
   * @param cooks computed in all
   * @param tailShape of importance draws; NaN if there were none
   */
  public record Diagnosis(
      String status, int starts, double agreement, double objective, int cooks, double tailShape) {

    /** What a status may be. */
    static final List<String> STATUSES = List.of("as-stated", "in-doubt", "misfit", "unchecked");

    /** The same, the most reliable first. */
    private static final List<String> RELIABLE =
        List.of("as-stated", "in-doubt", "unchecked", "misfit");

    /** The less reliable of two statuses: logs that follow do not mend those before. */
    static String worse(String one, String other) {
      return RELIABLE.indexOf(one) >= RELIABLE.indexOf(other) ? one : other;
    }
  }

  /**
   * A log that a profile was made from.
   *
   * @param name of its package
   * @param sha256 of its readings
   * @param readings how many of the cut
   * @param rms root mean square of computed less measured [K]
   */
  public record Log(String name, String sha256, int readings, double rms) {}

  /** Copies the list. */
  public CookerProfile {
    logs = List.copyOf(logs);
    if (belief.size() != parameters.size()) {
      throw new IllegalArgumentException(
          "belief must be of " + parameters.size() + " parameters, was of " + belief.size());
    }
  }

  /** Share of a prior's variance that the logs took away. */
  public double contraction(int parameter) {
    double before = parameters.get(parameter).spread();
    double after = belief.spread(parameter);
    return 1 - after * after / (before * before);
  }

  /** Whether anything is claimed of a parameter. */
  public boolean isIdentified(int parameter) {
    return contraction(parameter) >= LEAST_CONTRACTION;
  }

  /** Whether anything is claimed of any parameter: if not, the logs told nothing of the cooker. */
  public boolean hasInformation() {
    return IntStream.range(0, parameters.size()).anyMatch(this::isIdentified);
  }

  /** Value of a parameter at the mean of its coordinate, its median [unit]. */
  public double value(int parameter) {
    return parameters.get(parameter).scale().value(belief.mean()[parameter]);
  }

  /** Whether a cook with some air [K] and thickness [m] is where the profile holds. */
  public boolean holds(double air, double thickness) {
    return validity.holds(air, thickness);
  }

  /** Whether a cook is where the profile holds, by its mean air and its thickness. */
  public boolean holds(VariedCook cook) {
    return holds(Reach.meanAir(cook), Reach.thickness(cook.file()));
  }

  /**
   * What a new cook on this cooker gets: what is not known of the cooker, and what differs from
   * cook to cook, together. A cook that has a number of its own for that, see {@link
   * CookParameters#CONVECTION_OF_COOK}, takes the {@link #belief} instead.
   *
   * @param inside whether the cook is where the profile holds; outside all spreads are doubled
   */
  public Prior predictive(boolean inside) {
    return widened(inside, true);
  }

  /** The belief for a cook with a number of its own for what differs from cook to cook. */
  public Prior belief(boolean inside) {
    return widened(inside, false);
  }

  private Prior widened(boolean inside, boolean betweenCooks) {
    int n = parameters.size();
    double factor = inside ? 1 : OUTSIDE * OUTSIDE;
    double[][] covariance = new double[n][n];
    for (int a = 0; a < n; a++) {
      for (int b = 0; b < n; b++) {
        covariance[a][b] = factor * belief.covariance(a, b);
      }
      double between = betweenCooks ? CookerNumbers.betweenCooks(parameters.get(a).id()) : 0;
      covariance[a][a] += factor * between * between;
    }
    return Prior.of(parameters, belief.mean(), covariance);
  }

  /**
   * What is known of what its air does by itself; empty if its logs were not looked at for that.
   */
  public Optional<Prior> habit() {
    List<Parameter> own = parameters.list().stream().filter(CookerNumbers::isHabit).toList();
    return own.isEmpty()
        ? Optional.empty()
        : Optional.of(CookerNumbers.part(belief, ParameterSet.of(own.toArray(new Parameter[0]))));
  }

  /** The same kind of belief over a larger set, whose other parameters keep their own priors. */
  public Prior within(ParameterSet larger, boolean inside) {
    Prior known = belief(inside);
    Prior own = Prior.of(larger);
    int n = larger.size();
    double[] mean = own.mean();
    double[][] covariance = new double[n][n];
    for (int a = 0; a < n; a++) {
      Optional<Integer> first = place(larger.get(a));
      if (first.isPresent()) {
        mean[a] = known.mean()[first.get()];
      }
      for (int b = 0; b < n; b++) {
        Optional<Integer> second = place(larger.get(b));
        covariance[a][b] =
            first.isPresent() && second.isPresent()
                ? known.covariance(first.get(), second.get())
                : own.covariance(a, b);
      }
    }
    return Prior.of(larger, mean, covariance);
  }

  private Optional<Integer> place(Parameter parameter) {
    return parameters.has(parameter.id())
        ? Optional.of(parameters.index(parameter.id()))
        : Optional.empty();
  }
}
