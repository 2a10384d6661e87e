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

  private Notes() {}

  static List<Note> of(Cook cook, CookIntegration integration, List<StageResult> stages) {
    List<Note> notes = new ArrayList<>();
    addRange(cook, integration, notes);
    addWater(cook, integration, notes);
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
    double perArea = cut.material().density() * cut.shape().volumePerArea();
    double lost = integration.evaporatedUpper();
    if (!cook.isSymmetric()) {
      lost = 0.5 * (lost + integration.evaporatedLower());
    }
    if (lost > LARGEST_LOSS * perArea) {
      add(
          notes,
          "water",
          "%.0f %% of the cut's mass evaporated; roasts lose 20 to 30 %%. The wetness of each stage is a given number here, while a"
              + " real surface dries: lower it, or shorten the stage",
          100 * lost / perArea);
    }
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
