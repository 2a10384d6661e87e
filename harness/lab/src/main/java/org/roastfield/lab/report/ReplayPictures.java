package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.files.LogChannel;
import org.roastfield.lab.replay.ByProfile;
import org.roastfield.lab.replay.Comparison;
import org.roastfield.lab.replay.ReplayResult;

/**
 * The figure of a replayed log: core, error and surroundings above one another over the same time.
 */
final class ReplayPictures {

  private static final double RING_EVERY = 4.5;
  private static final int MOST_ROWS = 48;
  private static final double LOW = 0.6;

  private final ReplayResult replay;
  private final TimeBase base = TimeBase.elapsed();
  private final Range across;
  private final Curve computed;
  private final Curve measured;
  private final Curve error;
  private final Curve chamber;

  ReplayPictures(ReplayResult replay) {
    this.replay = replay;
    this.across = across(replay.core());
    this.computed = curve("computed", Curve.Role.CORE, c -> celsius(c.computed()));
    this.measured = curve("measured", Curve.Role.UPPER, c -> celsius(c.measured()));
    this.error = curve("error", Curve.Role.ERROR, Comparison::error);
    this.chamber = chamber(replay.chamber());
  }

  /** The figure. */
  Figure figure() {
    List<Panel> panels = new ArrayList<>();
    panels.add(Panel.drawn(Layout.withoutStages(), this::core));
    panels.add(Panel.drawn(Layout.low(LOW), this::error));
    if (!chamber.points().isEmpty()) {
      panels.add(Panel.drawn(Layout.low(LOW), this::chamber));
    }
    return new Figure("Core, measured and computed", caption(), panels, List.of(table()));
  }

  private String caption() {
    String surroundings =
        chamber.points().isEmpty()
            ? "The log has no readings of the surroundings."
            : "Below that the logged surroundings that drove the computation.";
    String band =
        replay.profile().isEmpty()
            ? ""
            : " Of ten readings eight are meant to lie in the tinted band, which draws of the"
                + " profile make.";
    return "Rings are readings of the core probe, as many as there is room for; the line is"
        + " computed."
        + band
        + " Below, computed less measured. "
        + surroundings;
  }

  private String core(Layout layout) {
    List<Curve> bounds = bounds();
    List<Curve> all = new ArrayList<>(List.of(computed, measured));
    all.addAll(bounds);
    Range range = Curves.range(all);
    String description =
        "Core temperature over time. "
            + Curves.inWords(measured, base)
            + " "
            + Curves.inWords(computed, base);
    Plot plot = start(layout, "Core temperature, measured and computed", description, range);
    int room = (int) ((layout.plotRight() - layout.plotLeft()) / RING_EVERY);
    if (!bounds.isEmpty()) {
      plot.band(bounds.get(1).points(), bounds.get(0).points());
    }
    plot.points(thinned(measured.points(), room)).curve(computed);
    return plot.frame(base.axisTitle(), "core, °C").names(List.of(computed, measured)).finished();
  }

  private String error(Layout layout) {
    Range range =
        Curves.range(List.of(error, new Curve("", Curve.Role.CORE, List.of(new Point(0, 0)))));
    String description =
        "Computed less measured core temperature over time: bias "
            + Numbers.signed(replay.errors().bias(), 2)
            + " K, root mean square "
            + Numbers.decimal(replay.errors().rms(), 2)
            + " K, worst "
            + Numbers.signed(replay.errors().worst(), 2)
            + " K at "
            + base.text(replay.errors().worstTime())
            + ".";
    Plot plot = start(layout, "Error of the computed core", description, range);
    plot.level("zero", 0).curve(error);
    return plot.frame(base.axisTitle(), "computed less measured, K").finished();
  }

  private String chamber(Layout layout) {
    Range range = Curves.range(List.of(chamber));
    String description = "Logged surroundings over time. " + Curves.inWords(chamber, base);
    Plot plot = start(layout, "Surroundings", description, range);
    plot.curve(chamber);
    return plot.frame(base.axisTitle(), "surroundings, °C").finished();
  }

  private Plot start(Layout layout, String title, String description, Range range) {
    Plot plot = Plot.start(layout, title, description, across, range);
    return plot.rules(
        base.ticks(across.low(), across.high(), layout.mostTicksAcross()),
        Tick.decimal(range.low(), range.high(), layout.mostTicksUp()));
  }

  private Table table() {
    List<Comparison> shown = thinned(replay.core(), MOST_ROWS);
    List<List<String>> rows = new ArrayList<>();
    for (Comparison pair : shown) {
      rows.add(
          List.of(
              base.text(pair.time()),
              Numbers.decimal(chamber.at(pair.time()), 1),
              Numbers.decimal(celsius(pair.measured()), 1),
              Numbers.decimal(celsius(pair.computed()), 1),
              Numbers.signed(pair.error(), 2)));
    }
    String caption =
        "Readings of the core and what was computed, "
            + shown.size()
            + " of "
            + replay.core().size()
            + " readings";
    List<String> headings =
        List.of("h:min", "surroundings, °C", "measured, °C", "computed, °C", "error, K");
    return Table.ofNumbers(caption, headings, rows);
  }

  /** Low and high bound of the band of a profile, as many points as there are readings. */
  private List<Curve> bounds() {
    if (replay.profile().isEmpty()) {
      return List.of();
    }
    List<Point> low = new ArrayList<>();
    List<Point> high = new ArrayList<>();
    for (int i = 0; i < replay.core().size(); i++) {
      ByProfile.Band band = replay.profile().get().band().get(i);
      low.add(new Point(replay.core().get(i).time(), celsius(band.low())));
      high.add(new Point(replay.core().get(i).time(), celsius(band.high())));
    }
    return List.of(new Curve("", Curve.Role.CORE, low), new Curve("", Curve.Role.CORE, high));
  }

  private Curve curve(String name, Curve.Role role, ToDoubleFunction<Comparison> value) {
    return new Curve(
        name,
        role,
        replay.core().stream()
            .map(pair -> new Point(pair.time(), value.applyAsDouble(pair)))
            .toList());
  }

  private Curve chamber(LogChannel channel) {
    List<Point> points =
        IntStream.range(0, channel.size())
            .mapToObj(i -> new Point(channel.time(i), celsius(channel.temperature(i))))
            .toList();
    return new Curve("surroundings", Curve.Role.CHAMBER, points)
        .between(across.low(), across.high());
  }

  private static Range across(List<Comparison> pairs) {
    double start = Math.min(0, pairs.get(0).time());
    double end = pairs.get(pairs.size() - 1).time();
    return new Range(start, Math.max(end, start + 1));
  }

  private static double celsius(double kelvin) {
    return Temperatures.toCelsius(kelvin);
  }

  private static int every(int size, int most) {
    return Math.max(1, (size + most - 1) / most);
  }

  /**
   * At most about {@code most} of the entries, evenly chosen, the first and the last among them.
   */
  private static <T> List<T> thinned(List<T> all, int most) {
    int every = every(all.size(), most);
    TreeSet<Integer> chosen = new TreeSet<>();
    for (int i = 0; i < all.size(); i += every) {
      chosen.add(i);
    }
    chosen.add(all.size() - 1);
    return chosen.stream().map(all::get).toList();
  }
}
