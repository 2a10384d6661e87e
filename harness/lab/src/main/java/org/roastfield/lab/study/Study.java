package org.roastfield.lab.study;

import java.util.List;
import java.util.Locale;
import java.util.function.IntConsumer;

/** A study of made-up cooks whose truth is known: the same seed gives the same findings. */
public interface Study {

  /** How many cases. */
  enum Size {
    /** As the bars ask for. */
    FULL,
    /** A look of a minute, for tests. */
    CI;

    /** As commands write it. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** All of them. */
  static List<Study> all() {
    return List.of(
        RecoveryStudy.exact(),
        RecoveryStudy.rounded(),
        new RankStudy(),
        new OtherTruthStudy(),
        new CookerStudy());
  }

  /** Its name. */
  String name();

  /** What it asks, in one line. */
  String question();

  /** Cases of a size. */
  int cases(Size size);

  /**
   * Runs it.
   *
   * @param cases how many
   * @param done is told how many are done
   */
  Findings run(int cases, long seed, IntConsumer done);

  /** Runs a study at a size. */
  default StudyResult result(Size size, long seed, IntConsumer done) {
    Findings found = run(cases(size), seed, done);
    return new StudyResult(name(), size.word(), seed, cases(size), found.bars(), found.remarks());
  }

  /**
   * What came out.
   *
   * @param bars what has to be met
   * @param remarks sentences on what else was seen
   */
  record Findings(List<Bar> bars, List<String> remarks) {

    /** Copies the lists. */
    public Findings {
      bars = List.copyOf(bars);
      remarks = List.copyOf(remarks);
    }
  }
}
