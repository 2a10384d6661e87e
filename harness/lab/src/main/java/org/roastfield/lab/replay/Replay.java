package org.roastfield.lab.replay;

import java.util.List;
import java.util.Optional;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.FaceSetup;
import org.roastfield.lab.files.StageSetup;

/**
 * Computes a logged cook again: the log's chamber readings are the surroundings, the cook file's
 * first stage gives everything else about the surface, and the cut goes on at time 0 of the log.
 * Nothing is fitted. Another computation of the cook is compared in the same way.
 */
public final class Replay {

  private final LoggedCook logged;
  private final boolean startFromLog;
  private final Cook cook;
  private final Readout shownBy;
  private final String words;
  private final List<String> assumptions;

  private Replay(
      LoggedCook logged,
      boolean startFromLog,
      Cook cook,
      Readout shownBy,
      String words,
      List<String> assumptions) {
    this.logged = logged;
    this.startFromLog = startFromLog;
    this.cook = cook;
    this.shownBy = shownBy;
    this.words = words;
    this.assumptions = assumptions;
  }

  /**
   * Prepares a replay.
   *
   * @param startFromLog whether the log's first core reading is the temperature that the cut starts
   *     with
   * @throws IllegalArgumentException if the log has no usable core channel, none of its readings is
   *     early enough, it is not clear which probe they are from, or the cook begins with turns
   */
  public static Replay of(
      CookFile file, CookLog log, ComparisonOptions options, boolean startFromLog) {
    LoggedCook logged = LoggedCook.ofFirstStage(file, log, options);
    Cook cook = firstStage(logged, startFromLog);
    Readout readout = logged.readout();
    List<String> assumptions = Assumptions.of(logged, startFromLog, cook.cut());
    return new Replay(logged, startFromLog, cook, readout, readout.words(), assumptions);
  }

  /**
   * Prepares the comparison of another computation.
   *
   * @param startFromLog whether the cut starts in it with the log's first core reading
   * @param cook that lasts to the log's last core reading at least
   * @param probe of that cook which the core readings are from
   * @param assumptions inputs that the log does not hold, in words
   * @throws IllegalArgumentException as above, but for the turns
   */
  public static Replay of(
      CookFile file,
      CookLog log,
      ComparisonOptions options,
      boolean startFromLog,
      Cook cook,
      String probe,
      List<String> assumptions) {
    LoggedCook logged = LoggedCook.of(file, log, options);
    String words =
        logged.readout().isProbe() ? logged.readout().words() : "a probe meant for the middle";
    return new Replay(logged, startFromLog, cook, Readout.of(cook, probe), words, assumptions);
  }

  /** The cook to compute. */
  public Cook cook() {
    return cook;
  }

  /** Readings beside what a result of the cook shows. */
  public List<Comparison> pairs(SimulationResult result) {
    return logged.pairs(result, shownBy);
  }

  /** Comparison of its result with the log. */
  public ReplayResult compare(SimulationResult result) {
    double stated = logged.file().cook().cut().shape().halfThickness();
    double size = cook.cut().shape().halfThickness() / stated;
    return new ReplayResult(
        logged.compared(result, size, shownBy, words),
        logged.chamber(),
        logged.hasChamber(),
        cook.cut().startTemperature(),
        startFromLog,
        assumptions,
        result,
        Optional.empty());
  }

  private static Cook firstStage(LoggedCook logged, boolean startFromLog) {
    CookFile file = logged.file();
    Cut stated = file.cook().cut();
    Cut cut =
        startFromLog ? new Cut(stated.shape(), stated.material(), logged.firstReading()) : stated;
    StageSetup first = file.stages().get(0);
    SurfaceLaw upper = law(logged, first.upper());
    SurfaceLaw lower = first.lower().equals(first.upper()) ? upper : law(logged, first.lower());
    Stage stage = new Stage("logged cook", upper, lower, StageEnd.after(logged.end()));
    return new Cook(cut, List.of(stage), file.cook().probes());
  }

  private static SurfaceLaw law(LoggedCook logged, FaceSetup face) {
    double pressure = logged.file().pressure();
    return logged.hasChamber() ? face.law(logged.air(face.air()), pressure) : face.law(pressure);
  }
}
