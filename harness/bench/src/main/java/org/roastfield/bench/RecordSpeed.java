package org.roastfield.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.results.format.ResultFormatFactory;
import org.openjdk.jmh.results.format.ResultFormatType;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;

/**
 * Runs benchmarks with JMH's own options and writes their results, with the machine, to a file:
 * {@code java -cp harness/bench/target/benchmarks.jar org.roastfield.bench.RecordSpeed FILE NOTE
 * [JMH options]}. The note says what else was going on, such as the time that another program took
 * in the same minutes.
 */
public final class RecordSpeed {

  private static final Path CPU_INFO = Path.of("/proc/cpuinfo");

  private RecordSpeed() {}

  /** Runs the benchmarks; see the class. */
  public static void main(String[] arguments)
      throws RunnerException, CommandLineOptionException, IOException {
    if (arguments.length < 2) {
      throw new IllegalArgumentException("arguments must be FILE NOTE [JMH options]");
    }
    Path file = Path.of(arguments[0]);
    String[] options = Arrays.copyOfRange(arguments, 2, arguments.length);
    Collection<RunResult> results = new Runner(new CommandLineOptions(options)).run();
    Path json = Files.createTempFile("results", ".json");
    ResultFormatFactory.getInstance(ResultFormatType.JSON, json.toString()).writeOut(results);
    String text = record(arguments[1], options, Files.readString(json));
    Files.delete(json);
    Path partial = file.resolveSibling(file.getFileName() + ".part");
    Files.writeString(partial, text);
    Files.move(partial, file, StandardCopyOption.REPLACE_EXISTING);
  }

  private static String record(String note, String[] options, String results) throws IOException {
    Runtime machine = Runtime.getRuntime();
    double load = ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
    return "{\n"
        + field("processor", processor())
        + field("cores", Integer.toString(machine.availableProcessors()))
        + field("system", System.getProperty("os.name") + " " + System.getProperty("os.arch"))
        + field("java", System.getProperty("java.vm.version"))
        + field("load average after the run", Double.toString(load))
        + field("when", Instant.now().toString().substring(0, 10))
        + field("note", note)
        + field("options", String.join(" ", options))
        + "  \"results\": "
        + withoutPaths(results).strip()
        + "\n}\n";
  }

  /** JMH names the virtual machine by its path, which is nobody's business. */
  private static String withoutPaths(String results) {
    return results.replaceAll("(?m)^\\s*\"jvm\" : .*\\R", "");
  }

  private static String processor() throws IOException {
    if (!Files.isReadable(CPU_INFO)) {
      return "not known";
    }
    List<String> lines = Files.readAllLines(CPU_INFO, StandardCharsets.UTF_8);
    return value(lines, "model name") + ", family " + value(lines, "cpu family");
  }

  private static String value(List<String> lines, String key) {
    return lines.stream()
        .filter(line -> line.startsWith(key))
        .map(line -> line.substring(line.indexOf(':') + 1).strip())
        .findFirst()
        .orElse("not known");
  }

  private static String field(String name, String value) {
    return "  \"" + name + "\": \"" + value.replace("\\", "\\\\").replace("\"", "\\\"") + "\",\n";
  }
}
