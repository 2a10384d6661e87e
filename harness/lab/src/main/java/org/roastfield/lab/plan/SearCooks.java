package org.roastfield.lab.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.plan.PlannedCook;
import org.roastfield.core.plan.Role;
import org.roastfield.core.plan.SearPlanner;
import org.roastfield.core.shape.Slab;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.StageSetup;

/**
 * The cook of a file with sears of other heat, and with more of its face on their metal.
 *
 * @param file of the cook
 * @param roles of its stages
 * @param display the probe that is read
 */
record SearCooks(CookFile file, List<Role> roles, Probe display) {

  /** Copies the list. */
  SearCooks {
    roles = List.copyOf(roles);
  }

  /** How the cut lies on the metal of its sears. */
  SearTable.Touch touch() {
    List<StageSetup> parts = file.stages().stream().filter(this::touchesWithAPart).toList();
    if (parts.isEmpty()) {
      return SearTable.Touch.WHOLE;
    }
    boolean slab = file.cook().cut().shape() instanceof Slab;
    boolean still = parts.stream().anyMatch(stage -> stage.free().equals(stage.upper()));
    return still && !slab ? SearTable.Touch.MEAN : SearTable.Touch.PART;
  }

  /** The paler of two faces of which one touches nothing is that one. */
  private boolean touchesWithAPart(StageSetup stage) {
    return roles.get(stage.firstStage()) == Role.SEAR
        && Stream.of(stage.upper(), stage.lower()).allMatch(face -> face.contact().isPresent())
        && Stream.of(stage.upper(), stage.lower())
            .anyMatch(face -> face.contact().filter(metal -> metal.share() < 1).isPresent());
  }

  /** With sears so much hotter [K]; empty if there can be none. */
  Optional<PlannedCook> hotter(double kelvin) {
    return new ChangedFile(file, roles).hotterSear(kelvin).map(this::planned);
  }

  /**
   * Tells crusts where a cut touches metal, if a part of a face does, in sears so much hotter [K].
   */
  SearPlanner planner(double kelvin) {
    SearPlanner plain = SearPlanner.withDefaults();
    if (touch() != SearTable.Touch.PART) {
      return plain;
    }
    CookFile all = new ChangedFile(file, roles).touching();
    Optional<CookFile> heated =
        kelvin == 0 ? Optional.of(all) : new ChangedFile(all, roles).hotterSear(kelvin);
    return heated.map(this::planned).map(plain::withTouching).orElse(plain);
  }

  private PlannedCook planned(CookFile other) {
    return PlanChanges.planned(other, roles, display);
  }
}
