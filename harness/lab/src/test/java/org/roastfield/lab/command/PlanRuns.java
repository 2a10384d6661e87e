package org.roastfield.lab.command;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.roastfield.lab.Published;

/** Runs of the plan command on copies of the published cook file. */
abstract class PlanRuns {

  static final Path SCHEMA = Path.of("../../datasets/schema/plan.schema.json");

  /** Draws enough for what is asserted, and few enough for a test. */
  static final String FEW = "60";

  @TempDir Path folder = Path.of("");

  String cook = "";
  String out = "";

  /** What the command printed and its exit code. */
  record Run(int code, String out, String err) {

    List<String> lines() {
      return out.lines().toList();
    }

    /** The screen without its line breaks. */
    String said() {
      return out.replaceAll("\\s+", " ");
    }

    /** The line of a step. */
    String step(String words) {
      return lines().stream()
          .filter(line -> line.contains("  " + words))
          .findFirst()
          .orElseThrow(() -> new AssertionError(out));
    }
  }

  @BeforeEach
  void files() throws IOException {
    cook = write("cook.yaml", published());
    out = folder.resolve("out").toString();
  }

  static String published() {
    return new String(Published.porkLoinBytes(), StandardCharsets.UTF_8);
  }

  String write(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  Run plan(String file, String... options) {
    List<String> all = new ArrayList<>(List.of("plan", file, "--out", out));
    List<String> more = List.of(options);
    all.addAll(more.contains("--members") ? List.of() : List.of("--members", FEW));
    all.addAll(more);
    StringWriter printed = new StringWriter();
    StringWriter complained = new StringWriter();
    int code =
        Main.commandLine()
            .setOut(new PrintWriter(printed, true))
            .setErr(new PrintWriter(complained, true))
            .execute(all.toArray(new String[0]));
    return new Run(code, printed.toString(), complained.toString());
  }

  JsonNode json() throws IOException {
    return new ObjectMapper().readTree(Files.readString(Path.of(out, "plan.json")));
  }

  JsonNode step(String id) throws IOException {
    for (JsonNode step : json().get("steps")) {
      if (step.get("id").asText().equals(id)) {
        return step;
      }
    }
    throw new AssertionError("no step " + id);
  }

  /** A clock time, without the offset that it has where a zone is known. */
  static LocalDateTime clock(JsonNode text) {
    return LocalDateTime.parse(text.asText().replaceFirst("(Z|[+-]\\d\\d:\\d\\d)$", ""));
  }

  List<?> complaints() throws IOException {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(new ObjectMapper().readTree(SCHEMA.toFile()))
        .validate(json());
  }

  /** What is told of something that is assumed. */
  String assumed(String subject) throws IOException {
    for (JsonNode one : json().get("assumed")) {
      if (one.get("subject").asText().equals(subject)) {
        return one.get("text").asText();
      }
    }
    throw new AssertionError(json().get("assumed").toString());
  }
}
