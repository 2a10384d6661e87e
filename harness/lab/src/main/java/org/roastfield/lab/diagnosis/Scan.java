package org.roastfield.lab.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.roastfield.core.inference.AddedTerm;
import org.roastfield.core.inference.FirstOrder;

/** One thing tried at several times, to first order: where it promises most. */
final class Scan {

  private final FirstOrder around;
  private final List<Tried> tried = new ArrayList<>();

  Scan(FirstOrder around) {
    this.around = around;
  }

  /**
   * One time.
   *
   * @param time [s]
   * @param term from it on
   * @param promise of the term
   */
  record Tried(double time, AddedTerm term, AddedTerm.Promise promise) {

    /** Gain, none at all where the value would lie beyond a bound. */
    double gain() {
      boolean within =
          promise.value() > term.parameter().low() && promise.value() < term.parameter().high();
      return within ? promise.gain() : Double.NEGATIVE_INFINITY;
    }
  }

  void add(double time, AddedTerm term) {
    tried.add(new Tried(time, term, term.promise(around)));
  }

  /** The time that promises most, if any promises something within its bounds. */
  Optional<Tried> best() {
    return tried.stream()
        .max(Comparator.comparingDouble(Tried::gain))
        .filter(best -> best.gain() > Double.NEGATIVE_INFINITY);
  }

  /** Mean of the evidence over all times as a share of that at the best. */
  double share() {
    double most = best().orElseThrow().gain();
    double sum = 0;
    for (Tried each : tried) {
      sum += StrictMath.exp(each.gain() - most);
    }
    return sum / tried.size();
  }
}
