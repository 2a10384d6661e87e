package org.roastfield.lab.cooker;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.roastfield.core.inference.ErrorModel;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.parameter.Scale;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.files.CookFileException;
import org.roastfield.lab.files.CookerProfileFile;
import org.roastfield.lab.files.JsonFields;
import org.roastfield.lab.result.Json;

/** Cooker profiles as JSON, {@code cooker/1}. */
public final class CookerProfileJson {

  private static final String IDENTIFIED = "identified";
  private static final String BY_PRIOR = "prior-dominated";
  private static final String COORDINATES = "coordinates on each scale";

  /** Parts of a unit that values for people are rounded to. */
  private static final double VALUES = 1e6;

  private static final double SHARES = 1e4;

  /** Of a covariance computed twice, relative. */
  private static final double ROUND_OFF = 1e-9;

  private static final Pattern VERSION = Pattern.compile("(\\d{1,6})\\.(\\d{1,6})");

  /** What to do about a value that does not follow from the posterior. */
  private static final String BY_HAND =
      ", as the posterior says: undo what was changed, or calibrate the logs again";

  private CookerProfileJson() {}

  /**
   * Text of a profile.
   *
   * @param version of Roastfield that made it
   */
  public static String text(CookerProfile profile, String version) {
    ObjectNode root = Json.object().put("schema", CookerProfileFile.SCHEMA);
    root.put("id", profile.id()).put("roastfield_version", version);
    root.put("model_version", profile.model());
    root.put("made_up", profile.madeUp()).put("complete", profile.complete());
    ArrayNode parameters = root.putArray("parameters");
    for (int p = 0; p < profile.parameters().size(); p++) {
      parameters.add(parameter(profile, p));
    }
    ObjectNode posterior = root.putObject("posterior").put("of", COORDINATES);
    ArrayNode mean = posterior.putArray("mean");
    ArrayNode rows = posterior.putArray("covariance");
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
            .put("scale", word(parameter.scale()));
    node.putObject("prior")
        .put("median", parameter.median())
        .put("spread", parameter.spread())
        .put("low", parameter.low())
        .put("high", parameter.high())
        .put("source", parameter.source());
    return node.put("median", Json.rounded(profile.value(p), VALUES))
        .put("contraction", Json.rounded(profile.contraction(p), SHARES))
        .put("status", profile.isIdentified(p) ? IDENTIFIED : BY_PRIOR)
        .put("between_cooks_spread", between(profile, p));
  }

  private static double between(CookerProfile profile, int p) {
    return CookerNumbers.betweenCooks(profile.parameters().get(p).id());
  }

  private static String word(Scale scale) {
    return scale.name().toLowerCase(Locale.ROOT);
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
    JsonFields root = file.fields();
    String model = model(root);
    root.text("roastfield_version");
    List<JsonFields> stated = root.list("parameters");
    ParameterSet parameters = ParameterSet.empty();
    for (JsonFields each : stated) {
      parameters = with(parameters, each);
    }
    CookerProfile profile =
        new CookerProfile(
            file.id(),
            model,
            root.flag("made_up"),
            root.flag("complete"),
            parameters,
            belief(root, parameters),
            validity(root.inner("validity")),
            errors(root),
            diagnosis(root.inner("diagnosis")),
            root.list("logs").stream().map(CookerProfileJson::log).toList());
    for (int p = 0; p < stated.size(); p++) {
      checkDerived(stated.get(p), profile, p);
    }
    return profile;
  }

  /** An older minor version is read and said by whoever uses it; a newer one cannot be known. */
  private static String model(JsonFields root) {
    String model = root.text("model_version");
    String major = part(CookerProfile.MODEL, 1);
    if (!VERSION.matcher(model).matches() || !part(model, 1).equals(major)) {
      throw root.error(
          "model_version",
          "a profile of model "
              + major
              + ".x, since numbers of another model mean other things: calibrate the logs again");
    }
    if (Integer.parseInt(part(model, 2)) > Integer.parseInt(part(CookerProfile.MODEL, 2))) {
      throw root.error(
          "model_version",
          "a profile of model "
              + major
              + ".0 to "
              + CookerProfile.MODEL
              + ", since a newer Roastfield made this one and may mean other things by its numbers:"
              + " take that one, or calibrate the logs again");
    }
    return model;
  }

  /** First or second number of a version. */
  private static String part(String version, int which) {
    Matcher matcher = VERSION.matcher(version);
    if (!matcher.matches()) {
      throw new IllegalArgumentException("version must be two numbers, was " + version);
    }
    return matcher.group(which);
  }

