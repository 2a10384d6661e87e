package org.roastfield.lab.synthetic;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.roastfield.core.cook.Cook;
import org.roastfield.lab.files.LogPackage;

/** Another Java virtual machine with the classes of this test. */
public final class ChildJvm {

  private static final String SAID = "child.txt";

  private ChildJvm() {}

  /**
   * Starts a main program.
   *
   * @param folder that receives what it says
   * @param options of the virtual machine
   */
  public static Process start(Path folder, List<String> options, Class<?> main, String... arguments)
      throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(options);
    command.addAll(List.of("-cp", classPath(), main.getName()));
    command.addAll(List.of(arguments));
    return new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(folder.resolve(SAID).toFile())
        .start();
  }

  /** What the child said. */
  public static String said(Path folder) {
    try {
      return Files.readString(folder.resolve(SAID));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String classPath() {
    Stream<String> own =
        Stream.of(ChildJvm.class, LogPackage.class, Cook.class)
            .map(type -> type.getProtectionDomain().getCodeSource().getLocation().getPath())
            .distinct();
    Stream<String> others =
        Stream.of(System.getProperty("java.class.path"), System.getProperty("jdk.module.path", ""));
    return Stream.concat(own, others).reduce((a, b) -> a + File.pathSeparator + b).orElseThrow();
  }
}
