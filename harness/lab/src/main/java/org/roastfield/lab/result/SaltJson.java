package org.roastfield.lab.result;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.OptionalDouble;
import org.roastfield.lab.salting.SaltPlan;

/** Salt in a cut as JSON. */
public final class SaltJson {

  /** Name of the schema. */
  public static final String SCHEMA = "roastfield-salt";

  private static final int DEPTHS = 24;

  private SaltJson() {}

  /** Text of salt.json. */
  public static String text(SaltPlan plan) {
    ObjectNode root = Json.document(SCHEMA, 1);
    root.put("cook", plan.file().name())
        .put("made_up", plan.file().madeUp())
        .put("salt_share", plan.wish().share())
        .put("depth_mm", Json.rounded(1000 * plan.depth(), 1e3))
        .put("evenness", plan.wish().evenness())
        .put("thawed", plan.wish().thawed());
    put(root, "salt_kg", plan.mass());
    put(root, "hours_before", plan.hours());
    put(root, "hours_before_fastest", plan.fastHours());
    put(root, "hours_before_slowest", plan.slowHours());
    put(root, "hours_before_for_the_middle", plan.middleHours());
    plan.hours().ifPresent(hours -> root.put("put_on_at", plan.clock(hours).toString()));
    root.put("residual", plan.salting().residual());
    ArrayNode profiles = root.putArray("profiles");
    for (double hours : SaltPlan.HOURS) {
      ObjectNode profile =
          profiles
              .addObject()
              .put("hours", hours)
              .put("water_activity_of_face", Json.rounded(plan.waterActivity(0, hours), 1e5));
      ArrayNode depths = profile.putArray("depth_mm");
      ArrayNode shares = profile.putArray("salt_share");
      for (int i = 0; i <= DEPTHS; i++) {
        double depth = plan.middle() * i / DEPTHS;
        depths.add(Json.rounded(1000 * depth, 1e3));
        shares.add(Json.millionths(Math.max(0, plan.share(depth, hours))));
      }
    }
    SaltPlan.restsOn().forEach(root.putArray("rests_on")::add);
    SaltPlan.cautions().forEach(root.putArray("cautions")::add);
    return Json.text(root);
  }

  private static void put(ObjectNode root, String key, OptionalDouble value) {
    value.ifPresent(number -> root.put(key, Json.rounded(number, 1e4)));
  }
}
