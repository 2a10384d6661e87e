package org.roastfield.lab.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.roastfield.core.inference.Conflict;
import org.roastfield.core.inference.Diagnosis;
import org.roastfield.core.inference.LikelihoodProfile;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.inference.ProfileRatio;
import org.roastfield.core.inference.WeightedDraws;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.cooker.CookerProfile;
import org.roastfield.lab.cooker.LoggedCase;
import org.roastfield.lab.heldout.LaterReadings;

/** Everything that a calibration has to say of itself, what matters most first. */
public final class Findings {

  /** Chance below which residuals are called correlated: one good log in a thousand. */
  private static final double CORRELATED = 1e-3;

  /** Correlation from which two numbers are said to go together: half of a variance is shared. */
  private static final double TOGETHER = 0.7;

  private static final String OTHER_COOKER = ": this is another cooker, or it has changed";

  private final Verdict verdict;
  private final Prior belief;
  private final List<Source> sources;
  private final Simulator simulator;
  private final List<Finding> findings = new ArrayList<>();

  private Findings(Verdict verdict, Prior belief, List<Source> sources, Simulator simulator) {
    this.verdict = verdict;
    this.belief = belief;
    this.sources = sources;
    this.simulator = simulator;
  }

  /**
   * What a verdict means, in sentences.
   *
   * @param belief of all coordinates that the profile is made of
   * @param sources of the logs, in the order of the verdict's
   */
  public static List<Finding> of(
      Verdict verdict, Prior belief, List<Source> sources, Simulator simulator) {
    return new Findings(verdict, belief, sources, simulator).all();
  }

