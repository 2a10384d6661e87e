package org.roastfield.lab.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.plan.CoreWish;
import org.roastfield.core.plan.Plan;
import org.roastfield.core.plan.Station;
import org.roastfield.core.shape.Taper;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.timeline.Stations;
import org.roastfield.lab.timeline.TemperatureScale;

/**
 * The thirds of a taper: the thickest is the cut that is planned, the others are stations that go
 * through its stages, each as if it were long.
 */
final class TaperStations {

  private final Taper taper;
  private final List<Taper.Station> places;
  private final List<CoreWishes> wishes;
  private final int thickest;

  private TaperStations(CookFile file, Taper taper) {
    this.taper = taper;
    places = taper.stations(Taper.THIRDS);
    wishes = CoreWishes.ofThirds(file);
    thickest = CoreWishes.thickest(taper);
  }

  /** Of a file whose cut is a taper. */
  static TaperStations of(CookFile file) {
    return new TaperStations(file, file.taper().orElseThrow());
  }

  /** Name of the third that is planned. */
  String planned() {
    return Stations.name(thickest, places);
  }

  /**
   * The other thirds.
   *
   * @param cooks the planned third's cook in air that is so much hotter than stated [K]
   * @param across how much hotter the air is at the first end than at the last [K]
   */
  List<Station> others(DoubleFunction<Function<ParameterPoint, Cook>> cooks, double across) {
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      if (i != thickest) {
        double size =
            places.get(i).crossSection().thickness()
                / places.get(thickest).crossSection().thickness();
        Function<ParameterPoint, Cook> cook = cooks.apply(hotter(i, across));
        CoreWish wish = wishes.get(i).wish();
        stations.add(
            new Station(Stations.name(i, places), point -> scaled(cook.apply(point), size), wish));
      }
    }
    return stations;
  }

  /** How much hotter the air is at the planned third than stated [K]. */
  double hotterAtPlanned(double across) {
    return hotter(thickest, across);
  }

  private double hotter(int third, double across) {
    return across * (0.5 - places.get(third).position() / taper.length());
  }

  private static Cook scaled(Cook cook, double size) {
    Cut cut = cook.cut();
    List<Stage> stages = new ArrayList<>();
    for (Stage stage : cook.stages()) {
      stages.add(
          new Stage(
              stage.name(),
              stage.upper().scaled(size),
              stage.lower().scaled(size),
              stage.end(),
              stage.wetting(),
              stage.continued()));
    }
    Cut here = new Cut(cut.shape().scaled(size), cut.material(), cut.startTemperature());
    return new Cook(here, stages, List.of());
  }

  /** What comes of the third whose core is read, said with where that is. */
  PlanLine read(PlanLine core) {
    String text = core.text() + "; the display is read in the " + planned();
    return new PlanLine(core.subject(), text, core.status());
  }

  /** What comes of each of the other thirds. */
  List<PlanLine> lines(Plan plan, TemperatureScale scale) {
    List<PlanLine> lines = new ArrayList<>();
    for (Station.Result one : plan.stations()) {
      lines.add(
          new PlanLine(
              one.name(),
              scale.text(one.finalCore().median())
                  + String.format(
                      Locale.ROOT,
                      " (%.1f to %s)",
                      scale.value(one.finalCore().low()),
                      scale.text(one.finalCore().high()))
                  + ", wished "
                  + wished(one.wish(), scale)
                  + ": short of it in "
                  + Words.chance(one.chanceUnder(), plan.members())
                  + ", beyond in "
                  + Words.chance(one.chanceOver(), plan.members()),
              ""));
    }
    return lines;
  }

  private static String wished(CoreWish wish, TemperatureScale scale) {
    return wish.low() == wish.high()
        ? scale.text(wish.low())
        : String.format(
            Locale.ROOT, "%.1f to %s", scale.value(wish.low()), scale.text(wish.high()));
  }

  /**
   * How it lies best where one side of the chamber is hotter.
   *
   * @param across by how much [K]
   * @param plans plan with air so much hotter at the first end than at the last [K]
   */
  Lie lie(double across, DoubleFunction<Plan> plans, TemperatureScale scale) {
    Plan first = plans.apply(across);
    Plan last = plans.apply(-across);
    boolean firstIsBetter = miss(first) <= miss(last);
    String better = Stations.name(firstIsBetter ? 0 : places.size() - 1, places);
    String text =
        "with its "
            + better
            + " towards the heat, as all here is planned, final cores of "
            + cores(firstIsBetter ? first : last, scale)
            + "; the other way round "
            + cores(firstIsBetter ? last : first, scale)
            + " (by fewer draws)";
    return new Lie(
        better, firstIsBetter ? across : -across, new PlanLine("how it lies", text, "assumed"));
  }

  /**
   * How a piece lies.
   *
   * @param towards the end that lies towards the heat
   * @param across how much hotter the air is at the first end than at the last [K]
   * @param line what comes of that
   */
  record Lie(String towards, double across, PlanLine line) {}

  /** Sum of how far the medians of final cores are outside their wishes [K]. */
  private double miss(Plan plan) {
    double sum = outside(plan.finalCore().median(), wishes.get(thickest).wish());
    for (Station.Result one : plan.stations()) {
      sum += outside(one.finalCore().median(), one.wish());
    }
    return sum;
  }

  private static double outside(double core, CoreWish wish) {
    return Math.max(0, Math.max(wish.low() - core, core - wish.high()));
  }

  private String cores(Plan plan, TemperatureScale scale) {
    List<String> words = new ArrayList<>();
    words.add(planned() + " " + scale.text(plan.finalCore().median()));
    for (Station.Result one : plan.stations()) {
      words.add(one.name() + " " + scale.text(one.finalCore().median()));
    }
    return String.join(", ", words);
  }
}
