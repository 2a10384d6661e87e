package org.roastfield.lab.report;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.Material;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.files.ContactSetup;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.CookNotes;
import org.roastfield.lab.files.CoverSetup;
import org.roastfield.lab.files.Extent;
import org.roastfield.lab.files.FaceSetup;
import org.roastfield.lab.files.Fact;
import org.roastfield.lab.files.Food;
import org.roastfield.lab.files.HeatTransfer;
import org.roastfield.lab.files.LogChannel;
import org.roastfield.lab.files.StageSetup;
import org.roastfield.lab.files.Statement;
import org.roastfield.lab.replay.Compared;
import org.roastfield.lab.replay.Comparison;
import org.roastfield.lab.replay.ErrorSummary;
import org.roastfield.lab.replay.ReplayResult;
import org.roastfield.lab.replay.TargetTime;
import org.roastfield.lab.replay.WaterLoss;
import org.roastfield.lab.result.RunManifest;
import org.roastfield.lab.timeline.ComputedCook;
import org.roastfield.lab.timeline.Milestone;
import org.roastfield.lab.timeline.TemperatureScale;
import org.roastfield.lab.timeline.Timeline;

/** Two small cooks and a made-up log to draw. */
final class ReportFixtures {

  private static final LocalDateTime STARTS = LocalDateTime.of(2026, 6, 13, 14, 5);
  private static final double PRESSURE = 101_325;

  private ReportFixtures() {}

  /**
   * A round cut: gentle heat until the core is at 52 °C, four minutes of searing, fifty minutes of
   * rest.
   */
  static CookFile roast(String name) {
    Cook cook =
        new Cook(
            loin(8),
            List.of(
                stage("gentle", 115, 12, StageEnd.coreRisesTo(Temperatures.celsius(52), 36_000)),
                stage("sear", 260, 45, StageEnd.after(240)),
                stage("rest", 25, 9, StageEnd.after(3000))),
            List.of(Probe.atDepth("halfway", 0.024)));
    List<StageSetup> stages =
        List.of(
            setup("gentle", face(115, Optional.empty()), 0, 1, "core at 52 °C"),
            setup(
                "sear",
                face(260, Optional.of(new ContactSetup(Temperatures.celsius(280), 300, 0.4))),
                1,
                1,
                "after 4 min"),
            setup("rest", face(25, Optional.empty()), 2, 1, "after 50 min"));
    return file(name, Food.PORK, cook, Optional.of(new Extent(0.0935, 2.38)), stages);
  }

  /**
   * A flat cut, each face heated in turn for a minute, four times; then a rest in which the core
   * still rises.
   */
  static CookFile steak() {
    Cut cut =
        new Cut(
            Slab.ofThickness(0.055),
            Material.constant("bison strip steak", 0.46, 1060, 3400),
            Temperatures.celsius(6));
    List<Stage> turns = new ArrayList<>();
    turns.add(stage("gentle", 110, 12, StageEnd.coreRisesTo(Temperatures.celsius(38), 36_000)));
    for (int i = 0; i < 4; i++) {
      SurfaceLaw hot = law(260, 250);
      SurfaceLaw free = law(60, 10);
      turns.add(
          Stage.ofFaces(
              "sear, turn " + (i + 1),
              i % 2 == 0 ? free : hot,
              i % 2 == 0 ? hot : free,
              StageEnd.after(60)));
    }
    turns.add(stage("rest", 25, 9, StageEnd.after(120)));
    Cook cook = new Cook(cut, turns, List.of());
    List<StageSetup> stages =
        List.of(
            setup("gentle", face(110, Optional.empty()), 0, 1, "core at 38 °C"),
            setup(
                "sear",
                face(60, Optional.of(new ContactSetup(Temperatures.celsius(260), 250, 1))),
                1,
                4,
                "4 turns of 60 s"),
            setup("rest", face(25, Optional.empty()), 5, 1, "after 2 min"));
    return file("Bison strip steak", Food.BEEF, cook, Optional.empty(), stages);
  }

