package org.roastfield.lab.timeline;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.cook.Wetting;
import org.roastfield.core.shape.Taper;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.simulation.StageResult;
import org.roastfield.lab.files.CookFile;

/**
 * The stations of a tapering piece. It is one piece, so all go through the stages at the times of
 * the station that the cook file's end rules are read at, the thickest. Air by correlation is
 * measured by each station's own diameter.
 */
public final class Stations {

  private Stations() {}

  /**
   * Stations in the middles of the thirds, from the first end on; empty if the cut is no taper.
   *
   * @param result of {@code file}, completed
   */
  public static List<Station> of(CookFile file, SimulationResult result) {
    List<Station> stations = new ArrayList<>();
    if (file.taper().isPresent()) {
      List<Taper.Station> places = file.taper().get().stations(Taper.THIRDS);
      for (int i = 0; i < places.size(); i++) {
        stations.add(station(file, name(i, places), places.get(i), result));
      }
    }
    return stations;
  }

  /** The longest completed stage. */
  public static StageResult longest(SimulationResult result) {
    return result.stages().stream()
        .max(Comparator.comparingDouble(StageResult::duration))
        .orElseThrow();
  }

  /** Name of one of the thirds, such as "thin end". */
  public static String name(int index, List<Taper.Station> places) {
    if (index == 1) {
      return "middle";
    }
    double here = places.get(index).crossSection().radius();
    double there = places.get(places.size() - 1 - index).crossSection().radius();
    if (here == there) {
      return index == 0 ? "first end" : "last end";
    }
    return here > there ? "thick end" : "thin end";
  }

  private static Station station(
      CookFile file, String name, Taper.Station place, SimulationResult lead) {
    SimulationResult result = Simulator.with(lead.settings()).run(cook(place, lead)).orElseThrow();
    double longestEnd = Math.min(longest(lead).end(), result.endTime());
    return new Station(
        name,
        place.position(),
        place.crossSection().thickness(),
        result.core().at(longestEnd),
        CoreHistory.highest(result),
        result.core().at(result.endTime()),
        result.water().evaporatedUpper(),
        Inside.of(file, result));
  }

  private static Cook cook(Taper.Station place, SimulationResult lead) {
    Cut cut = lead.cook().cut();
    double size = place.crossSection().thickness() / cut.shape().thickness();
    List<Stage> stages = new ArrayList<>();
    Wetting put = Wetting.NONE;
    for (int i = 0; i < lead.stages().size(); i++) {
      Stage stage = lead.cook().stages().get(i);
      Wetting wetting = stage.wetting();
      put = new Wetting(put.upper() + wetting.upper(), put.lower() + wetting.lower());
      double duration = lead.stages().get(i).duration();
      if (duration > 0) {
        StageEnd end = StageEnd.after(duration);
        stages.add(
            new Stage(
                stage.name(),
                stage.upper().scaled(size),
                stage.lower().scaled(size),
                end,
                put,
                stage.continued()));
        put = Wetting.NONE;
      }
    }
    Cut here = new Cut(place.crossSection(), cut.material(), cut.startTemperature());
    return new Cook(here, stages, List.of());
  }
}
