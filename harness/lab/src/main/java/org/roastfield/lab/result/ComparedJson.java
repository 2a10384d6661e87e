package org.roastfield.lab.result;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.roastfield.lab.replay.Compared;
import org.roastfield.lab.replay.Comparison;
import org.roastfield.lab.replay.ErrorSummary;
import org.roastfield.lab.replay.HeatingRate;
import org.roastfield.lab.replay.TargetTime;
import org.roastfield.lab.replay.WaterLoss;

/** A log beside its computation, as keys of a document. */
final class ComparedJson {

  private ComparedJson() {}

  /** Summary: errors, times, rates and water. */
  static void addSummary(ObjectNode root, Compared compared) {
    root.put("compared_with", compared.readout());
    root.set("core_error", errors(compared.errors()));
    addTargets(root.putArray("times_to_core_temperature"), compared.targets());
    addRates(root.putArray("heating_rates"), compared.rates());
    root.set("water_lost", water(compared.water()));
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
    node.put("evaporated_kg_per_m2", Json.millionths(water.evaporatedPerArea()));
    node.put("dripped_kg_per_m2", Json.millionths(water.drippedPerArea()));
    put(node, "evaporated_kg", water.evaporated(), Json::millionths);
    put(node, "dripped_kg", water.dripped(), Json::millionths);
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

  /** Every reading beside what was computed. */
  static ObjectNode core(List<Comparison> pairs) {
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
}
