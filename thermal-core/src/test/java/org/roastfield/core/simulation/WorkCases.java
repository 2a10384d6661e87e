package org.roastfield.core.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.ensemble.EnsembleResult;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.reference.Rs1Reference;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.support.SampleCooks;

/** Work of chosen cooks as lines of {@code datasets/baselines/work-counters.csv}. */
final class WorkCases {

  static final String COMMAND = "mvn -pl thermal-core test -Dtest=WorkCountersTest";

  private static final String COLUMNS =
      "problem,driver,cells,accuracy_K,acceptedSteps,rejectedSteps,solves,factorisations,"
          + "fluxEvaluations";
  private static final double LOIN_RADIUS = 0.048;
  private static final double WETNESS = 0.3;

  private WorkCases() {}

  /**
   * A cook under a name.
   *
   * @param name in the file
   * @param cook computed
   * @param inLanes whether lanes serve it; they count steps only
   */
  private record Problem(String name, Cook cook, boolean inLanes) {}

  /** The whole file. */
  static String file() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "# computed with " + COMMAND + ", which writes thermal-core/target/work-counters.csv");
    lines.add(
        "# cells at the faces 0.2 mm wide; lanes: one member among three, which count steps only");
    lines.add(COLUMNS);
    for (Problem problem : problems()) {
      for (Settings settings : settings()) {
        lines.add(single(problem, settings));
        if (problem.inLanes()) {
          lines.add(lanes(problem, settings));
        }
      }
    }
    return String.join("\n", lines) + "\n";
  }

  private static List<Problem> problems() {
    List<Problem> problems = new ArrayList<>();
    for (String name : Rs1Reference.names()) {
      problems.add(new Problem(name, Rs1Cook.of(Rs1Reference.load(name)), true));
    }
    Cook loin = SampleCooks.roast(Cylinder.ofRadius(LOIN_RADIUS), SampleCooks.LOIN, WETNESS);
    Cook plain = SampleCooks.roast(Cylinder.ofRadius(LOIN_RADIUS), SampleCooks.CONSTANT, WETNESS);
    problems.add(new Problem("loin of constant properties", plain, true));
    problems.add(new Problem("loin after Choi and Okos", loin, false));
    problems.add(
        new Problem("turned slab", SampleCooks.turned(SampleCooks.CONSTANT, WETNESS), false));
    problems.add(
        new Problem(
            "turned slab after Choi and Okos",
            SampleCooks.turned(SampleCooks.LOIN, WETNESS),
            false));
    return problems;
  }

  private static List<Settings> settings() {
    Settings defaults = Settings.withDefaults();
    return List.of(
        defaults.withCells(16).withAccuracy(0.02),
        defaults,
        defaults.withCells(80).withAccuracy(0.001));
  }

  private static String single(Problem problem, Settings settings) {
    WorkCounters work = Bodies.run(settings, problem.cook()).work();
    return start(problem, "single", settings)
        + String.format(
            Locale.ROOT,
            "%d,%d,%d,%d,%d",
            work.acceptedSteps(),
            work.rejectedSteps(),
            work.solves(),
            work.factorisations(),
            work.fluxEvaluations());
  }

  private static String lanes(Problem problem, Settings settings) {
    EnsembleResult result =
        EnsembleSimulator.with(settings)
            .run(problem.cook(), 3, i -> startingWarmer(problem.cook(), i - 1));
    return start(problem, "lanes", settings)
        + String.format(Locale.ROOT, "%d,%d,,,", result.acceptedSteps(1), result.rejectedSteps(1));
  }

  private static Cook startingWarmer(Cook cook, double kelvin) {
    Cut cut = cook.cut();
    return new Cook(
        new Cut(cut.shape(), cut.material(), cut.startTemperature() + kelvin),
        cook.stages(),
        cook.probes());
  }

  private static String start(Problem problem, String driver, Settings settings) {
    return problem.name() + "," + driver + "," + settings.cells() + "," + settings.accuracy() + ",";
  }
}
