package org.roastfield.lab.study;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntConsumer;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.lab.calibration.ReferenceDraws;
import org.roastfield.lab.calibration.ReferencePosterior;
import org.roastfield.lab.calibration.TemperedSampler;
import org.roastfield.lab.cooker.CookerProfile;
import org.roastfield.lab.files.ChannelFormat;
import org.roastfield.lab.result.Json;

/**
 * Posteriors of a dozen made-up logs by reference draws, which know nothing of an estimate or a
 * normal shape: what the library's own approximations are held against. A log of each truth is
 * followed for an hour and for two; every third truth is seen on a display of whole degrees.
 */
public final class ReferenceCases {

  /** Generators of truths and errors begin here. */
  private static final int FIRST = 50_000;

  private static final long SEED = 1;
  private static final int TRUTHS = 6;
  private static final double[] FOLLOWED = {3600, 7200};
  private static final int RUNS = 4;
  private static final TemperedSampler SAMPLER = TemperedSampler.of(128, 16).withLastLength(64);

  /** Parts that numbers are rounded to: far below any standard error. */
  private static final double DIGITS = 1e6;

  private ReferenceCases() {}

  /**
   * One log.
   *
   * @param id of its posterior
   * @param truth its number
   * @param until when the log ends [s]
   * @param display as the core is read
   */
  record Case(String id, int truth, double until, ChannelFormat display) {

    /** The log as a calibration finds it. */
    StudyLog.Fit fit() {
      return log().fitted(Truths.PRIOR, until);
    }

    private StudyLog log() {
      double[] drawn = Truths.PRIOR.draw(Truths.random(SEED, FIRST + truth));
      return StudyLog.of(drawn, Truths.noise(SEED, FIRST + truth)).shownBy(display);
    }

    /** Its readings: the same posterior is that of the same ones. */
    double[] readings() {
      return Arrays.copyOf(log().readings(), (int) (until / StudyCook.INTERVAL) + 1);
    }
  }

  /** All of them. */
  static List<Case> all() {
    List<Case> cases = new ArrayList<>();
    for (int truth = 1; truth <= TRUTHS; truth++) {
      boolean coarse = truth % 3 == 0;
      for (double until : FOLLOWED) {
        cases.add(
            new Case(
                "syn-loin-" + truth + "-for-" + (int) (until / 3600) + "-h",
                truth,
                until,
                coarse ? StudyCook.WHOLE_DEGREES : StudyCook.EXACT));
      }
    }
    return cases;
  }

  /** How many. */
  public static int count() {
    return all().size();
  }

  /**
   * Draws from each and says what came out.
   *
   * @param done is told how many are done
   */
  public static String json(IntConsumer done) {
    ObjectNode root = Json.document("roastfield-posteriors", 1);
    root.put("model_version", CookerProfile.MODEL);
    root.put("command", "roastfield make-posteriors").put("made_up", true);
    ArrayNode prior = root.putArray("prior");
    for (Parameter parameter : StudyCook.PARAMETERS.list()) {
      prior
          .addObject()
          .put("id", parameter.id())
          .put("centre", Json.rounded(parameter.centre(), DIGITS))
          .put("spread", parameter.spread());
    }
    ArrayNode posteriors = root.putArray("posteriors");
    for (Case one : all()) {
      posteriors.add(posterior(one));
      done.accept(posteriors.size());
    }
    return Json.text(root);
  }

  private static ObjectNode posterior(Case one) {
    StudyLog.Fit fit = one.fit();
    ReferencePosterior drawn =
        ReferencePosterior.of(
            RUNS,
            SAMPLER,
            Truths.PRIOR,
            fit.calibration().density(fit.estimate()),
            Truths.random(SEED, 2 * FIRST + one.truth));
    ObjectNode node = Json.object().put("id", one.id).put("log_until_s", one.until);
    double[] readings = one.readings();
    node.putObject("readings")
        .put("count", readings.length)
        .put("mean_degC", Json.celsius(Arrays.stream(readings).average().orElseThrow()))
        .put("last_degC", Json.celsius(readings[readings.length - 1]));
    node.putObject("draws")
        .put("runs", RUNS)
        .put("of_a_run", drawn.runs().get(0).size())
        .put("evaluations", drawn.runs().stream().mapToLong(ReferenceDraws::evaluations).sum())
        .put("converged", drawn.isConverged());
    evidence(node.putObject("log_evidence_nat"), drawn);
    ArrayNode parameters = node.putArray("parameters");
    double[][] draws = drawn.evenly(drawn.runs().get(0).size());
    for (int p = 0; p < Truths.PRIOR.size(); p++) {
      parameter(parameters.addObject().put("id", StudyCook.IDS.get(p)), p, drawn, draws);
    }
    return node;
  }

  private static void evidence(ObjectNode node, ReferencePosterior drawn) {
    Tally runs = new Tally();
    drawn.runs().forEach(run -> runs.add(run.logEvidence()));
    node.put("mean", Json.rounded(runs.mean(), DIGITS))
        .put("standard_error", Json.rounded(runs.spread() / Math.sqrt(runs.count()), DIGITS));
  }

  private static void parameter(
      ObjectNode node, int p, ReferencePosterior drawn, double[][] draws) {
    double[] values = Arrays.stream(draws).mapToDouble(z -> z[p]).sorted().toArray();
    double effective = drawn.runs().stream().mapToDouble(run -> run.effectiveSize(z -> z[p])).sum();
    double mean = drawn.mean(z -> z[p]);
    double square = drawn.mean(z -> (z[p] - mean) * (z[p] - mean));
    node.put("mean", Json.rounded(mean, DIGITS))
        .put("standard_error", Json.rounded(Math.sqrt(square / effective), DIGITS))
        .put("spread", Json.rounded(Math.sqrt(square), DIGITS))
        .put("q05", Json.rounded(values[(int) (0.05 * values.length)], DIGITS))
        .put("q50", Json.rounded(values[(int) (0.50 * values.length)], DIGITS))
        .put("q95", Json.rounded(values[(int) (0.95 * values.length)], DIGITS))
        .put("effective_size", Math.round(effective))
        .put("scale_reduction", Json.rounded(drawn.scaleReduction(z -> z[p]), 1e4));
  }
}
