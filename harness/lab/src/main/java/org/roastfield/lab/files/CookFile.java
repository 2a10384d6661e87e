package org.roastfield.lab.files;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.material.Moisture;
import org.roastfield.core.outcome.Juice;
import org.roastfield.core.shape.Taper;

/**
 * A cook file, read and checked.
 *
 * @param fileName last part of the path, never a folder
 * @param name of the cook
 * @param starts clock time at which the cut goes on
 * @param madeUp whether the file says that its numbers are invented
 * @param food kind of food
 * @param cook for the core
 * @param pressure of the air [Pa], from the altitude
 * @param extent size of the whole cut; empty for a taper, and if the file does not state the length
 *     of a cylinder or slab
 * @param taper whose thickest station {@code cook} computes, if the cut is one
 * @param facts statements about the cook and its cut, for display
 * @param stages in order
 * @param notes what the file says beside
 * @param statements all that the file says
 */
public record CookFile(
    String fileName,
    String name,
    LocalDateTime starts,
    boolean madeUp,
    Food food,
    Cook cook,
    double pressure,
    Optional<Extent> extent,
    Optional<Taper> taper,
    List<Fact> facts,
    List<StageSetup> stages,
    CookNotes notes,
    Statement.Keys statements) {

  /** Copies the lists. */
  public CookFile {
    facts = List.copyOf(facts);
    stages = List.copyOf(stages);
  }

  /**
   * Water of the cut's food, of which nothing drips if it is a vegetable: as the material says,
   * else as in lean meat of its density.
   */
  public Moisture moisture() {
    Moisture moisture = Juice.moisture(cook.cut().material());
    return food == Food.VEGETABLE
        ? new Moisture(moisture.content(), moisture.share(), Optional.empty())
        : moisture;
  }

  /**
   * Weight of the cut, as stated or by its sizes, of a taper always by these [kg]; empty if the
   * file does not state them.
   */
  public OptionalDouble mass() {
    return Stream.concat(
            extent.stream().map(Extent::mass),
            taper.stream().map(piece -> piece.volume() * cook.cut().material().density()))
        .mapToDouble(mass -> mass)
        .findFirst();
  }

  /** Clock time, to the nearest second, at a time since the start [s]. */
  public LocalDateTime clockAt(double time) {
    return starts.plusSeconds(Math.round(time));
  }
}
