package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.TemperatureProfile;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.files.CookFile;

/** The figures of a computed cook. */
final class CookPictures {

  private static final double MILLIMETRES = 1000;
  private static final int TABLE_ROWS = 24;
  private static final int CLOSE_TABLE_ROWS = 16;
  private static final int DEPTH_COLUMNS = 6;
  private static final int DEPTH_ROWS = 10;
  private static final int MOST_PROFILES = 8;

  /** Probes that get far hotter than the core would flatten a picture of the core [K]. */
  private static final double NEAR_CORE = 15;

  private final SimulationResult result;
  private final TimeBase base;
  private final List<Span> stages;
  private final List<Double> times;
  private final List<Curve> curves;
  private final Optional<TraceFigure.Mark> mark;

  CookPictures(CookFile file, SimulationResult result) {
    if (result.stages().isEmpty()) {
      throw new IllegalArgumentException("result must have a completed stage, had none");
    }
    this.result = result;
    this.base = TimeBase.clock(file.starts());
    this.stages = CookSampling.spans(file, result.stages());
    this.times = CookSampling.times(stages, result.stages(), result.endTime());
    this.curves = curves();
    this.mark = CorePeak.of(result).map(peak -> peak.mark(base));
  }

  /** All traces over the whole cook. */
  Figure whole() {
    TraceFigure figure = new TraceFigure(curves, stages, mark, base);
    Span seen = new Span("", 0, result.endTime());
    String caption =
        "Core"
            + (result.cook().isSymmetric() ? ", surface" : ", both faces")
            + (result.cook().probes().isEmpty() ? "" : " and probes")
            + ". Stages: "
            + StageStrip.inWords(stages, base)
            + ".";
    return new Figure(
        "Temperature over time",
        caption,
        List.of(figure.panel(seen, "Temperature over time")),
        List.of(figure.table(seen, "Temperatures at round times and stage ends, °C", TABLE_ROWS)));
  }

  /** The core from shortly before the end of the longest stage, if what follows is short. */
  Optional<Figure> close() {
    return end().map(this::close);
  }

  private Figure close(Span seen) {
    Span longest = longest();
    String title = "The core after stage " + (1 + stages.indexOf(longest)) + ", " + longest.name();
    TraceFigure figure = new TraceFigure(nearCore(seen), stages, mark, base);
    return new Figure(
        title,
        "The same from shortly before the end of that stage, on a scale of its own: how far the core"
            + " rises after the heat is taken away.",
        List.of(figure.panel(seen, title)),
        List.of(figure.table(seen, "Core at round times, °C", CLOSE_TABLE_ROWS)));
  }

  /**
   * From shortly before the end of the longest stage, if what follows would look cramped in a
   * picture of the whole.
   */
  private Optional<Span> end() {
    double after = result.endTime() - longest().end();
    double start = longest().end() - 0.25 * after;
    return after > 0 && start > 0.5 * result.endTime()
        ? Optional.of(new Span("end", start, result.endTime()))
        : Optional.empty();
  }

  private Span longest() {
    return stages.stream().max(Comparator.comparingDouble(Span::duration)).orElseThrow();
  }

  /** Temperature over depth and time. */
  Figure map() {
    String title = "Temperature over depth and time";
    List<Panel> panels = new ArrayList<>();
    Field whole = field(0);
    List<Double> levels = Isotherms.between(whole.lowest(), whole.highest());
    panels.add(new HeatMap(whole, levels, stages, base).panel(title));
    end()
        .ifPresent(
            seen -> {
              HeatMap closer = new HeatMap(field(seen.start()), levels, stages, base);
              panels.add(closer.panel(title + ", the end of the cook closer"));
            });
    return new Figure(
        title,
        "Down is deeper into the cut, from "
            + face()
            + " to the "
            + deepest()
            + ". Darker is hotter; along a line the temperature is the same."
            + (panels.size() > 1 ? " Below, the end of the cook closer." : ""),
        panels,
        List.of(depthTable()));
  }

  /** Temperature over depth at the stage ends, at some of them if there are many. */
  Figure profiles() {
    List<Curve.Role> roles =
        List.of(Curve.Role.FIRST, Curve.Role.SECOND, Curve.Role.THIRD, Curve.Role.FOURTH);
    int every = (stages.size() + MOST_PROFILES - 1) / MOST_PROFILES;
    List<Curve> profiles = new ArrayList<>();
    for (int i = (stages.size() - 1) % every; i < stages.size(); i += every) {
      Curve.Role role = roles.get(profiles.size() % roles.size());
      profiles.add(profile(i + 1 + " " + stages.get(i).name(), role, stages.get(i).end()));
    }
    String title = "Temperature over depth at the end of " + (every == 1 ? "each stage" : "stages");
    ProfileFigure figure =
        new ProfileFigure(profiles, deepest(), ProfileFigure.Quantity.TEMPERATURE);
    return new Figure(
        title,
        "From " + face() + " (left) to the " + deepest() + " (right).",
        List.of(figure.panel(title)),
        List.of(figure.table(title + ", °C")));
  }

