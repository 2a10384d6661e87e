package org.roastfield.lab.synthetic;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.roastfield.core.simulation.FailureReason;
import org.roastfield.core.simulation.Outcome;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.units.Temperatures;

/**
 * Recipe of a cook that never took place: the same recipe makes the same log and the same truth, to
 * the last bit, on every Java virtual machine of version 17 or later.
 *
 * @param id starts with "syn-"
 * @param cut what is cooked
 * @param cooker on what
 * @param setting of the chamber [°C]
 * @param seed of all that is drawn; cooks of one seed share what does not depend on how they depart
 * @param split what the cook is for
 * @param departures in what its truth is another model than the fitted one
 */
public record SyntheticCook(
    String id,
    ScenarioCut cut,
    SyntheticCooker cooker,
    double setting,
    long seed,
    Split split,
    Set<Departure> departures) {

  /** What a cook is for. */
  public enum Split {
    /** Calibrations may see it. */
    FIT("fit"),
    /** Only scores may. */
    HELD_OUT("held-out");

    private final String word;

    Split(String word) {
      this.word = word;
    }

    /** As files write it. */
    public String word() {
      return word;
    }
  }

  /** What came of a recipe. */
  public sealed interface Made permits MadeCook, Failed {}

  /**
   * A cook that could not be computed.
   *
   * @param recipe that failed
   * @param failed why
   */
  public record Failed(SyntheticCook recipe, Outcome.Failed failed) implements Made {}

  private static final double LEAST_SETTING = 60;
  private static final double HIGHEST_SETTING = 250;

  /** Checks the ranges and copies the set. */
  public SyntheticCook {
    if (!id.matches("syn-[a-z0-9-]{1,76}")) {
      throw new IllegalArgumentException(
          "id must be syn- and then lower-case letters, digits and hyphens, was \"" + id + "\"");
    }
    if (!(setting >= LEAST_SETTING && setting <= HIGHEST_SETTING)) {
      throw new IllegalArgumentException(
          "setting must be in [60, 250] degrees Celsius, was " + setting);
    }
    for (Departure departure : departures) {
      if (!cut.allows(departure)) {
        throw new IllegalArgumentException(
            "departures of " + cut.word() + " cannot be " + departure.word());
      }
    }
    EnumSet<Departure> copy = EnumSet.noneOf(Departure.class);
    copy.addAll(departures);
    departures = Collections.unmodifiableSet(copy);
  }

  /**
   * Recipes of cooks on one cooker whose truth is the fitted model; the cuts take turns.
   *
   * @param cooker on what, for instance {@link SyntheticCooker#drawn}
   * @param seed of the first; the others follow
   * @param count how many
   * @param cuts at least one
   */
  public static List<SyntheticCook> on(
      SyntheticCooker cooker, long seed, int count, List<ScenarioCut> cuts) {
    List<SyntheticCook> cooks = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      ScenarioCut cut = cuts.get(i % cuts.size());
      String id = "syn-" + cooker.id() + "-" + Long.toUnsignedString(seed + i, 36);
      cooks.add(new SyntheticCook(id, cut, cooker, cut.setting(), seed + i, Split.FIT, Set.of()));
    }
    return List.copyOf(cooks);
  }

  /** The same with the truth of another model. */
  public SyntheticCook with(Set<Departure> departures) {
    return new SyntheticCook(id, cut, cooker, setting, seed, split, departures);
  }

  /** What is true of it beside its cooker. */
  public TrueValues values() {
    return TrueValues.drawn(seed);
  }

  /**
   * Computes the truth and reads it as its probes would. A core that stands still below the pull
   * temperature for ten hours is given up and seared as it is, so that no draw of the priors is
   * lost.
   */
  public Made make() {
    TrueValues values = values();
    double longest = TrueCook.LONGEST;
    TrueDeparture departure = TrueDeparture.drawn(departures, seed, longest);
    MadeUpChamber chamber =
        MadeUpChamber.of(
            Temperatures.celsius(setting),
            longest,
            cooker.fire(),
            Noise.ofSeed(seed, TrueValues.CHAMBER_STREAM));
    TrueCook truth = new TrueCook(cut, cooker, values, departure, chamber.air());
    Simulator simulator = Simulator.with(truth.settings());
    Outcome outcome = simulator.run(truth.cook());
    if (outcome instanceof Outcome.Failed failed
        && failed.reason() == FailureReason.END_RULE_NOT_MET) {
      outcome = simulator.run(truth.givenUp());
    }
    if (outcome instanceof Outcome.Failed failed) {
      return new Failed(this, failed);
    }
    return new CookMaker(this, values, departure, chamber, truth, outcome.orElseThrow()).made();
  }
}
