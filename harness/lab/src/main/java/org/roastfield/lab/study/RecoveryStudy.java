package org.roastfield.lab.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.random.RandomGenerator;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.lab.files.ChannelFormat;
import org.roastfield.lab.synthetic.Noise;

/**
 * Whether estimates of logs that the fitted model made find what made them. Truths come in opposite
 * pairs, so that the mean error is that of the estimate and not of the draws.
 */
final class RecoveryStudy implements Study {

  /** Generators of what is drawn after the truths begin here. */
  private static final int PAIRS_APART = 100_000;

  private final String name;
  private final String question;
  private final ChannelFormat display;

  private RecoveryStudy(String name, String question, ChannelFormat display) {
    this.name = name;
    this.question = question;
    this.display = display;
  }

  /** From readings with all their digits. */
  static RecoveryStudy exact() {
    return new RecoveryStudy(
        "recovery",
        "Does a calibration find the numbers that made a log, as closely as it says?",
        StudyCook.EXACT);
  }

  /** From the same cooks on a display that shows whole degrees. */
  static RecoveryStudy rounded() {
    return new RecoveryStudy(
        "rounded",
        "Does it find them from a display of whole degrees, five times as coarse as its noise?",
        StudyCook.WHOLE_DEGREES);
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public String question() {
    return question;
  }

  @Override
  public int cases(Size size) {
    return size == Size.FULL ? 400 : 30;
  }

  @Override
  public Findings run(int cases, long seed, IntConsumer done) {
    Recovered recovered = new Recovered();
    List<double[]> truths = Truths.inPairs(seed, cases);
    for (int i = 0; i < cases; i++) {
      RandomGenerator random = Truths.random(seed, PAIRS_APART + i);
      Noise noise = Truths.noise(seed, i);
      double[] truth = truths.get(i);
      StudyLog log = StudyLog.of(truth, noise).shownBy(display);
      MapEstimate estimate = log.fitted(Truths.PRIOR, log.end()).estimate();
      StudyLog next = StudyLog.of(Truths.nextCook(truth, random), noise);
      if (estimate.isFound()) {
        recovered.add(estimate, truth, Recovered.all());
      } else {
        recovered.addFailed();
      }
      recovered.add(Recovered.forecast(estimate, next, random), next);
      done.accept(i + 1);
    }
    List<Bar> bars = new ArrayList<>(recovered.errorBars());
    bars.addAll(recovered.coverageBars(0.86, 0.94));
    return new Findings(bars, recovered.remarks());
  }
}
