package org.roastfield.lab.files;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.roastfield.core.units.Temperatures;

/** Text of a log package's descriptor, a Data Package of version 2. */
final class DescriptorText {

  /** What the key {@code roastfield} says. */
  static final String FORMAT = "log/1";

  private static final String PROFILES = "https://datapackage.org/profiles/2.0/";
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final LogPackage log;
  private final ObjectNode root = JsonNodeFactory.instance.objectNode();

  private DescriptorText(LogPackage log) {
    this.log = log;
  }

  /**
   * Text of the descriptor.
   *
   * @param bytes size of the readings
   * @param sha256 of the readings' bytes, lower-case hexadecimal
   */
  static String of(LogPackage log, long bytes, String sha256) {
    return new DescriptorText(log).text(bytes, sha256);
  }

  private String text(long bytes, String sha256) {
    root.put("$schema", PROFILES + "datapackage.json").put("roastfield", FORMAT);
    facts();
    log.setting().ifPresent(this::setting);
    ArrayNode resources = root.putArray("resources");
    readings(resources.addObject(), bytes, sha256);
    people(resources, "events", PackageFiles.EVENTS, PeopleTables.EVENTS, "time", "kind", "origin");
    people(resources, "spots", PackageFiles.SPOTS, PeopleTables.SPOTS, "time", "place", "shown");
    people(resources, "checks", PackageFiles.CHECKS, PeopleTables.CHECKS, "probe", "kind", "shown");
    log.cook().ifPresent(cook -> file(resources, "cook", PackageFiles.COOK, "text/yaml"));
    log.afterwards()
        .ifPresent(found -> file(resources, "afterwards", PackageFiles.AFTERWARDS, "text/yaml"));
    file(resources, "source", PackageFiles.SOURCE, "text/markdown");
    return indented();
  }

  private void facts() {
    LogFacts facts = log.facts();
    root.put("name", facts.name()).put("title", facts.title()).put("madeUp", facts.madeUp());
    facts.cooker().ifPresent(id -> root.put("cooker", id));
    facts.starts().ifPresent(time -> root.put("startsAt", time.toString()));
    facts.licence().ifPresent(id -> root.putArray("licenses").addObject().put("name", id));
    ArrayNode sources = root.putArray("sources");
    for (LogFacts.Source source : facts.sources()) {
      ObjectNode node = sources.addObject().put("title", source.title());
      source.sha256().ifPresent(hash -> node.put("sha256", hash));
    }
  }

  private void setting(ChamberSetting setting) {
    root.putObject("chamberSetting")
        .put("temperature_degC", rounded(Temperatures.toCelsius(setting.temperature())))
        .put("biasDeviation_K", rounded(setting.biasDeviation()))
        .put("driftDeviation_K", rounded(setting.driftDeviation()))
        .put("driftTime_s", rounded(setting.driftTime()));
  }

  private void readings(ObjectNode resource, long bytes, String sha256) {
    table(resource, "readings", PackageFiles.READINGS);
    resource.put("bytes", bytes).put("hash", "sha256:" + sha256);
    resource
        .putObject("dialect")
        .put("$schema", PROFILES + "tabledialect.json")
        .put("commentChar", "#");
    ObjectNode schema = schema(resource);
    ArrayNode fields = schema.putArray("fields");
    ObjectNode time = fields.addObject().put("name", "time_s").put("type", "number");
    time.put("unit", LogUnit.S.ucum());
    time.putObject("constraints").put("required", true).put("minimum", 0);
    for (ChannelFormat format : log.formats()) {
      fields
          .addObject()
          .put("name", format.header())
          .put("type", "number")
          .put("unit", format.unit().ucum())
          .put("decimals", format.decimals());
    }
    schema.putArray("missingValues").add("");
    schema.putArray("primaryKey").add("time_s");
  }

  private static void people(
      ArrayNode resources, String name, String path, PeopleTable<?> table, String... required) {
    ObjectNode resource = resources.addObject();
    table(resource, name, path);
    ObjectNode schema = schema(resource);
    ArrayNode fields = schema.putArray("fields");
    for (String column : table.header()) {
      ObjectNode field = fields.addObject().put("name", column).put("type", "string");
      if (List.of(required).contains(column)) {
        field.putObject("constraints").put("required", true);
      }
    }
    schema.putArray("missingValues").add("");
  }

  private static void table(ObjectNode resource, String name, String path) {
    resource
        .put("$schema", PROFILES + "dataresource.json")
        .put("name", name)
        .put("type", "table")
        .put("path", path)
        .put("format", "csv")
        .put("mediatype", "text/csv")
        .put("encoding", "utf-8");
  }

  private static ObjectNode schema(ObjectNode resource) {
    return resource.putObject("schema").put("$schema", PROFILES + "tableschema.json");
  }

  private static void file(ArrayNode resources, String name, String path, String mediaType) {
    resources
        .addObject()
        .put("$schema", PROFILES + "dataresource.json")
        .put("name", name)
        .put("path", path)
        .put("mediatype", mediaType)
        .put("encoding", "utf-8");
  }

  private static double rounded(double value) {
    return Math.round(value * 1e6) / 1e6;
  }

  private String indented() {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter().withObjectIndenter(indenter);
    try {
      return MAPPER.writer(printer).writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain values is always JSON", e);
    }
  }
}