  private List<Curve> curves() {
    boolean symmetric = result.cook().isSymmetric();
    List<Curve> all = new ArrayList<>();
    all.add(trace("core", Curve.Role.CORE, result.core()::at));
    String upper = symmetric ? "surface" : "upper face";
    all.add(trace(upper, Curve.Role.UPPER, result.upperSurface()::at));
    if (!symmetric) {
      all.add(trace("lower face", Curve.Role.LOWER, result.lowerSurface()::at));
    }
    for (Probe probe : result.cook().probes()) {
      Curve.Role role =
          all.stream().anyMatch(curve -> curve.role() == Curve.Role.PROBE_ONE)
              ? Curve.Role.PROBE_TWO
              : Curve.Role.PROBE_ONE;
      all.add(trace(probe.name(), role, result.probe(probe)::at));
    }
    return List.copyOf(all);
  }

  private List<Curve> nearCore(Span seen) {
    double highest = curves.get(0).between(seen.start(), seen.end()).values().max().orElseThrow();
    return curves.stream()
        .filter(curve -> curve.role() != Curve.Role.UPPER && curve.role() != Curve.Role.LOWER)
        .filter(
            curve ->
                curve.between(seen.start(), seen.end()).values().max().orElseThrow()
                    < highest + NEAR_CORE)
        .toList();
  }

  private Curve trace(String name, Curve.Role role, DoubleUnaryOperator kelvin) {
    List<Point> points =
        times.stream()
            .map(time -> new Point(time, Temperatures.toCelsius(kelvin.applyAsDouble(time))))
            .toList();
    return new Curve(name, role, points);
  }

  private Curve profile(String name, Curve.Role role, double time) {
    TemperatureProfile profile = result.profile(time);
    List<Point> points =
        depths().stream().map(depth -> new Point(depth, celsius(profile, depth))).toList();
    return new Curve(name, role, points);
  }

  private Field field(double from) {
    List<Double> depths = depths();
    List<Double> seen = times.stream().filter(time -> time >= from).toList();
    double[][] values = new double[seen.size()][depths.size()];
    for (int i = 0; i < seen.size(); i++) {
      TemperatureProfile profile = result.profile(seen.get(i));
      for (int j = 0; j < depths.size(); j++) {
        values[i][j] = celsius(profile, depths.get(j));
      }
    }
    return Field.of(array(seen), array(depths), values);
  }

  private Table depthTable() {
    TreeSet<Double> columns = new TreeSet<>();
    for (int i = 0; i <= DEPTH_COLUMNS; i++) {
      columns.add(Math.min(result.endTime(), result.endTime() * i / DEPTH_COLUMNS));
    }
    stages.forEach(stage -> columns.add(stage.end()));
    List<String> headings = new ArrayList<>(List.of("depth, mm"));
    columns.forEach(time -> headings.add(base.text(time)));
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i <= DEPTH_ROWS; i++) {
      double depth = deepestMillimetres() * i / DEPTH_ROWS;
      rows.add(
          Table.row(
              Numbers.decimal(depth, 1),
              columns.stream()
                  .map(time -> Numbers.decimal(celsius(result.profile(time), depth), 1))
                  .toList()));
    }
    return Table.ofNumbers(
        "Temperature by depth (down) and clock time (across), °C", headings, rows);
  }

  private List<Double> depths() {
    return CookSampling.depths(deepestMillimetres(), !result.cook().isSymmetric());
  }

  private double deepestMillimetres() {
    double half = result.cook().cut().shape().halfThickness() * MILLIMETRES;
    return result.cook().isSymmetric() ? half : 2 * half;
  }

  private String face() {
    return result.cook().isSymmetric() ? "the surface" : "the upper face";
  }

  private String deepest() {
    return result.cook().isSymmetric() ? "middle" : "lower face";
  }

  private double celsius(TemperatureProfile profile, double depth) {
    double half = result.cook().cut().shape().halfThickness();
    double lowest = profile.position(0);
    double position = Math.max(lowest, Math.min(half, half - depth / MILLIMETRES));
    return Temperatures.toCelsius(profile.at(position));
  }

  private static double[] array(List<Double> numbers) {
    return numbers.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
