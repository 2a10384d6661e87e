package org.roastfield.lab.timeline;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.roastfield.core.outcome.Finding;
import org.roastfield.core.outcome.Safety;
import org.roastfield.core.simulation.Note;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.FaceSetup;
import org.roastfield.lab.files.Food;

/** The cautions that stand beside the numbers of a cook. None of them permits anything. */
public final class Cautions {

  /** Subject of how a cook stands to published minima. */
  public static final String MINIMUM = "Published minimum";

  private static final Caution ESTIMATE =
      new Caution(
          "Estimates",
          "Every temperature and time here is computed, not measured. Pull, carryover and peak depend"
              + " on numbers that are rarely known well: check with a thermometer you trust, in the"
              + " middle of the thickest part.",
          "");

  private static final Caution OPENED_MEAT =
      new Caution(
          "Opened meat",
          "Meat that was boned and rolled, injected, mechanically tenderised or ground can carry"
              + " bacteria inside: food codes ask more of it than of an intact cut.",
          "");

  private static final Caution CHARCOAL =
      new Caution(
          "Charcoal",
          "Glowing coals give off carbon monoxide, which has no smell and kills: burn them outdoors"
              + " only, and never bring them inside to go out.",
          "");

  private static final Caution CHARRING =
      new Caution(
          "Charring",
          "The face gets to 230 °C or more by the estimate: it may char, and fat on it may burn.",
          "");

  private static final Caution HOT_METAL =
      new Caution(
          "Hot grate",
          "Fat on a hot grate or over coals flares up, and the grate stays hot long after the fire:"
              + " heatproof gloves, long tongs, and the lid within reach.",
          "");

  /** For plans in which a cut waits for its sear. */
  public static final Caution WAITING =
      new Caution(
          "Waiting for the sear",
          "A cut that waits is warm, which bacteria like, and nothing heats it: covered, on something"
              + " clean that held nothing raw, no longer than the plan says, and within what the local"
              + " food code allows for food between hot and cold.",
          "");

  private Cautions() {}

  /**
   * For plans in which a cut is kept warm after its rest.
   *
   * @param sentence about how warm, or empty
   */
  public static Caution kept(String sentence) {
    return new Caution(
        "Kept warm",
        sentence
            + "Food that is kept between hot and cold grows bacteria: no longer than the plan says, as"
            + " hot as the local food code asks for, with a thermometer that says so.",
        "FDA Food Code 3-501.16, hot holding at 135 °F or above");
  }

  /** The same, for a computation whose inside is not shown. */
  public static List<Caution> of(CookFile file, SimulationResult result, TemperatureScale scale) {
    return of(file, Inside.of(file, result), scale);
  }

  /**
   * Cautions for a cook.
   *
   * @param file the cook
   * @param inside what its computation came to
   * @param scale in which to state temperatures
   */
  public static List<Caution> of(CookFile file, Inside inside, TemperatureScale scale) {
    List<Caution> cautions = new ArrayList<>();
    cautions.add(ESTIMATE);
    cautions.addAll(findings(inside, scale));
    if (inside.outcomes().browning().mayChar()) {
      cautions.add(CHARRING);
    }
    inside.notes().stream()
        .filter(Cautions::says)
        .forEach(note -> cautions.add(new Caution("Hot moving air", note.text(), "")));
    return withThoseOf(file, cautions);
  }

  /**
   * Cautions for a cook whose computation does not come to its end, so that nothing can be held
   * against published minima.
   *
   * @param why what is known of it instead, in sentences
   */
  public static List<Caution> withoutResult(CookFile file, String why) {
    List<Caution> cautions = new ArrayList<>();
    cautions.add(ESTIMATE);
    cautions.add(new Caution(MINIMUM, why + " " + Finding.DEFERENCE, ""));
    return withThoseOf(file, cautions);
  }

  /** With those that bear on a cook whatever comes of it. */
  private static List<Caution> withThoseOf(CookFile file, List<Caution> cautions) {
    if (mayBeOpened(file)) {
      cautions.add(OPENED_MEAT);
    }
    cautions.add(CHARCOAL);
    if (isOverHeat(file)) {
      cautions.add(HOT_METAL);
    }
    return List.copyOf(cautions);
  }

  /** Whether a note of a result stands among its cautions. */
  public static boolean says(Note note) {
    return note.subject().equals(Note.HOT_MOVING_AIR);
  }

  /** Whether the file does not say that the meat was left whole, so that it may not have been. */
  public static boolean mayBeOpened(CookFile file) {
    return file.food() != Food.VEGETABLE
        && file.food() != Food.POULTRY
        && file.notes().handling().isEmpty();
  }

  /**
   * Findings of all kinds that the food may be, each once; those that share subject, caution and
   * source are one.
   */
  private static List<Caution> findings(Inside inside, TemperatureScale scale) {
    Set<String> seen = new HashSet<>();
    Map<Caution, List<String>> said = new LinkedHashMap<>();
    for (Safety safety : inside.safety()) {
      for (Finding finding : safety.findings()) {
        if (seen.add(finding.minimum())) {
          Caution rest = new Caution(subject(finding), finding.caution(), finding.source());
          said.computeIfAbsent(rest, key -> new ArrayList<>())
              .add(FindingWords.of(finding, safety.kind(), inside, scale));
        }
      }
    }
    if (seen.isEmpty()) {
      String text = "No minimum for meat is applied to a vegetable. " + Finding.DEFERENCE;
      return List.of(new Caution(MINIMUM, text, ""));
    }
    List<Caution> cautions = new ArrayList<>();
    said.forEach(
        (rest, firsts) -> {
          String text = String.join(" ", firsts) + " " + rest.text() + " " + Finding.DEFERENCE;
          cautions.add(new Caution(rest.subject(), text, rest.source()));
        });
    return cautions;
  }

  private static String subject(Finding finding) {
    return switch (finding.unit()) {
      case KELVIN -> MINIMUM;
      case LOG -> "Hold times";
      case SECOND ->
          finding.met()
              ? "Rise and fall"
              : finding.minimum().startsWith("rise") ? "Slow rise" : "Slow fall";
    };
  }

  private static boolean isOverHeat(CookFile file) {
    return file.stages().stream()
        .anyMatch(stage -> isOverHeat(stage.upper()) || isOverHeat(stage.lower()));
  }

  private static boolean isOverHeat(FaceSetup face) {
    return face.contact().isPresent() || face.bed().isPresent();
  }
}
