package org.roastfield.lab.result;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.LogChannel;
import org.roastfield.lab.replay.ByProfile;
import org.roastfield.lab.replay.ReplayResult;
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
    ComparedJson.addSummary(root, replay.compared());
    replay.profile().ifPresent(by -> root.set("profile", profile(by, replay)));
    root.set("energy", ResultJson.energy(replay.simulation().energy()));
    root.set("work", ResultJson.work(replay.simulation().work()));
    ResultJson.addNotes(root, replay.simulation());
    ResultJson.addCautions(root, Cautions.of(file, replay.simulation(), TemperatureScale.CELSIUS));
    root.set("core", ComparedJson.core(replay.core()));
    root.set("chamber", chamber(replay.chamber()));
    return Json.text(root);
  }

  private static ObjectNode profile(ByProfile by, ReplayResult replay) {
    ObjectNode node = Json.object().put("id", by.id()).put("basis", by.words());
    node.put("made_from_this_log", by.madeFromThisLog());
    node.put("rms_without_K", Json.difference(by.without().rms()));
    node.put("share_as_far_off", by.asFarOff());
    node.put("draws", by.drawn()).put("draws_left_out", by.leftOut());
    node.put("share_in_band", Json.rounded(by.inside(replay.core()), 1e4));
    ObjectNode band = node.putObject("band");
    ArrayNode times = band.putArray("time_s");
    replay.core().forEach(pair -> times.add(Json.seconds(pair.time())));
    ArrayNode low = band.putArray("low_degC");
    ArrayNode high = band.putArray("high_degC");
    for (ByProfile.Band at : by.band()) {
      low.add(Json.celsius(at.low()));
      high.add(Json.celsius(at.high()));
    }
    return node;
  }

  private static void addAll(ArrayNode array, List<String> texts) {
    texts.forEach(array::add);
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
