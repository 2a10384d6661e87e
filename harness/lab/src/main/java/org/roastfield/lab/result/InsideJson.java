package org.roastfield.lab.result;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.roastfield.core.outcome.Doneness;
import org.roastfield.lab.timeline.Inside;

/** What a cut is like inside as JSON. */
final class InsideJson {

  private InsideJson() {}

  static ObjectNode of(Inside inside) {
    ObjectNode root = Json.object();
    ArrayNode scales = root.putArray("doneness");
    for (Doneness doneness : inside.doneness()) {
      ObjectNode node =
          scales
              .addObject()
              .put("scale", doneness.scale().name())
              .put("source", doneness.scale().source())
              .put("status", doneness.scale().status().word())
              .put("coldest", doneness.scale().bands().get(doneness.target()).name())
              .put("ring_upper_mm", Json.rounded(1000 * doneness.upperRing(), 1e3))
              .put("ring_lower_mm", Json.rounded(1000 * doneness.lowerRing(), 1e3))
              .put("spread_K", Json.rounded(doneness.spread(), 1e3));
      ArrayNode bands = node.putArray("bands");
      for (int i = 0; i < doneness.shares().size(); i++) {
        bands
            .addObject()
            .put("name", doneness.scale().bands().get(i).name())
            .put("share", doneness.shares().get(i));
      }
    }
    ArrayNode numbers = root.putArray("numbers");
    for (Inside.Line number : inside.numbers()) {
      numbers
          .addObject()
          .put("subject", number.subject())
          .put("text", number.text())
          .put("status", number.status().word())
          .put("source", number.source());
    }
    return root;
  }
}
