package org.roastfield.core.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.integration.CookIntegration;
import org.roastfield.core.integration.Trajectory;
import org.roastfield.core.material.Moisture;
import org.roastfield.core.surface.MovingAir;
import org.roastfield.core.surface.RememberingLaw;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/**
 * What a reader of a result must know: where the model was used beyond what it knows, and end rules
 * that were met before they began.
 */
final class Notes {

  /**
   * Share of a cut's mass beyond which a given wetness has surely ceased to hold; roasts lose 20-30
   * % in all.
   */
  private static final double LARGEST_LOSS = 0.3;

  /** Boiling at sea level [K]; the core's pressure is not known here. */
  private static final double BOILING = Temperatures.ZERO_CELSIUS + 100;

  /** Both by model.md, section 6. */
  private static final String DRYING_IN_HOT_AIR =
      "Evaporation alone comes to what such roasts lose with their juice.";

  private static final String WET_IN_HOT_AIR =
      "With a constant wetness a roast of 12 cm loses half its weight by the estimate, where 20-29 %"
          + " are measured, and takes too long: a face that dries is nearer (wetness: drying in a"
          + " cook file).";

  /** Share of the water by which round-off may take more than there is. */
  private static final double ROUND_OFF = 1e-12;

  private static final String WATER = "water";

  private static final String GIVEN_WETNESS =
      "The wetness of each stage is a given number here, while a real surface dries: lower it, shorten the stage,"
          + " or let the face dry";

  private static final String ASSUMED_SUPPLY =
      "How long the inside feeds a face that dries is assumed there";

  private static final String THICK_CRUST =
      "A crust this thick boils off water that had left it before: the estimate fails, so shorten the stage";

  private Notes() {}

  static List<Note> of(
      Cook cook, CookIntegration integration, Trajectory trajectory, List<StageResult> stages) {
    List<Note> notes = new ArrayList<>();
    addRange(cook, integration, notes);
    if (!addTooMuchWater(cook, integration, trajectory, notes)) {
      addWater(cook, integration, notes);
    }
    addBoiling(integration, notes);
    addMovingAir(cook, stages, notes);
    for (int i = 0; i < stages.size(); i++) {
      addPassed(cook.stages().get(i), stages.get(i), notes);
    }
    return notes;
  }

  private static void addRange(Cook cook, CookIntegration integration, List<Note> notes) {
    double lowest = cook.cut().material().lowest();
    double highest = cook.cut().material().highest();
    if (integration.hottest() > highest || integration.coldest() < lowest) {
      add(
          notes,
          "property range",
          "cell temperatures ran from %.1f to %.1f °C; the properties of %s are known from %.1f to %.1f °C and"
              + " were held constant outside for %.0f s",
          Temperatures.toCelsius(integration.coldest()),
          Temperatures.toCelsius(integration.hottest()),
          cook.cut().material().name(),
          Temperatures.toCelsius(lowest),
          Temperatures.toCelsius(highest),
          integration.timeOutside());
    }
  }

  private static void addWater(Cook cook, CookIntegration integration, List<Note> notes) {
    Cut cut = cook.cut();
    Moisture moisture = cut.material().moisture();
    double density = moisture.isKnown() ? moisture.rawDensity() : cut.material().density();
    double perArea = density * cut.shape().volumePerArea();
    double lost = integration.evaporatedUpper();
    if (!cook.isSymmetric()) {
      lost = 0.5 * (lost + integration.evaporatedLower());
    }
    if (lost > LARGEST_LOSS * perArea) {
      boolean dries = dries(integration, true) || dries(integration, false);
      add(
          notes,
          WATER,
          "%.0f %% of the cut's mass evaporated; roasts lose 20 to 30 %%. %s",
          100 * lost / perArea,
          dries ? ASSUMED_SUPPLY : GIVEN_WETNESS);
    }
  }

  /** Whether more water left a cut by the estimate than is in it, which is then noted. */
  private static boolean addTooMuchWater(
      Cook cook, CookIntegration integration, Trajectory trajectory, List<Note> notes) {
    Moisture moisture = cook.cut().material().moisture();
    double depth = cook.cut().shape().volumePerArea();
    double drawn =
        Math.max(integration.carriedWater(true).drawn(), integration.carriedWater(false).drawn());
    if (!moisture.isKnown() || drawn <= depth * moisture.kept()) {
      return false;
    }
    WaterBalance water = WaterBalance.of(cook, integration, trajectory, moisture);
    boolean above = addTooMuch(water.upper(), integration.carriedWater(true).held(), notes);
    return addTooMuch(water.lower(), integration.carriedWater(false).held(), notes) || above;
  }

  private static boolean addTooMuch(WaterAccount account, double held, List<Note> notes) {
    if (account.left() >= -ROUND_OFF * account.stock()) {
      return false;
    }
    add(
        notes,
        WATER,
        "%.1f kg/m² of water left a face, as vapour and drip, of %.1f kg/m² in the cut behind it and on it. %s",
        account.evaporated() + account.dripped(),
        account.stock() + account.poured(),
        account.left() >= held - ROUND_OFF * account.stock() ? THICK_CRUST : GIVEN_WETNESS);
    return true;
  }

  private static boolean dries(CookIntegration integration, boolean upper) {
    return integration.faceWater(upper) != null;
  }

  private static void addBoiling(CookIntegration integration, List<Note> notes) {
    double core = integration.now(integration.reading(Probe.CORE));
    if (core > BOILING) {
      add(
          notes,
          "boiling inside",
          "the core ended at %.1f °C; water that boils inside is not represented, so moist food stays near 100 °C there",
          Temperatures.toCelsius(core));
    }
  }

  private static void addMovingAir(Cook cook, List<StageResult> stages, List<Note> notes) {
    List<String> names = new ArrayList<>();
    boolean drying = true;
    for (int i = 0; i < stages.size(); i++) {
      Stage stage = cook.stages().get(i);
      for (SurfaceLaw law : List.of(stage.upper(), stage.lower())) {
        if (isBeyond(law, stages.get(i))) {
          drying &= law instanceof RememberingLaw;
          if (!names.contains(stage.name())) {
            names.add(stage.name());
          }
        }
      }
    }
    if (!names.isEmpty()) {
      add(
          notes,
          Note.HOT_MOVING_AIR,
          "Loss and time of %s are rough: how a face dries in hot air that moves, as in a fan oven,"
              + " is beyond what this model gets right. %s",
          String.join(", ", names),
          drying ? DRYING_IN_HOT_AIR : WET_IN_HOT_AIR);
    }
  }

  private static boolean isBeyond(SurfaceLaw law, StageResult stage) {
    return MovingAir.isBeyondTheModel(law, stage.start())
        || MovingAir.isBeyondTheModel(law, 0.5 * (stage.start() + stage.end()))
        || MovingAir.isBeyondTheModel(law, stage.end());
  }

  private static void addPassed(Stage stage, StageResult result, List<Note> notes) {
    if (result.duration() > 0) {
      return;
    }
    String why =
        stage.end() instanceof StageEnd.At ? "was over before it began" : "was met when it began";
    add(
        notes,
        "stage without length",
        "stage \"%s\" took no time: its end rule, \"%s\", %s",
        stage.name(),
        stage.end().description(),
        why);
  }

  private static void add(List<Note> notes, String subject, String format, Object... numbers) {
    notes.add(new Note(subject, String.format(Locale.ROOT, format, numbers)));
  }
}
