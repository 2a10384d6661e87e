package org.roastfield.lab.cooker;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.roastfield.core.inference.ErrorModel;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.parameter.Scale;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.files.CookFileException;
import org.roastfield.lab.files.CookerProfileFile;
import org.roastfield.lab.result.Json;

/** Cooker profiles as JSON, {@code cooker/1}. */
public final class CookerProfileJson {

  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final String IDENTIFIED = "identified";
  private static final String BY_PRIOR = "prior-dominated";

  private CookerProfileJson() {}

  /**
   * Text of a profile.
   *
   * @param version of Roastfield that made it
   */
  public static String text(CookerProfile profile, String version) {
    ObjectNode root = Json.object().put("schema", CookerProfileFile.SCHEMA);
    root.put("id", profile.id()).put("roastfield_version", version);
    root.put("model_version", CookerProfile.MODEL);
    root.put("made_up", profile.madeUp()).put("complete", profile.complete());
    ArrayNode parameters = root.putArray("parameters");
    for (int p = 0; p < profile.parameters().size(); p++) {
      parameters.add(parameter(profile, p));
    }
    ArrayNode mean =
        root.putObject("posterior").put("of", "coordinates on each scale").putArray("mean");
    ArrayNode rows = ((ObjectNode) root.get("posterior")).putArray("covariance");
    for (int a = 0; a < profile.parameters().size(); a++) {
      mean.add(profile.belief().mean()[a]);
      ArrayNode row = rows.addArray();
      for (int b = 0; b < profile.parameters().size(); b++) {
        row.add(profile.belief().covariance(a, b));
      }
    }
    root.putObject("errors_of_cores")
        .put("drift_spread_K", profile.errors().driftSpread())
        .put("drift_time_s", profile.errors().driftTime())
        .put("noise_K", profile.errors().noise());
    root.set("diagnosis", diagnosis(profile.diagnosis()));
    CookerProfile.Validity validity = profile.validity();
    root.putObject("validity")
        .put("coolest_air_degC", Json.celsius(validity.coolestAir()))
        .put("hottest_air_degC", Json.celsius(validity.hottestAir()))
        .put("thinnest_mm", Json.rounded(1000 * validity.thinnest(), 1e4))
        .put("thickest_mm", Json.rounded(1000 * validity.thickest(), 1e4));
    ArrayNode logs = root.putArray("logs");
    for (CookerProfile.Log log : profile.logs()) {
      logs.addObject()
          .put("name", log.name())
          .put("sha256", log.sha256())
          .put("readings", log.readings())
          .put("rms_K", Json.difference(log.rms()));
    }
    return Json.text(root);
  }

  private static ObjectNode parameter(CookerProfile profile, int p) {
    Parameter parameter = profile.parameters().get(p);
    ObjectNode node =
        Json.object()
            .put("id", parameter.id())
            .put("unit", parameter.unit())
            .put("scale", parameter.scale().name().toLowerCase(Locale.ROOT));
    node.putObject("prior")
        .put("median", parameter.median())
        .put("spread", parameter.spread())
        .put("low", parameter.low())
        .put("high", parameter.high())
        .put("source", parameter.source());
    return node.put("median", Json.rounded(profile.value(p), 1e6))
        .put("contraction", Json.rounded(profile.contraction(p), 1e4))
        .put("status", profile.isIdentified(p) ? IDENTIFIED : BY_PRIOR)
        .put("between_cooks_spread", CookParameters.betweenCooks(parameter.id()));
  }

  private static ObjectNode diagnosis(CookerProfile.Diagnosis found) {
    ObjectNode node =
        Json.object()
            .put("status", found.status())
            .put("starts", found.starts())
            .put("cooks", found.cooks())
            .put("objective_nat", found.objective());
    put(node, "agreement", found.agreement());
    put(node, "tail_shape", found.tailShape());
    return node;
  }

  private static void put(ObjectNode node, String key, double value) {
    if (Double.isNaN(value)) {
      node.putNull(key);
    } else {
      node.put(key, value);
    }
  }

