package org.roastfield.lab.plan;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.plan.Role;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.FaceSetup;
import org.roastfield.lab.files.StageSetup;

/** What the stages of a cook file are for. */
public final class StageRoles {

  /** Air below which a stage after the heat is a rest [K]: 50 °C, below any hot cooking. */
  private static final double REST = 323.15;

  /** Metal at least as hot sears [K]: 150 °C, where browning is quick; assumed. */
  private static final double SEARING_METAL = 423.15;

  /** Air at least as hot sears [K]: 200 °C; assumed. */
  private static final double SEARING_AIR = 473.15;

  private final CookFile file;

  private StageRoles(CookFile file) {
    this.file = file;
  }

  /**
   * Roles of the stages of the core's cook, in order.
   *
   * @throws UnplannableException if they cannot be planned, with what to change
   */
  public static List<Role> of(CookFile file) {
    return new StageRoles(file).roles();
  }

  /** By how much gentle heat may be hotter than stated before it sears [K]. */
  static double room(CookFile file, List<Role> roles) {
    double hottest = 0;
    for (StageSetup stage : file.stages()) {
      if (roles.get(stage.firstStage()) == Role.GENTLE) {
        hottest = Math.max(hottest, Math.max(stage.upper().air(), stage.lower().air()));
      }
    }
    return Math.max(0, SEARING_AIR - hottest);
  }

  private List<Role> roles() {
    int gentle = gentle();
    int rest = firstRest(gentle);
    List<Role> roles = new ArrayList<>();
    for (int i = 0; i < file.stages().size(); i++) {
      Role role = role(i, gentle, rest);
      for (int leg = 0; leg < file.stages().get(i).stageCount(); leg++) {
        roles.add(role);
      }
    }
    return roles;
  }

  private Role role(int stage, int gentle, int rest) {
    if (stage >= rest) {
      return stage == rest ? Role.REST : Role.HOLD;
    }
    if (stage == gentle) {
      return Role.GENTLE;
    }
    if (isSear(file.stages().get(stage))) {
      return Role.SEAR;
    }
    return stage < gentle ? Role.GENTLE : Role.PAUSE;
  }

  /** The last stage before the rest that waits for a temperature inside and does not sear. */
  private int gentle() {
    for (int i = file.stages().size() - 1; i >= 0; i--) {
      StageSetup setup = file.stages().get(i);
      if (!isSear(setup) && waits(setup)) {
        return i;
      }
    }
    throw new UnplannableException(
        "no stage of gentle heat ends by a temperature inside the cut: give one the end {core: …,"
            + " at-latest: …}, with metal below 150 °C and air below 200 °C");
  }

  private boolean waits(StageSetup setup) {
    Stage last = file.cook().stages().get(setup.lastStage());
    return last.end() instanceof StageEnd.Rises rises && !rises.probe().equals(Probe.SURFACE);
  }

  private int firstRest(int gentle) {
    for (int i = gentle + 1; i < file.stages().size(); i++) {
      StageSetup setup = file.stages().get(i);
      if (setup.upper().air() < REST && !isSear(setup)) {
        return i;
      }
    }
    throw new UnplannableException(
        "no rest follows the gentle heat: add a stage in air below 50 °C, before any hold");
  }

  private static boolean isSear(StageSetup stage) {
    return isSear(stage.upper()) || isSear(stage.lower());
  }

  private static boolean isSear(FaceSetup face) {
    boolean metal =
        face.contact().map(contact -> contact.plateTemperature() >= SEARING_METAL).orElse(false);
    return metal || face.bed().isPresent() || face.air() >= SEARING_AIR;
  }
}
