package org.roastfield.lab.timeline;

import java.util.List;
import java.util.Optional;
import org.roastfield.core.material.Moisture;
import org.roastfield.core.material.WaterHolding;
import org.roastfield.core.outcome.CookedCut;
import org.roastfield.core.outcome.CutKind;
import org.roastfield.core.outcome.CutOutcomes;
import org.roastfield.core.outcome.Doneness;
import org.roastfield.core.outcome.DonenessScale;
import org.roastfield.core.outcome.FirstOrder;
import org.roastfield.core.outcome.Juice;
import org.roastfield.core.outcome.PublishedMinimum;
import org.roastfield.core.outcome.Safety;
import org.roastfield.core.outcome.Status;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.simulation.Note;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.Extent;
import org.roastfield.lab.files.Food;

/**
 * What a computed cut is like inside.
 *
 * @param cut the computed cook at the places of its grid
 * @param outcomes all that was read off the cook
 * @param doneness one for each scale that bears on the food, never mixed
 * @param numbers everything else
 * @param spread the same over cooks with drawn inputs, if they were computed
 * @param notes what a reader of the computation must know
 */
public record Inside(
    CookedCut cut,
    CutOutcomes outcomes,
    List<Doneness> doneness,
    List<Line> numbers,
    Optional<Spread> spread,
    List<Note> notes) {

  /**
   * A number about the inside.
   *
   * @param subject what it is
   * @param text the number with its unit
   * @param status what it rests on
   * @param source in words, or empty
   */
  public record Line(String subject, String text, Status status, String source) {}

  /** Copies the lists. */
  public Inside {
    doneness = List.copyOf(doneness);
    numbers = List.copyOf(numbers);
    notes = List.copyOf(notes);
  }

  /** Of a computed cook; a vegetable has a crust alone. */
  public static Inside of(CookFile file, SimulationResult result) {
    CookedCut cut = CookedCut.of(result);
    CutOutcomes outcomes = outcomes(file, cut, result);
    List<Doneness> doneness = scales(file.food()).stream().map(outcomes::doneness).toList();
    Moisture moisture = file.moisture();
    List<Line> lines =
        InsideLines.of(
            file.food(),
            outcomes,
            juice(file, result, moisture.held(WaterHolding.tighter())),
            juice(file, result, moisture.held(WaterHolding.looser())));
    return new Inside(cut, outcomes, doneness, lines, Optional.empty(), result.notes());
  }

  /** The same beside what drawn inputs make of it. */
  public Inside with(Spread other) {
    return new Inside(cut, outcomes, doneness, numbers, Optional.of(other), notes);
  }

  /** Name of the ring beyond the target band, such as "ring beyond medium". */
  public static String ringName(Doneness doneness) {
    String band = doneness.scale().bands().get(doneness.target()).name();
    return "ring beyond " + (band.startsWith("below ") ? "the coldest band" : band);
  }

  /** How the cook stands to published minima, with chances if there are any. */
  public List<Safety> safety() {
    return spread.map(Spread::safety).orElse(outcomes.safety());
  }

  /**
   * What is read off a computed cook of a file.
   *
   * @param cut of {@code result}
   * @param result of the file's cook, or of one like it with a cut of another size
   */
  static CutOutcomes outcomes(CookFile file, CookedCut cut, SimulationResult result) {
    CutOutcomes outcomes =
        CutOutcomes.of(cut, result, file.food().kinds(file.notes().handling()), pigment(file));
    return outcomes.withJuice(juice(file, result, file.moisture()));
  }

  /**
   * What a cut loses, in shares of its raw mass; by the size of the whole cut, if that is stated.
   *
   * @param moisture of the food
   */
  static Juice juice(CookFile file, SimulationResult result, Moisture moisture) {
    Shape stated = file.cook().cut().shape();
    double size = result.cook().cut().shape().halfThickness() / stated.halfThickness();
    Optional<Extent> extent = file.extent().map(one -> one.scaled(stated, size));
    return extent
        .map(whole -> whole.juice(result, moisture))
        .orElseGet(() -> Juice.of(result, moisture));
  }

  private static Optional<FirstOrder> pigment(CookFile file) {
    return switch (file.food()) {
      case LAMB -> Optional.of(FirstOrder.MYOGLOBIN_OF_LAMB);
      case BEEF, PORK, GROUND, UNSTATED -> Optional.of(FirstOrder.MYOGLOBIN);
      case POULTRY, FISH, VEGETABLE -> Optional.empty();
    };
  }

  private static List<DonenessScale> scales(Food food) {
    return switch (food) {
      case BEEF, LAMB, PORK, UNSTATED -> DonenessScale.NAMED;
      case POULTRY -> List.of(agency(CutKind.POULTRY));
      case FISH -> List.of(agency(CutKind.FISH));
      case GROUND -> List.of(agency(CutKind.GROUND));
      case VEGETABLE -> List.of();
    };
  }

  private static DonenessScale agency(CutKind kind) {
    return DonenessScale.around(PublishedMinimum.of(kind).get(0));
  }
}
