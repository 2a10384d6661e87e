package org.roastfield.core.outcome;

import java.util.List;
import java.util.Optional;
import org.roastfield.core.simulation.SimulationResult;

/**
 * What is read off a computed cook, in one value.
 *
 * @param lastCore core at the end of the cook [K]
 * @param highestCore highest core [K]
 * @param highest highest temperatures over the cross-section [K]
 * @param browning of the surface, or the upper face
 * @param juice water lost, in shares of the raw mass
 * @param tenderness of muscle, connective tissue and fat
 * @param colour of red meat; empty for other food
 * @param safety how the cook stands to published minima, for each kind that the cut may be
 */
public record CutOutcomes(
    double lastCore,
    double highestCore,
    CrossSection highest,
    Browning browning,
    Juice juice,
    Tenderness tenderness,
    Optional<Colour> colour,
    List<Safety> safety) {

  /** Copies the list. */
  public CutOutcomes {
    safety = List.copyOf(safety);
  }

  /**
   * Of a computed cook, as a body without ends.
   *
   * @param kinds that the cut may be; none for food that minima for meat do not bear on
   * @param pigment of red meat
   */
  public static CutOutcomes of(
      SimulationResult result, List<CutKind> kinds, Optional<FirstOrder> pigment) {
    return of(CookedCut.of(result), result, kinds, pigment);
  }

  /** The same of a cook whose places have been read: {@code cut} is that of {@code result}. */
  public static CutOutcomes of(
      CookedCut cut, SimulationResult result, List<CutKind> kinds, Optional<FirstOrder> pigment) {
    return new CutOutcomes(
        cut.core().last(),
        cut.core().highest(),
        cut.highest(),
        Browning.of(cut, result),
        Juice.of(result),
        Tenderness.of(cut),
        pigment.map(kinetics -> Colour.of(cut, kinetics)),
        kinds.stream().map(cut::safety).toList());
  }

  /** The same with the juice of a whole cut, or of meat that holds its water otherwise. */
  public CutOutcomes withJuice(Juice other) {
    return new CutOutcomes(
        lastCore, highestCore, highest, browning, other, tenderness, colour, safety);
  }

  /** The coldest place's highest temperature [K]. */
  public double coldest() {
    return highest.least();
  }

  /** By the names of a scale, the ring beyond the band of the coldest place. */
  public Doneness doneness(DonenessScale scale) {
    return Doneness.of(scale, highest);
  }

  /**
   * By the names of a scale.
   *
   * @param target index of the band beyond which a ring counts
   */
  public Doneness doneness(DonenessScale scale, int target) {
    return Doneness.of(scale, highest, target);
  }
}
