package org.roastfield.lab.result;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.TreeSet;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.simulation.ProbeTrace;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.StageResult;
import org.roastfield.core.simulation.TemperatureProfile;
import org.roastfield.core.simulation.Trace;
import org.roastfield.core.surface.Signal;

/** Temperatures over time and over depth as JSON. */
final class TraceJson {

  /** Spacing of the traces [s]; the ends of stages are added. */
  private static final double SPACING = 60;

  private static final int PROFILES = 20;

  private TraceJson() {}

  static ObjectNode traces(SimulationResult result, Signal air) {
    List<Double> times = times(result);
    ObjectNode traces = Json.object();
    ArrayNode timeNode = traces.putArray("time_s");
    times.forEach(time -> timeNode.add(Json.seconds(time)));
    add(traces.putArray("core_degC"), result.core(), times);
    add(traces.putArray("surface_degC"), result.upperSurface(), times);
    if (!result.cook().isSymmetric()) {
      add(traces.putArray("lower_surface_degC"), result.lowerSurface(), times);
    }
    ArrayNode probes = traces.putArray("probes");
    for (Probe probe : result.cook().probes()) {
      ObjectNode node = probes.addObject().put("name", probe.name());
      Shape shape = result.cook().cut().shape();
      double depth = shape.halfThickness() - probe.distanceFromMiddle(shape);
      node.put("depth_mm", Json.rounded(depth * 1000, 1e4));
      add(node.putArray("temperature_degC"), result.probe(probe), times);
      if (!probe.instrument().isIdeal()) {
        ProbeTrace shown = result.shownBy(probe, air);
        ArrayNode array = node.putArray("shown_degC");
        times.forEach(time -> array.add(Json.celsius(shown.at(time))));
      }
    }
    return traces;
  }

  private static void add(ArrayNode array, Trace trace, List<Double> times) {
    times.forEach(time -> array.add(Json.celsius(trace.at(time))));
  }

  private static List<Double> times(SimulationResult result) {
    TreeSet<Double> times = new TreeSet<>();
    for (int minute = 0; minute * SPACING < result.endTime(); minute++) {
      times.add(minute * SPACING);
    }
    times.add(result.endTime());
    result.stages().stream().map(StageResult::end).forEach(times::add);
    return List.copyOf(times);
  }

  static ObjectNode profiles(SimulationResult result) {
    ObjectNode profiles = Json.object();
    ArrayNode positions = profiles.putArray("from_middle_mm");
    TemperatureProfile first = result.profile(0);
    for (int i = 0; i < first.size(); i++) {
      positions.add(Json.rounded(first.position(i) * 1000, 1e4));
    }
    ArrayNode at = profiles.putArray("at");
    for (int k = 0; k <= PROFILES; k++) {
      double time = k * result.endTime() / PROFILES;
      TemperatureProfile profile = result.profile(time);
      ObjectNode node = at.addObject().put("time_s", Json.seconds(time));
      ArrayNode temperatures = node.putArray("temperature_degC");
      for (int i = 0; i < profile.size(); i++) {
        temperatures.add(Json.celsius(profile.temperature(i)));
      }
    }
    return profiles;
  }
}
