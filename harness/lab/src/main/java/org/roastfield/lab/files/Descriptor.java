package org.roastfield.lab.files;

import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What the descriptor of a log package says. Keys beyond those of the profile are allowed, as the
 * Data Package standard wants it, and not read.
 *
 * @param facts where the log comes from
 * @param formats of the channels
 * @param columns headers of the readings, time included
 * @param sha256 of the readings' bytes
 * @param setting of a chamber without a probe
 */
record Descriptor(
    LogFacts facts,
    List<ChannelFormat> formats,
    List<String> columns,
    String sha256,
    Optional<ChamberSetting> setting) {

  private static final Map<String, String> TABLES =
      Map.of(
          "events", PackageFiles.EVENTS,
          "spots", PackageFiles.SPOTS,
          "checks", PackageFiles.CHECKS);

  /** JSON is YAML too, and the YAML reader knows the place of every value. */
  static Descriptor parse(String fileName, byte[] bytes) {
    SourceText source = SourceText.decode(fileName, bytes);
    JsonText.object(source);
    Section root = new Entry(fileName, YamlTree.rootOf(source)).openSection();
    Entry format = root.required("roastfield");
    if (!format.text().equals(DescriptorText.FORMAT)) {
      throw format.error(DescriptorText.FORMAT);
    }
    List<Entry> resources = root.required("resources").items();
    TABLES.forEach((name, path) -> resource(root, resources, name, path));
    Section readings = resource(root, resources, "readings", PackageFiles.READINGS);
    List<Entry> fields = readings.required("schema").openSection().required("fields").items();
    return new Descriptor(
        facts(root), formats(fields), columns(fields), hash(readings), setting(root));
  }

  private static Section resource(Section root, List<Entry> resources, String name, String path) {
    for (Entry entry : resources) {
      Section section = entry.openSection();
      if (section.required("name").text().equals(name)) {
        Entry place = section.required("path");
        if (!place.text().equals(path)) {
          throw place.error(path);
        }
        return section;
      }
    }
    throw root.required("resources").error("one named " + name + " with the path " + path);
  }

  private static LogFacts facts(Section root) {
    List<LogFacts.Source> sources = new ArrayList<>();
    for (Entry entry : root.required("sources").items()) {
      Section source = entry.openSection();
      Optional<String> sha256 = source.optional("sha256").map(Entry::text);
      sources.add(entry.guard(() -> new LogFacts.Source(source.required("title").text(), sha256)));
    }
    return new LogFacts(
        checked(root.required("name"), LogFacts::checkName),
        root.optional("title").map(title -> checked(title, LogFacts::checkTitle)).orElse(""),
        madeUp(root.required("madeUp")),
        root.optional("licenses")
            .map(list -> list.items().get(0).openSection().required("name"))
            .map(name -> checked(name, LogFacts::checkLicence)),
        root.optional("startsAt").map(Descriptor::clock),
        sources,
        root.optional("cooker").map(cooker -> checked(cooker, LogFacts::checkCooker)));
  }

  private static String checked(Entry entry, Consumer<String> check) {
    return entry.guard(
        () -> {
          check.accept(entry.text());
          return entry.text();
        });
  }

  private static boolean madeUp(Entry entry) {
    return switch (entry.text()) {
      case "true" -> true;
      case "false" -> false;
      default -> throw entry.error("true or false");
    };
  }

  private static OffsetDateTime clock(Entry entry) {
    try {
      return OffsetDateTime.parse(entry.text());
    } catch (DateTimeParseException e) {
      throw entry.error("a clock time with its offset, such as 2026-06-13T15:10:00+02:00");
    }
  }

  private static List<String> columns(List<Entry> fields) {
    return fields.stream().map(field -> field.openSection().required("name").text()).toList();
  }

  private static List<ChannelFormat> formats(List<Entry> fields) {
    List<ChannelFormat> formats = new ArrayList<>();
    for (Entry field : fields) {
      Section section = field.openSection();
      Entry name = section.required("name");
      LogColumn column =
          LogColumn.of(name.text())
              .orElseThrow(() -> name.error("a column such as time_s or core_degC"));
      Entry unit = section.required("unit");
      if (!unit.text().equals(column.unit().ucum())) {
        throw unit.error(column.unit().ucum() + " as the name of the column says");
      }
      if (!column.isTime()) {
        int decimals = section.required("decimals").wholeNumber(0, ChannelFormat.MOST_DECIMALS);
        formats.add(name.guard(() -> new ChannelFormat(column.name(), column.unit(), decimals)));
      }
    }
    return formats;
  }

  private static String hash(Section readings) {
    Entry hash = readings.required("hash");
    if (!hash.text().matches("sha256:[0-9a-f]{64}")) {
      throw hash.error("sha256: and 64 digits 0-9a-f");
    }
    return hash.text().substring("sha256:".length());
  }

  private static Optional<ChamberSetting> setting(Section root) {
    return root.optional("chamberSetting")
        .map(
            entry -> {
              Section section = entry.openSection();
              return entry.guard(
                  () ->
                      new ChamberSetting(
                          LogUnit.CELSIUS.si(number(section.required("temperature_degC"))),
                          number(section.required("biasDeviation_K")),
                          number(section.required("driftDeviation_K")),
                          number(section.required("driftTime_s"))));
            });
  }

  private static double number(Entry entry) {
    return entry.quantity(Dimension.RATIO, -1e9, 1e9);
  }
}
