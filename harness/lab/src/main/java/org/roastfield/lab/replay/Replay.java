package org.roastfield.lab.replay;

import java.util.List;
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
 * Nothing is fitted.
 */
public final class Replay {

  private final LoggedCook logged;
  private final boolean startFromLog;
  private final Cook cook;

  private Replay(LoggedCook logged, boolean startFromLog) {
    this.logged = logged;
    this.startFromLog = startFromLog;
    this.cook = buildCook();
  }

  /**
   * Prepares a replay.
   *
   * @param startFromLog whether the log's first core reading is the temperature that the cut starts
   *     with
   * @throws IllegalArgumentException if the log has no usable core channel, none of its readings is
   *     early enough, or it is not clear which probe they are from
   */
  public static Replay of(
      CookFile file, CookLog log, ComparisonOptions options, boolean startFromLog) {
    return new Replay(LoggedCook.of(file, log, options), startFromLog);
  }

  /** The cook to compute. */
  public Cook cook() {
    return cook;
  }

  /** Comparison of its result with the log. */
  public ReplayResult compare(SimulationResult result) {
    return new ReplayResult(
        logged.compared(result, 1),
        logged.chamber(),
        logged.hasChamber(),
        cook.cut().startTemperature(),
        startFromLog,
        Assumptions.of(logged, startFromLog, cook.cut()),
        result);
  }

  private Cook buildCook() {
    CookFile file = logged.file();
    Cut stated = file.cook().cut();
    Cut cut =
        startFromLog ? new Cut(stated.shape(), stated.material(), logged.firstReading()) : stated;
    StageSetup first = file.stages().get(0);
    SurfaceLaw upper = law(first.upper());
    SurfaceLaw lower = first.lower().equals(first.upper()) ? upper : law(first.lower());
    Stage stage = new Stage("logged cook", upper, lower, StageEnd.after(logged.end()));
    return new Cook(cut, List.of(stage), file.cook().probes());
  }

  private SurfaceLaw law(FaceSetup face) {
    double pressure = logged.file().pressure();
    return logged.hasChamber() ? face.law(logged.air(face.air()), pressure) : face.law(pressure);
  }
}
