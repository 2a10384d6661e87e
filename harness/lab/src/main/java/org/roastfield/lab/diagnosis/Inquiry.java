package org.roastfield.lab.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.roastfield.core.inference.Calibration;
import org.roastfield.core.inference.Conflict;
import org.roastfield.core.inference.Diagnosis;
import org.roastfield.core.inference.Explanation;
import org.roastfield.core.inference.Explanations;
import org.roastfield.core.inference.FirstOrder;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.cooker.CookerLogs;
import org.roastfield.lab.cooker.LoggedCase;

/**
 * Asks what may be wrong with the logs of a calibration. Every suspicion is weighed to first order;
 * those that are not far behind are fitted in full, one log's at a time, and compared by their
 * evidence. Two logs that are wrong at once are not looked for.
 */
public final class Inquiry {

  /** Suspicions farther behind all being as stated are not fitted [nat]: one in twenty. */
  private static final double WORTH_A_FIT = -3;

  /** A number of the cooker known better than this share of its own prior is from a profile. */
  private static final double PROFILED = 0.99;

  /** Suspicions that are fitted at most: assumed, against the time it takes. */
  private static final int MOST_FITS = 8;

  private final CookerLogs logs;
  private final List<Source> sources;
  private final Simulator simulator;
  private final Conflict chambers;
  private final double chamberRatio;

  private Inquiry(
      CookerLogs logs,
      List<Source> sources,
      Simulator simulator,
      Conflict chambers,
      double chamberRatio) {
    this.logs = logs;
    this.sources = List.copyOf(sources);
    this.simulator = simulator;
    this.chambers = chambers;
    this.chamberRatio = chamberRatio;
  }

  /**
   * An inquiry into logs.
   *
   * @param sources of the cases, in their order
   * @throws IllegalArgumentException if there are not as many sources as cases
   */
  public static Inquiry of(CookerLogs logs, List<Source> sources, Simulator simulator) {
    if (sources.size() != logs.cases().size()) {
      throw new IllegalArgumentException(
          "sources must be as many as cases, " + logs.cases().size() + ", were " + sources.size());
    }
    return new Inquiry(logs, sources, simulator, Conflict.NONE, 0);
  }

  /**
   * The same where chambers say something of a profile as well.
   *
   * @param apart how far they stand from it
   * @param ratio how much more probable they are with it than without, as a logarithm [nat]
   */
  public Inquiry with(Conflict apart, double ratio) {
    return new Inquiry(logs, sources, simulator, apart, ratio);
  }

  /**
   * Weighs what may be wrong.
   *
   * @param calibration of these logs
   * @param estimate of it, found
   */
  public Verdict into(Calibration calibration, MapEstimate estimate) {
    FirstOrder around = FirstOrder.of(calibration, estimate);
    Diagnosis diagnosis = Diagnosis.of(around).with(chambers);
    List<Suspicion> all = new ArrayList<>();
    for (int log = 0; log < sources.size(); log++) {
      Source source = sources.get(log);
      all.addAll(
          new Suspicions(logs, around, simulator, log)
              .all(source.log(), source.span(), source.probe()));
    }
    Set<String> otherSizes = otherSizes(estimate);
    List<Suspicion> fitted = worthAFit(all, diagnosis.isDoubtful(), otherSizes);
    otherCooker(calibration).ifPresent(fitted::add);
    List<Explanation> explanations = new ArrayList<>();
    Explanation none =
        new Explanation(
            Suspect.NONE.name(), Suspect.NONE.odds(), calibration, coordinates(estimate));
    explanations.add(none);
    fitted.forEach(each -> explanations.add(each.explanation()));
    return new Verdict(
        logs,
        around,
        diagnosis,
        otherSizes,
        fitted,
        none,
        Explanations.of(explanations),
        chamberRatio);
  }

  /** Names of the logs whose cut is not of the stated size. */
  private Set<String> otherSizes(MapEstimate estimate) {
    Set<String> names = new HashSet<>();
    for (LoggedCase one : logs.cases()) {
      if (SizeCheck.isOther(estimate, one)) {
        names.add(one.name());
      }
    }
    return names;
  }

  /**
   * With the cooker's numbers as before its first log, if a profile knows more of them; what the
   * chambers say of that stands in its odds.
   */
  private Optional<Suspicion> otherCooker(Calibration calibration) {
    Prior prior = calibration.prior();
    int n = prior.size();
    double[] mean = prior.mean();
    double[][] covariance = new double[n][n];
    int known = -1;
    for (int p = 0; p < n; p++) {
      Parameter own = prior.parameters().get(p);
      boolean cooker = own.owner() == Owner.COOKER;
      if (cooker && prior.spread(p) < PROFILED * own.spread()) {
        known = p;
      }
      mean[p] = cooker ? own.centre() : mean[p];
      for (int q = 0; q < n; q++) {
        boolean other = prior.parameters().get(q).owner() == Owner.COOKER;
        covariance[p][q] = cooker || other ? 0 : prior.covariance(p, q);
      }
      covariance[p][p] = cooker ? own.spread() * own.spread() : covariance[p][p];
    }
    if (known < 0) {
      return Optional.empty();
    }
    Calibration without =
        Calibration.of(
            Prior.of(prior.parameters(), mean, covariance),
            calibration.evidence(),
            calibration.model());
    Suspect suspect = Suspect.OTHER_COOKER;
    return Optional.of(
        new Suspicion(
            "",
            suspect,
            Double.NaN,
            Double.NaN,
            new Explanation(
                suspect.name(), suspect.odds() * StrictMath.exp(-chamberRatio), without),
            prior.parameters().get(known).id()));
  }

  private static List<Double> coordinates(MapEstimate estimate) {
    List<Double> coordinates = new ArrayList<>();
    for (double each : estimate.coordinates()) {
      coordinates.add(each);
    }
    return coordinates;
  }

  /**
   * The most promising, and a size that comes out another; those without a first order only where
   * something is wrong at all.
   */
  private static List<Suspicion> worthAFit(
      List<Suspicion> all, boolean doubtful, Set<String> otherSizes) {
    List<Suspicion> worth =
        new ArrayList<>(
            all.stream()
                .filter(each -> each.promise() > WORTH_A_FIT)
                .sorted(Comparator.comparingDouble(Suspicion::promise).reversed())
                .limit(MOST_FITS)
                .toList());
    all.stream()
        .filter(each -> each.suspect() == Suspect.SIZE && otherSizes.contains(each.log()))
        .filter(each -> !worth.contains(each))
        .forEach(worth::add);
    all.stream()
        .filter(each -> Double.isNaN(each.promise()))
        .filter(each -> doubtful || worth.stream().anyMatch(one -> one.log().equals(each.log())))
        .forEach(worth::add);
    return worth;
  }
}
