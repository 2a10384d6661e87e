package org.roastfield.lab.result;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.roastfield.core.cook.Cut;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.replay.Fit;
import org.roastfield.lab.replay.FitParameter;
import org.roastfield.lab.timeline.Cautions;
import org.roastfield.lab.timeline.TemperatureScale;

/** A fit as JSON. Temperatures are in °C whatever the display, and every key says its unit. */
public final class FitJson {

  /** Name of the schema. */
  public static final String SCHEMA = "roastfield-fit";

  private FitJson() {}

  /** Text of fit.json. */
  public static String text(
      CookFile file, CookLog log, List<FitParameter> free, Fit.Fitted fitted) {
    ObjectNode root = Json.document(SCHEMA, 1).put("status", "completed");
    root.put("cook", file.name()).put("cook_file", file.fileName()).put("log", log.fileName());
    root.put("made_up", file.madeUp());
    root.set("parameters", parameters(free, fitted));
    Cut cut = fitted.result().cook().cut();
    root.put("distance_to_core_mm", Json.rounded(1000 * cut.shape().halfThickness(), 1e4));
    root.put("start_degC", Json.celsius(cut.startTemperature()));
    fitted.assumptions().forEach(root.putArray("assumptions")::add);
    ComparedJson.addSummary(root, fitted.compared());
    root.set("energy", ResultJson.energy(fitted.result().energy()));
    root.set("work", ResultJson.work(fitted.result().work()));
    ResultJson.addNotes(root, fitted.result());
    ResultJson.addCautions(root, Cautions.of(file, fitted.result(), TemperatureScale.CELSIUS));
    root.set("core", ComparedJson.core(fitted.compared().core()));
    return Json.text(root);
  }

  private static ObjectNode parameters(List<FitParameter> free, Fit.Fitted fitted) {
    ObjectNode node = Json.object();
    for (FitParameter parameter : FitParameter.values()) {
      double value = fitted.values().getOrDefault(parameter, parameter.neutral());
      boolean isFree = free.contains(parameter);
      node.putObject(parameter.word())
          .put("value", Json.millionths(value))
          .put("fitted", isFree)
          .put("at_bound", isFree && parameter.isAtBound(value));
    }
    return node;
  }
}