  /**
   * That logs count as of one cooker without saying so.
   *
   * @param logs that name no cooker
   */
  public static Optional<Finding> unnamed(List<String> logs) {
    return logs.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Finding.of(
                Finding.Kind.DATA,
                Finding.Weight.NOTE,
                "no cooker is named by "
                    + ParameterWords.list(logs)
                    + ": they count as of this one, which nothing checks"));
  }

  /**
   * From what other cookers the belief before the logs is.
   *
   * @param used their profiles
   * @param leftOut profiles that tell nothing here, each with why
   */
  public static Finding among(List<String> used, List<String> leftOut) {
    return Finding.of(
        Finding.Kind.LEARNED,
        Finding.Weight.NOTE,
        "what was believed of this cooker before its logs is learned from "
            + ParameterWords.list(used)
            + (leftOut.isEmpty() ? "" : "; left out: " + ParameterWords.list(leftOut)));
  }

  /** How later readings lie in what was foretold of them, one sentence a trace. */
  public static List<Finding> foretold(List<LaterReadings> all) {
    List<Finding> findings = new ArrayList<>();
    for (LaterReadings later : all) {
      String lost =
          later.lost() == 0
              ? ""
              : "; " + later.lost() + " draws of " + LaterReadings.DRAWS + " could not be computed";
      findings.add(
          Finding.of(
              Finding.Kind.FORETOLD,
              Finding.Weight.NOTE,
              later.log(),
              String.format(
                  Locale.ROOT,
                  "%s: %d of the %d readings after %.0f min (%.0f %%) lie in the bands of %.0f %%"
                      + " foretold from those before, which are %.1f K wide; their middles are off"
                      + " by %.2f K (root mean square)%s",
                  later.trace(),
                  later.inside(),
                  later.readings(),
                  later.after() / 60,
                  100 * later.share(),
                  100 * LaterReadings.LEVEL,
                  later.width(),
                  later.rootMeanSquare(),
                  lost)));
    }
    return findings;
  }

  private List<Finding> all() {
    findings.addAll(new Causes(verdict).all());
    conflict();
    verdict.ratio().ifPresent(this::otherCooker);
    verdict.profileConflict().ifPresent(this::apart);
    residuals();
    search();
    sources.forEach(source -> findings.addAll(LogChecks.of(source.log(), source.span())));
    cases();
    findings.addAll(new LogInfluence(verdict).all());
    findings.addAll(new Lessons(estimate().prior(), belief).all());
    correlations();
    new NextMeasurements(verdict.logs(), estimate(), simulator, sources.size() - 1)
        .finding()
        .ifPresent(findings::add);
    findings.sort(Comparator.comparing(Finding::weight).reversed());
    return List.copyOf(findings);
  }

  private MapEstimate estimate() {
    return verdict.around().estimate();
  }

  private Diagnosis diagnosis() {
    return verdict.diagnosis();
  }

  private void conflict() {
    Conflict ofAll = diagnosis().conflict();
    if (ofAll.chance() < Diagnosis.LEAST_CHANCE) {
      doubt(
          "the logs want numbers that were hardly to be expected "
              + chance(ofAll)
              + ": something stated is wrong, or this is another cooker");
    }
  }

  private void otherCooker(ProfileRatio ratio) {
    if (ratio.isAnother()) {
      double times = StrictMath.exp(-ratio.all());
      doubt(
          String.format(
                  Locale.ROOT,
                  "the logs are %.0f times as probable on a cooker of which"
                      + " nothing is known as on the profile's",
                  times)
              + OTHER_COOKER);
    }
  }

  private void apart(Conflict fromProfile) {
    if (fromProfile.chance() < Diagnosis.LEAST_CHANCE) {
      doubt(
          "what the logs say of the cooker stands farther from the profile than that of its own"
              + " logs would "
              + chance(fromProfile)
              + OTHER_COOKER);
    }
  }

  private static String chance(Conflict conflict) {
    return String.format(
        Locale.ROOT,
        "(chance %.4f, along %d combinations)",
        conflict.chance(),
        conflict.directions());
  }

  /** That logs and what was believed before do not go together. */
  private void doubt(String words) {
    findings.add(Finding.of(Finding.Kind.CONFLICT, Finding.Weight.DOUBT, words));
  }

  private void residuals() {
    for (Diagnosis.SeriesCheck check : diagnosis().series()) {
      if (check.isStrained()) {
        findings.add(
            Finding.of(
                Finding.Kind.RESIDUALS,
                Finding.Weight.DOUBT,
                String.format(
                    Locale.ROOT,
                    "%s: the computation misses it by a drift %.1f times as large and %.1f times as"
                        + " long as usual",
                    check.name(),
                    check.strain().drift(),
                    check.strain().time())));
      }
      if (check.whiteness().chanceOfCorrelation() < CORRELATED) {
        findings.add(
            Finding.of(
                Finding.Kind.RESIDUALS,
                Finding.Weight.NOTE,
                check.name()
                    + ": what is left after the drift is not white; its spreads may be too small"));
      }
    }
  }

  private void search() {
    ParameterSet parameters = estimate().prior().parameters();
    for (int p : diagnosis().atBounds()) {
      findings.add(
          Finding.of(
              Finding.Kind.SEARCH,
              Finding.Weight.DOUBT,
              ParameterWords.of(parameters.get(p).id())
                  + " came to a bound of what was thought possible"));
    }
    if (diagnosis().startsDisagree()) {
      findings.add(
          Finding.of(
              Finding.Kind.SEARCH,
              Finding.Weight.DOUBT,
              String.format(
                  Locale.ROOT,
                  "only %.0f %% of the searches came to the best answer: there may be others",
                  100 * estimate().agreement())));
    }
  }

  /** Sizes of cuts against the stated ones, and what too short a log was not asked. */
  private void cases() {
    for (LoggedCase log : verdict.logs().cases()) {
      SizeCheck.finding(estimate(), log).ifPresent(findings::add);
      if (!Suspicions.hasCourse(log)) {
        findings.add(
            Finding.of(
                Finding.Kind.NOT_TOLD,
                Finding.Weight.NOTE,
                log.name(),
                "without two readings of the cut at two times nobody can see whether a probe slipped"
                    + " or the lid was open: neither was looked for"));
      }
    }
  }

  /** Numbers that go together, those of the cooker with all others. */
  private void correlations() {
    ParameterSet all = estimate().prior().parameters();
    List<String> pairs = new ArrayList<>();
    for (Diagnosis.Pair pair : diagnosis().correlated(TOGETHER)) {
      boolean cooker =
          all.get(pair.a()).owner() == Owner.COOKER || all.get(pair.b()).owner() == Owner.COOKER;
      if (cooker) {
        pairs.add(
            String.format(
                Locale.ROOT,
                "%s with %s (%.2f)",
                ParameterWords.named(all.get(pair.a()).id()),
                ParameterWords.named(all.get(pair.b()).id()),
                pair.correlation()));
      }
    }
    if (!pairs.isEmpty()) {
      findings.add(
          Finding.of(
              Finding.Kind.NOT_TOLD,
              Finding.Weight.NOTE,
              "correlations of what is left unknown: " + ParameterWords.list(pairs)));
    }
  }

  /**
   * What the logs say of numbers of the cooker without what was believed before.
   *
   * @param profiles of them
   */
  public static List<Finding> profiles(List<LikelihoodProfile> profiles) {
    List<Finding> findings = new ArrayList<>();
    for (LikelihoodProfile profile : profiles) {
      findings.add(
          Finding.of(
              Finding.Kind.NOT_TOLD,
              Finding.Weight.NOTE,
              ParameterWords.of(profile.parameter().id())
                  + " by the logs alone, whatever was believed of it: "
                  + words(profile)));
    }
    return findings;
  }

  private static String words(LikelihoodProfile profile) {
    Parameter parameter = profile.parameter();
    String unit = parameter.unit().equals("1") ? "" : " " + parameter.unit();
    String low = String.format(Locale.ROOT, "%.2f%s", parameter.scale().value(profile.low()), unit);
    String high =
        String.format(Locale.ROOT, "%.2f%s", parameter.scale().value(profile.high()), unit);
    return switch (profile.kind()) {
      case IDENTIFIABLE -> "from " + low + " to " + high + " (95 %)";
      case ONE_SIDED ->
          profile.low() > Double.NEGATIVE_INFINITY
              ? "at least " + low + " (95 %), no upper end"
              : "at most " + high + " (95 %), no lower end";
      case FLAT -> "any value will do, only what was believed before bounds it";
    };
  }

  /**
   * What a profile that logs were added to says of itself.
   *
   * @param status of it, where that is less reliable than the logs' own
   */
  public static Optional<Finding> inherited(Optional<String> status) {
    return status.map(
        word ->
            Finding.of(
                Finding.Kind.CONFLICT,
                word.equals("misfit") ? Finding.Weight.MISFIT : Finding.Weight.DOUBT,
                "the profile before these logs was "
                    + word
                    + ", and one more log does not mend that: calibrate all logs together, without"
                    + " it, to have them judged anew"));
  }

  /** That a profile which logs were added to is of an older model. */
  public static Optional<Finding> older(Optional<CookerProfile> before) {
    return before
        .flatMap(ProfileWords::older)
        .map(words -> Finding.of(Finding.Kind.SEARCH, Finding.Weight.NOTE, words));
  }

  /** That draws were weighed in vain. */
  public static Optional<Finding> unreliable(Optional<WeightedDraws> draws) {
    return draws
        .filter(each -> !each.isReliable())
        .map(
            each ->
                Finding.of(
                    Finding.Kind.SEARCH,
                    Finding.Weight.DOUBT,
                    String.format(
                        Locale.ROOT,
                        "draws were weighed, but a few of them carry all the weight (tail %.2f,"
                            + " allowed %.2f): the normal approximation stands, and its spreads may"
                            + " be off",
                        each.tailShape(),
                        each.tailShapeLimit())));
  }
}
