package org.roastfield.lab.result;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import org.roastfield.core.outcome.Doneness;
import org.roastfield.core.outcome.Finding;
import org.roastfield.core.outcome.Safety;
import org.roastfield.lab.timeline.Inside;
import org.roastfield.lab.timeline.Spread;
import org.roastfield.lab.timeline.TemperatureScale;

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
    addSafety(root.putArray("published"), inside);
    inside.spread().ifPresent(spread -> root.set("spread", spread(spread)));
    return root;
  }

  private static void addSafety(ArrayNode array, Inside inside) {
    for (Safety safety : inside.safety()) {
      ObjectNode node =
          array
              .addObject()
              .put("kind", safety.kind().word())
              .put("lethality_log10", safety.lethality())
              .put("surface_lethality_log10", safety.surfaceLethality())
              .put("growth_range_s", Json.seconds(safety.growthTime()));
      safety.riseTime().ifPresent(time -> node.put("rise_s", Json.seconds(time)));
      ArrayNode findings = node.putArray("findings");
      for (Finding finding : safety.findings()) {
        ObjectNode each =
            findings
                .addObject()
                .put("minimum", finding.minimum())
                .put("source", finding.source())
                .put("met_by_the_estimate", finding.met())
                .put("margin", finding.margin())
                .put("margin_unit", finding.unit().name().toLowerCase(Locale.ROOT))
                .put("caution", finding.caution() + " " + Finding.DEFERENCE);
        finding.chance().ifPresent(share -> each.put("share_of_drawn_cooks", share));
      }
    }
  }

  private static ObjectNode spread(Spread spread) {
    ObjectNode node =
        Json.object()
            .put("asked", spread.asked())
            .put("computed", spread.computed())
            .put("seed", spread.seed());
    ArrayNode rows = node.putArray("rows");
    for (Spread.Row row : spread.rows()) {
      ObjectNode each = rows.addObject().put("subject", row.subject());
      each.put("text", row.text(TemperatureScale.CELSIUS));
      each.put("unit", row.unit().inJson());
      each.put("p10", row.unit().value(row.low()));
      each.put("p50", row.unit().value(row.median()));
      each.put("p90", row.unit().value(row.high()));
    }
    return node;
  }
}