  /** A cook of many short stages and long names, with more probes than there are styles. */
  static CookFile crowded() {
    List<Stage> stages = new ArrayList<>();
    List<StageSetup> setups = new ArrayList<>();
    List<Probe> probes = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      String name = "a stage whose name is longer than any picture is wide, number " + i;
      stages.add(stage(name, 40 + 10 * i, 20, StageEnd.after(i == 3 ? 7200 : 40)));
      setups.add(setup(name, face(40 + 10 * i, Optional.empty()), i, 1, "after a while"));
      probes.add(Probe.atDepth("probe with a long name " + i, 0.001 * i));
    }
    return file(
        "Crowded", Food.UNSTATED, new Cook(loin(8), stages, probes), Optional.empty(), setups);
  }

  /** A cook in which nothing happens: the surroundings are as warm as the cut. */
  static CookFile idle() {
    Cook cook = Cook.of(loin(20), stage("idle", 20, 9, StageEnd.after(600)));
    List<StageSetup> setups =
        List.of(setup("idle", face(20, Optional.empty()), 0, 1, "after 10 min"));
    return file("Idle", Food.VEGETABLE, cook, Optional.empty(), setups);
  }

  static String report(CookFile file) {
    SimulationResult result = result(file);
    return SimulationReport.html(
        ComputedCook.of(file, result), milestones(file, result), manifest());
  }

  private static Cut loin(double celsius) {
    return new Cut(
        Cylinder.ofDiameter(0.096),
        Material.constant("pork loin", 0.48, 1060, 3450),
        Temperatures.celsius(celsius));
  }

  static SimulationResult result(CookFile file) {
    return Simulator.withDefaults().run(file.cook()).orElseThrow();
  }

  static List<Milestone> milestones(CookFile file, SimulationResult result) {
    return Timeline.of(file, result, TemperatureScale.CELSIUS);
  }

  static RunManifest manifest() {
    return new RunManifest(
        "0.1.0",
        "simulate",
        List.of(new RunManifest.InputFile("cook", "cook.yaml", 1234, "0123456789abcdef".repeat(4))),
        List.of(
            new RunManifest.Setting("accuracy_K", "0.01"), new RunManifest.Setting("cells", "40")),
        "17");
  }

  static String roastReport(String name) {
    return report(roast(name));
  }

  static String steakReport() {
    return report(steak());
  }

  /** A log whose probe reads a little more than what is computed, in a slow wave. */
  static CookLog log(String comment) {
    return new CookLog("readings.csv", List.of(comment), 700, 0, 699 * 20, List.of(chamber()));
  }

  static ReplayResult replay(CookFile file, boolean withChamber) {
    SimulationResult result = result(file);
    List<Comparison> core = new ArrayList<>();
    double end = Math.min(result.endTime(), 699 * 20);
    for (int i = 0; i * 20 <= end; i++) {
      double computed = result.core().at(i * 20);
      double wave = 0.8 * StrictMath.sin(i / 60.0) + 0.1 * StrictMath.sin(i * 1.7);
      core.add(new Comparison(i * 20, computed + wave + 0.3, computed, computed));
    }
    OptionalDouble never = OptionalDouble.empty();
    OptionalDouble reached = OptionalDouble.of(6090);
    return new ReplayResult(
        new Compared(
            "the true core",
            false,
            core,
            new ErrorSummary(core.size(), 3, 0.65, -0.31, -1.2, 1900),
            List.of(
                new TargetTime(Temperatures.celsius(40), OptionalDouble.of(6000), reached, reached),
                new TargetTime(Temperatures.celsius(70), never, never, never)),
            List.of(),
            new WaterLoss(1, 0.5, never, never, never)),
        withChamber ? chamber() : LogChannel.of("chamber", new double[0], new double[0], 0),
        withChamber,
        Temperatures.celsius(8),
        false,
        List.of("wetness 0.3: cook file", "start temperature 8 °C: cook file"),
        result,
        Optional.empty());
  }

  private static LogChannel chamber() {
    double[] times = new double[700];
    double[] temperatures = new double[700];
    for (int i = 0; i < 700; i++) {
      times[i] = 20 * i;
      temperatures[i] = Temperatures.celsius(115 + 6 * StrictMath.sin(i / 25.0));
    }
    return LogChannel.of("chamber", times, temperatures, 0);
  }

  private static CookFile file(
      String name, Food food, Cook cook, Optional<Extent> extent, List<StageSetup> stages) {
    return new CookFile(
        "cook.yaml",
        name,
        STARTS,
        true,
        food,
        cook,
        PRESSURE,
        extent,
        Optional.empty(),
        List.of(new Fact("food", food.word()), new Fact("thickness", "as drawn")),
        stages,
        CookNotes.none(),
        Statement.keys().with("name", name));
  }

  private static Stage stage(String name, double celsius, double coefficient, StageEnd end) {
    return Stage.allRound(name, law(celsius, coefficient), end);
  }

  private static SurfaceLaw law(double celsius, double coefficient) {
    return new Convection(coefficient, Signal.constant(Temperatures.celsius(celsius)));
  }

  private static StageSetup setup(String name, FaceSetup face, int first, int count, String end) {
    return new StageSetup(name, face, face, face, first, count, end, List.of());
  }

  private static FaceSetup face(double celsius, Optional<ContactSetup> contact) {
    double air = Temperatures.celsius(celsius);
    return new FaceSetup(
        air,
        air,
        0.035,
        new HeatTransfer.Stated(7),
        0.92,
        0.3,
        0.98,
        contact,
        Optional.empty(),
        CoverSetup.NONE,
        0);
  }
}