  /**
   * Reads a profile.
   *
   * @throws CookFileException if it is of another model, or not what the schema says
   */
  public static CookerProfile read(CookerProfileFile file) {
    Fields root = new Fields(file.path().getFileName() + "", "", tree(file));
    String model = root.text("model_version");
    if (!major(model).equals(major(CookerProfile.MODEL))) {
      throw root.error(
          "a profile of model " + model,
          "one of model "
              + major(CookerProfile.MODEL)
              + ".x, since numbers of another model mean other things: calibrate the logs again");
    }
    ParameterSet parameters = ParameterSet.empty();
    for (Fields each : root.list("parameters")) {
      parameters = parameters.with(parameter(each));
    }
    Fields posterior = root.inner("posterior");
    Fields errors = root.inner("errors_of_cores");
    Fields validity = root.inner("validity");
    Fields found = root.inner("diagnosis");
    List<CookerProfile.Log> logs = new ArrayList<>();
    for (Fields log : root.list("logs")) {
      logs.add(
          new CookerProfile.Log(
              log.text("name"),
              log.text("sha256"),
              (int) log.number("readings"),
              log.number("rms_K")));
    }
    try {
      return new CookerProfile(
          file.id(),
          root.flag("made_up"),
          root.flag("complete"),
          parameters,
          Prior.of(parameters, posterior.numbers("mean"), posterior.rows("covariance")),
          new CookerProfile.Validity(
              Temperatures.celsius(validity.number("coolest_air_degC")),
              Temperatures.celsius(validity.number("hottest_air_degC")),
              validity.number("thinnest_mm") / 1000,
              validity.number("thickest_mm") / 1000),
          new ErrorModel(
              errors.number("drift_spread_K"),
              errors.number("drift_time_s"),
              errors.number("noise_K"),
              0),
          new CookerProfile.Diagnosis(
              found.text("status"),
              (int) found.number("starts"),
              found.numberOrNone("agreement"),
              found.number("objective_nat"),
              (int) found.number("cooks"),
              found.numberOrNone("tail_shape")),
          logs);
    } catch (IllegalArgumentException e) {
      throw root.error("numbers that do not fit", String.valueOf(e.getMessage()));
    }
  }

  private static Parameter parameter(Fields each) {
    String id = each.text("id");
    Parameter known;
    try {
      known = CookParameters.named(id);
    } catch (IllegalArgumentException e) {
      throw each.error("\"" + id + "\"", "a parameter of a cooker of this model");
    }
    if (known.owner() != Owner.COOKER) {
      throw each.error("\"" + id + "\"", "a parameter of a cooker, not of a cut or probe");
    }
    Scale scale = known.scale();
    if (!each.text("scale").equals(scale.name().toLowerCase(Locale.ROOT))) {
      throw each.error("another scale", scale.name().toLowerCase(Locale.ROOT));
    }
    Fields prior = each.inner("prior");
    try {
      return new Parameter(
          id,
          each.text("unit"),
          Owner.COOKER,
          scale,
          prior.number("median"),
          prior.number("spread"),
          prior.number("low"),
          prior.number("high"),
          prior.text("source"));
    } catch (IllegalArgumentException e) {
      throw each.error("a prior that does not hold", String.valueOf(e.getMessage()));
    }
  }

  private static String major(String version) {
    return version.replaceFirst("\\..*$", "");
  }

  private static JsonNode tree(CookerProfileFile file) {
    try {
      return MAPPER.readTree(file.json());
    } catch (IOException e) {
      throw new CookFileException(file.path() + "", 1, 1, "no JSON", "a cooker profile");
    }
  }

  /** Fields of an object, each of which must be there. */
  private record Fields(String file, String path, JsonNode node) {

    CookFileException error(String found, String expected) {
      return new CookFileException(
          file, 1, 1, (path.isEmpty() ? "" : path + ": ") + found, expected);
    }

    private JsonNode field(String key, boolean fits, String what) {
      if (!fits) {
        throw error(
            node.has(key) ? "\"" + key + "\" of another kind" : "no key \"" + key + "\"",
            "\"" + key + "\": " + what);
      }
      return node.get(key);
    }

    String text(String key) {
      return field(key, node.path(key).isTextual(), "a text").textValue();
    }

    boolean flag(String key) {
      return field(key, node.path(key).isBoolean(), "true or false").booleanValue();
    }

    double number(String key) {
      return field(key, node.path(key).isNumber(), "a number").doubleValue();
    }

    double numberOrNone(String key) {
      return node.path(key).isNull() ? Double.NaN : number(key);
    }

    Fields inner(String key) {
      return new Fields(file, key, field(key, node.path(key).isObject(), "an object"));
    }

    List<Fields> list(String key) {
      List<Fields> list = new ArrayList<>();
      for (JsonNode each : field(key, node.path(key).isArray(), "a list")) {
        if (!each.isObject()) {
          throw error("an entry of \"" + key + "\" that is no object", "objects");
        }
        list.add(new Fields(file, key, each));
      }
      return list;
    }

    double[] numbers(String key) {
      return doubles(key, field(key, node.path(key).isArray(), "a list of numbers"));
    }

    double[][] rows(String key) {
      List<double[]> rows = new ArrayList<>();
      for (JsonNode row : field(key, node.path(key).isArray(), "a list of rows")) {
        rows.add(doubles(key, row));
      }
      return rows.toArray(new double[0][]);
    }

    private double[] doubles(String key, JsonNode list) {
      double[] numbers = new double[list.size()];
      for (int i = 0; i < numbers.length; i++) {
        if (!list.path(i).isNumber()) {
          throw error("an entry of \"" + key + "\" that is no number", "numbers");
        }
        numbers[i] = list.get(i).doubleValue();
      }
      return numbers;
    }
  }
}
