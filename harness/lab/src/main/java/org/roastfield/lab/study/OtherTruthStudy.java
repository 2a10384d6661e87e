package org.roastfield.lab.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntConsumer;
import java.util.random.RandomGenerator;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.lab.synthetic.Noise;

/** Whether intervals hold on logs that other models made. */
final class OtherTruthStudy implements Study {

  @Override
  public String name() {
    return "other-truth";
  }

  @Override
  public String question() {
    return "Do intervals hold what they should where the truth is another model than the fitted one?";
  }

  @Override
  public int cases(Size size) {
    return size == Size.FULL ? 200 : 20;
  }

  @Override
  public Findings run(int cases, long seed, IntConsumer done) {
    Recovered recovered = new Recovered();
    OtherTruth[] kinds = OtherTruth.values();
    Tally[] times = Arrays.stream(kinds).map(kind -> new Tally()).toArray(Tally[]::new);
    for (int i = 0; i < cases; i++) {
      OtherTruth kind = kinds[i % kinds.length];
      RandomGenerator random = Truths.random(seed, i);
      Noise noise = Truths.noise(seed, i);
      double[] truth = Truths.PRIOR.draw(random);
      StudyLog log = StudyLog.of(truth, kind, noise);
      MapEstimate estimate = log.fitted(Truths.PRIOR, log.end()).estimate();
      if (estimate.isFound()) {
        recovered.add(estimate, truth, known(kind));
      } else {
        recovered.addFailed();
      }
      StudyLog next = StudyLog.of(Truths.nextCook(truth, random), kind, noise);
      Forecast forecast = Forecast.withDrift(Recovered.next(estimate), next, random, noise);
      recovered.add(forecast, next);
      times[i % kinds.length].add(forecast.timeCovered(next.timeToTarget()));
      done.accept(i + 1);
    }
    List<String> remarks = new ArrayList<>(recovered.remarks());
    for (int k = 0; k < kinds.length; k++) {
      remarks.add(
          String.format(
              Locale.ROOT,
              "%s: time to target of the next cook covered in %.2f of %d",
              kinds[k].name().toLowerCase(Locale.ROOT).replace('_', '-'),
              times[k].mean(),
              times[k].count()));
    }
    return new Findings(recovered.coverageBars(0.84, 0.97), remarks);
  }

  /** A face that dries has no constant wetness to be found. */
  private static boolean[] known(OtherTruth kind) {
    boolean[] known = Recovered.all();
    if (kind == OtherTruth.DRYING_FACE) {
      known[StudyCook.index(CookParameters.WETNESS)] = false;
    }
    return known;
  }
}
