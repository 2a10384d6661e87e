package org.roastfield.lab.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.roastfield.core.ensemble.Distribution;
import org.roastfield.core.outcome.CutOutcomes;
import org.roastfield.core.outcome.Doneness;
import org.roastfield.core.outcome.DonenessScale;
import org.roastfield.core.outcome.OutcomeDistributions;
import org.roastfield.core.outcome.Safety;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.files.Food;

/**
 * Outcomes over cooks with drawn inputs.
 *
 * @param asked how many cooks
 * @param computed how many of them were computed to their end, at least 1
 * @param seed of the draws
 * @param rows of 10, 50 and 90 %
 * @param safety findings of the cook as stated, with the share of the drawn ones that meet each
 */
public record Spread(int asked, int computed, long seed, List<Row> rows, List<Safety> safety) {

  /** What a number is. */
  public enum Unit {
    /** [K]. */
    TEMPERATURE("degC"),
    /** [m], shown in mm. */
    LENGTH("mm"),
    /** Shown in percent. */
    SHARE("%"),
    /** Without a unit. */
    INDEX("1");

    private final String inJson;

    Unit(String inJson) {
      this.inJson = inJson;
    }

    /** Unit of {@link #value} in files. */
    public String inJson() {
      return inJson;
    }

    /** Value in that unit. */
    public double value(double si) {
      return switch (this) {
        case TEMPERATURE -> Temperatures.toCelsius(si);
        case LENGTH -> 1000 * si;
        case SHARE -> 100 * si;
        case INDEX -> si;
      };
    }
  }

  /**
   * A number over the cooks.
   *
   * @param subject what it is
   * @param low value that a tenth of the cooks is below
   * @param median value that half of them is below
   * @param high value that nine tenths are below
   */
  public record Row(String subject, Unit unit, double low, double median, double high) {

    /** The three in words, with the unit once. */
    public String text(TemperatureScale scale) {
      return String.format(
          Locale.ROOT,
          "%.1f / %.1f / %.1f%s",
          shown(low, scale),
          shown(median, scale),
          shown(high, scale),
          sign(scale));
    }

    private String sign(TemperatureScale scale) {
      return switch (unit) {
        case TEMPERATURE -> " " + scale.unit();
        case LENGTH -> " mm";
        case SHARE -> " %";
        case INDEX -> "";
      };
    }

    private double shown(double value, TemperatureScale scale) {
      return unit == Unit.TEMPERATURE ? scale.value(value) : unit.value(value);
    }
  }

  /** Share below which a band of a scale is not worth a row. */
  private static final double TRACE = 0.0005;

  /** Copies the lists. */
  public Spread {
    rows = List.copyOf(rows);
    safety = List.copyOf(safety);
  }

  /**
   * Over cooks with drawn inputs.
   *
   * @param inside of the cook as stated
   * @param asked how many cooks were asked for
   * @param members those that were computed
   * @throws IllegalArgumentException if none was
   */
  static Spread of(Food food, Inside inside, int asked, long seed, List<CutOutcomes> members) {
    OutcomeDistributions all = OutcomeDistributions.of(members);
    List<Row> rows = new ArrayList<>();
    rows.add(row("highest core", Unit.TEMPERATURE, all.highestCore()));
    rows.add(row("core at the end", Unit.TEMPERATURE, all.lastCore()));
    for (Doneness doneness : inside.doneness()) {
      bands(doneness, all, rows);
    }
    rows.add(row("browning index", Unit.INDEX, all.browning()));
    if (food != Food.VEGETABLE) {
      rows.add(row("lost of the raw mass", Unit.SHARE, all.loss()));
      rows.add(row("actin hardened", Unit.SHARE, all.actin()));
    }
    return new Spread(asked, members.size(), seed, rows, all.chances(inside.outcomes().safety()));
  }

  private static void bands(Doneness doneness, OutcomeDistributions all, List<Row> rows) {
    DonenessScale scale = doneness.scale();
    String name = scale.name() + ", ";
    for (int i = 0; i < scale.bands().size(); i++) {
      Distribution share = all.share(scale, i);
      if (share.quantile(0.9) > TRACE) {
        rows.add(row(name + scale.bands().get(i).name(), Unit.SHARE, share));
      }
    }
    rows.add(
        row(
            name + Inside.ringName(doneness),
            Unit.LENGTH,
            all.ringBeyond(scale, doneness.target())));
  }

  private static Row row(String subject, Unit unit, Distribution of) {
    return new Row(subject, unit, of.quantile(0.1), of.median(), of.quantile(0.9));
  }

  /** How many cooks, and of what, in one sentence. */
  public String words() {
    String all =
        computed == asked
            ? "All were computed."
            : computed + " were computed; the others are left out.";
    return asked
        + " cooks whose inputs were drawn around the stated ones, in air that strays, by spreads that"
        + " are assumed (seed "
        + seed
        + "). "
        + all;
  }
}