  private static ParameterSet with(ParameterSet parameters, JsonFields each) {
    String id = each.word("id", ids(), "");
    Parameter known = CookerNumbers.all().get(CookerNumbers.all().index(id));
    each.word("unit", List.of(known.unit()), "");
    each.word("scale", List.of(word(known.scale())), "");
    JsonFields prior = each.inner("prior");
    Parameter parameter =
        each.guard(
            "prior",
            () ->
                new Parameter(
                    id,
                    known.unit(),
                    Owner.COOKER,
                    known.scale(),
                    any(prior, "median"),
                    any(prior, "spread"),
                    any(prior, "low"),
                    any(prior, "high"),
                    prior.text("source")));
    return each.guard("id", () -> parameters.with(parameter));
  }

  private static List<String> ids() {
    return CookerNumbers.all().list().stream().map(Parameter::id).toList();
  }

  private static double any(JsonFields fields, String key) {
    return fields.number(key, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  private static double least(JsonFields fields, String key, double low) {
    return fields.number(key, low, Double.POSITIVE_INFINITY);
  }

  private static Prior belief(JsonFields root, ParameterSet parameters) {
    JsonFields posterior = root.inner("posterior");
    posterior.word("of", List.of(COORDINATES), "");
    int n = parameters.size();
    double[] mean = posterior.numbers("mean", n);
    double[][] covariance = posterior.rows("covariance", n);
    for (int a = 0; a < n; a++) {
      Parameter parameter = parameters.get(a);
      if (!(mean[a] >= parameter.lowest() && mean[a] <= parameter.highest())) {
        throw posterior.error("mean", "that of " + parameter.id() + " within its bounds");
      }
      for (int b = 0; b < a; b++) {
        double scale = Math.sqrt(Math.abs(covariance[a][a] * covariance[b][b]));
        if (!(Math.abs(covariance[a][b] - covariance[b][a]) <= ROUND_OFF * scale)) {
          throw posterior.error("covariance", "the same above and below the diagonal");
        }
      }
    }
    return posterior.guard("covariance", () -> Prior.of(parameters, mean, covariance));
  }

  private static CookerProfile.Validity validity(JsonFields stated) {
    double coolest = least(stated, "coolest_air_degC", -Temperatures.celsius(0));
    double thinnest = least(stated, "thinnest_mm", 0);
    return new CookerProfile.Validity(
        Temperatures.celsius(coolest),
        Temperatures.celsius(least(stated, "hottest_air_degC", coolest)),
        thinnest / 1000,
        least(stated, "thickest_mm", thinnest) / 1000);
  }

  private static ErrorModel errors(JsonFields root) {
    JsonFields stated = root.inner("errors_of_cores");
    return root.guard(
        "errors_of_cores",
        () ->
            new ErrorModel(
                any(stated, "drift_spread_K"),
                any(stated, "drift_time_s"),
                any(stated, "noise_K"),
                0));
  }

  private static CookerProfile.Diagnosis diagnosis(JsonFields stated) {
    return new CookerProfile.Diagnosis(
        stated.word("status", CookerProfile.Diagnosis.STATUSES, ""),
        stated.whole("starts", 1),
        stated.numberOrNone("agreement", 0, 1),
        any(stated, "objective_nat"),
        stated.whole("cooks", 0),
        stated.numberOrNone("tail_shape", Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY));
  }

  private static CookerProfile.Log log(JsonFields stated) {
    String sha256 = stated.text("sha256");
    if (!sha256.matches("[0-9a-f]{64}")) {
      throw stated.error("sha256", "64 digits 0-9a-f");
    }
    return new CookerProfile.Log(
        stated.text("name"), sha256, stated.whole("readings", 0), least(stated, "rms_K", 0));
  }

  /** What follows from the posterior is there for people: a change of it by hand is a mistake. */
  private static void checkDerived(JsonFields stated, CookerProfile profile, int p) {
    check(stated, "median", profile.value(p), VALUES);
    check(stated, "contraction", profile.contraction(p), SHARES);
    check(stated, "between_cooks_spread", between(profile, p), SHARES);
    String status = profile.isIdentified(p) ? IDENTIFIED : BY_PRIOR;
    stated.word("status", List.of(status), BY_HAND);
  }

  private static void check(JsonFields stated, String key, double value, double scale) {
    double found = any(stated, key);
    if (!(Math.abs(found - value) <= 1 / scale)) {
      throw stated.error(key, Json.rounded(value, scale) + BY_HAND);
    }
  }
}
