package org.roastfield.core.reference;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.roastfield.core.reference.Rs1Reference.AfterDuration;
import org.roastfield.core.reference.Rs1Reference.Body;
import org.roastfield.core.reference.Rs1Reference.CentreReaches;
import org.roastfield.core.reference.Rs1Reference.Leg;
import org.roastfield.core.reference.Rs1Reference.Material;
import org.roastfield.core.reference.Rs1Reference.MinuteState;
import org.roastfield.core.reference.Rs1Reference.Peak;
import org.roastfield.core.reference.Rs1Reference.RestPeak;
import org.roastfield.core.reference.Rs1Reference.Stage;
import org.roastfield.core.reference.Rs1Reference.StageEnd;
import org.roastfield.core.reference.Rs1Reference.StageEndState;
import org.roastfield.core.reference.Rs1Reference.StageEnergy;
import org.roastfield.core.reference.Rs1Reference.StageState;
import org.roastfield.core.reference.Rs1Reference.Surroundings;

/** Turns the JSON tree of an RS-1 case into records; anything missing or of another type fails. */
final class Rs1Reader {
  private Rs1Reader() {}

  static Rs1Reference read(String name, JsonNode root) {
    if (!text(root, "name").equals(name)) {
      throw new IllegalArgumentException(
          "name must be that of the case in the file, was " + name + " for " + text(root, "name"));
    }
    JsonNode results = root.required("results");
    return new Rs1Reference(
        name,
        body(root.required("geometry")),
        material(root.required("material")),
        number(root, "T0"),
        list(root.required("phases"), Rs1Reader::stage),
        number(results, "event_s"),
        list(results.required("phase_ends"), Rs1Reader::stageEnd),
        restPeak(results.required("peak_centre_in_rest")),
        list(results.required("minutes"), Rs1Reader::minute),
        list(results.required("sear_and_rest"), Rs1Reader::stageState),
        list(results.required("energy_MJ_per_m2_of_surface"), Rs1Reader::energy));
  }

  private static Body body(JsonNode node) {
    return new Body(text(node, "shape"), (int) number(node, "m"), number(node, "R"));
  }

  private static Material material(JsonNode node) {
    return new Material(
        number(node, "k"),
        number(node, "rho"),
        number(node, "cp"),
        number(node, "eps"),
        number(node, "aw"));
  }

  private static Stage stage(JsonNode node) {
    List<Leg> legs =
        node.has("legs") ? list(node.required("legs"), Rs1Reader::leg) : List.of(openLeg(node));
    return new Stage(text(node, "name"), end(node.required("end"), legs), legs);
  }

  private static StageEnd end(JsonNode node, List<Leg> legs) {
    String type = text(node, "type");
    return switch (type) {
      case "centre" -> new CentreReaches(number(node, "T"), number(node, "max_s"));
      case "time" -> new AfterDuration(number(node, "dur"));
      case "legs" -> new AfterDuration(legs.stream().mapToDouble(Leg::seconds).sum());
      default ->
          throw new IllegalArgumentException("type must be centre, time or legs, was " + type);
    };
  }

  private static Leg leg(JsonNode node) {
    return leg(node, number(node, "dur"));
  }

  private static Leg openLeg(JsonNode node) {
    if (!node.required("lid").isEmpty()) {
      throw new IllegalArgumentException("lid must be empty, was " + node.required("lid"));
    }
    return leg(node, Double.POSITIVE_INFINITY);
  }

  private static Leg leg(JsonNode node, double seconds) {
    Surroundings air = surroundings(node.required("Ta"));
    JsonNode wall = node.required("Tw");
    boolean likeAir = wall.isTextual() && wall.textValue().equals("Ta");
    return new Leg(
        seconds,
        number(node, "h"),
        number(node, "w"),
        number(node, "pv"),
        air,
        likeAir ? air : surroundings(wall));
  }

  private static Surroundings surroundings(JsonNode node) {
    if (node.isNumber()) {
      return new Surroundings(node.doubleValue(), 0, 1);
    }
    String type = text(node, "type");
    return switch (type) {
      case "const" -> new Surroundings(number(node, "value"), 0, 1);
      case "sine" ->
          new Surroundings(number(node, "mean"), number(node, "amp"), number(node, "period"));
      default -> throw new IllegalArgumentException("type must be const or sine, was " + type);
    };
  }

  private static StageEndState stageEnd(JsonNode node) {
    return new StageEndState(
        text(node, "phase"),
        number(node, "t"),
        number(node, "centre"),
        number(node, "mid"),
        number(node, "surface"));
  }

  private static RestPeak restPeak(JsonNode node) {
    JsonNode interior = node.required("interior");
    if (!interior.isBoolean()) {
      throw new IllegalArgumentException("interior must be true or false, was " + interior);
    }
    Optional<Peak> later =
        node.has("true_peak_if_rest_goes_on")
            ? Optional.of(peak(node.required("true_peak_if_rest_goes_on")))
            : Optional.empty();
    return new RestPeak(peak(node), interior.booleanValue(), later);
  }

  private static Peak peak(JsonNode node) {
    return new Peak(number(node, "T"), number(node, "t"), number(node, "t_in_rest"));
  }

  private static MinuteState minute(JsonNode row) {
    return new MinuteState(
        number(row, 0), text(row, 1), number(row, 2), number(row, 3), number(row, 4));
  }

  private static StageState stageState(JsonNode row) {
    return new StageState(
        text(row, 0), number(row, 1), number(row, 2), number(row, 3), number(row, 4));
  }

  private static StageEnergy energy(JsonNode node) {
    return new StageEnergy(
        text(node, "phase"),
        number(node, "conduction_in"),
        number(node, "convection_in"),
        number(node, "radiation_in"),
        number(node, "latent_in"),
        number(node, "enthalpy_change"),
        number(node, "water_lost_kg_m2"));
  }

  private static <T> List<T> list(JsonNode array, Function<JsonNode, T> reader) {
    List<T> items = new ArrayList<>();
    array.forEach(item -> items.add(reader.apply(item)));
    return items;
  }

  private static double number(JsonNode node, String key) {
    return asNumber(node.required(key), key);
  }

  private static double number(JsonNode row, int column) {
    return asNumber(row.required(column), "column " + column);
  }

  private static double asNumber(JsonNode value, String name) {
    if (value.isNumber()) {
      return value.doubleValue();
    }
    throw new IllegalArgumentException(name + " must be a number, was " + value);
  }

  private static String text(JsonNode node, String key) {
    return asText(node.required(key));
  }

  private static String text(JsonNode row, int column) {
    return asText(row.required(column));
  }

  private static String asText(JsonNode value) {
    if (value.isTextual()) {
      return value.textValue();
    }
    throw new IllegalArgumentException("value must be a text, was " + value);
  }
}
