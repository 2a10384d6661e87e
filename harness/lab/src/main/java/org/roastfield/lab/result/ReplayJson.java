package org.roastfield.lab.result;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.LogChannel;
import org.roastfield.lab.replay.Comparison;
import org.roastfield.lab.replay.ErrorSummary;
import org.roastfield.lab.replay.HeatingRate;
import org.roastfield.lab.replay.ReplayResult;
import org.roastfield.lab.replay.TargetTime;
import org.roastfield.lab.replay.WaterLoss;
import org.roastfield.lab.timeline.Cautions;
import org.roastfield.lab.timeline.TemperatureScale;

/** A replay as JSON. Temperatures are in °C whatever the display, and every key says its unit. */
public final class ReplayJson {

  /** Name of the schema. */
  public static final String SCHEMA = "roastfield-replay";

  private ReplayJson() {}

  /** Text of replay.json. */
  public static String text(CookFile file, CookLog log, ReplayResult replay) {
    ObjectNode root = Json.document(SCHEMA, 1).put("status", "completed");
    root.put("cook", file.name()).put("cook_file", file.fileName()).put("log", log.fileName());
    root.put("made_up", file.madeUp());
    addAll(root.putArray("log_comments"), log.comments());
    root.put("chamber_from_log", replay.chamberFromLog());
    root.put("start_degC", Json.celsius(replay.startTemperature()));
    root.put("start_from_log", replay.startFromLog());
    addAll(root.putArray("assumptions"), replay.assumptions());
    root.put("compared_with", replay.compared().readout());
    root.set("core_error", errors(replay.errors()));
    addTargets(root.putArray("times_to_core_temperature"), replay.targets());
    addRates(root.putArray("heating_rates"), replay.compared().rates());
    root.set("water_lost", water(replay.compared().water()));
    root.set("energy", ResultJson.energy(replay.simulation().energy()));
    root.set("work", ResultJson.work(replay.simulation().work()));
    ResultJson.addNotes(root, replay.simulation());
    ResultJson.addCautions(root, Cautions.of(file, replay.simulation(), TemperatureScale.CELSIUS));
    root.set("core", core(replay.core()));
    root.set("chamber", chamber(replay.chamber()));
    return Json.text(root);
  }

  private static void addAll(ArrayNode array, List<String> texts) {
    texts.forEach(array::add);
  }

  private static ObjectNode errors(ErrorSummary errors) {
    return Json.object()
        .put("readings", errors.readings())
        .put("missing", errors.missing())
        .put("rms_K", Json.difference(errors.rms()))
        .put("bias_K", Json.difference(errors.bias()))
        .put("worst_K", Json.difference(errors.worst()))
        .put("worst_time_s", Json.seconds(errors.worstTime()));
  }

  private static void addTargets(ArrayNode array, List<TargetTime> targets) {
    for (TargetTime target : targets) {
      ObjectNode node = array.addObject().put("core_degC", Json.celsius(target.temperature()));
      putTime(node, "measured_s", target.measured());
      putTime(node, "computed_s", target.computed());
      putTime(node, "error_s", target.error());
      putTime(node, "true_core_s", target.trueCore());
    }
  }

  private static void addRates(ArrayNode array, List<HeatingRate> rates) {
    for (HeatingRate rate : rates) {
      ObjectNode node = array.addObject().put("from_degC", Json.celsius(rate.span().low()));
      node.put("to_degC", Json.celsius(rate.span().high()));
      put(node, "measured_K_per_s", rate.measured(), Json::millionths);
      put(node, "computed_K_per_s", rate.computed(), Json::millionths);
    }
  }

  private static ObjectNode water(WaterLoss water) {
    ObjectNode node = Json.object();
    node.put("evaporated_kg_per_m2", Json.millionths(water.perArea()));
    put(node, "evaporated_kg", water.computed(), Json::millionths);
    put(node, "weighed_kg", water.weighed(), Json::millionths);
    return node;
  }

  /** Never reached is null. */
  private static void putTime(ObjectNode node, String key, OptionalDouble time) {
    put(node, key, time, Json::seconds);
  }

  private static void put(
      ObjectNode node, String key, OptionalDouble value, DoubleUnaryOperator rounded) {
    if (value.isPresent()) {
      node.put(key, rounded.applyAsDouble(value.getAsDouble()));
    } else {
      node.putNull(key);
    }
  }

  private static ObjectNode core(List<Comparison> pairs) {
    ObjectNode node = Json.object();
    ArrayNode times = node.putArray("time_s");
    ArrayNode measured = node.putArray("measured_degC");
    ArrayNode computed = node.putArray("computed_degC");
    ArrayNode trueCore = node.putArray("true_core_degC");
    for (Comparison pair : pairs) {
      times.add(Json.seconds(pair.time()));
      measured.add(Json.celsius(pair.measured()));
      computed.add(Json.celsius(pair.computed()));
      trueCore.add(Json.celsius(pair.trueCore()));
    }
    return node;
  }

  private static ObjectNode chamber(LogChannel chamber) {
    ObjectNode node = Json.object();
    ArrayNode times = node.putArray("time_s");
    ArrayNode temperatures = node.putArray("temperature_degC");
    for (int i = 0; i < chamber.size(); i++) {
      times.add(Json.seconds(chamber.time(i)));
      temperatures.add(Json.celsius(chamber.temperature(i)));
    }
    return node;
  }
}
