package org.roastfield.lab.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.PrintStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cells that are wrong are found, whatever is wrong with them. */
class KernelTest {

  private final Kernel kernel = Kernel.start();

  @AfterEach
  void close() {
    kernel.close();
  }

  @Test
  void cells_knowWhatCellsBeforeThemDeclared_andSeeTheLibrary() {
    kernel.run(
        "import org.roastfield.core.units.Temperatures;\nint twice(int n) { return 2 * n; }");
    String printed =
        kernel.run(
            "System.out.print(twice(4) + \" °C, \" + Temperatures.celsius(0)); // in kelvin");
    assertEquals("8 °C, 273.15", printed);
  }

  @Test
  void whatIsShown_isToldFromWhatIsPrinted() {
    String printed = kernel.run("System.out.print(1);\nshow(\"<p/>\");");
    assertEquals("1" + Kernel.SHOWN + "<p/>" + Kernel.SHOWN, printed);
  }

  @Test
  void methodsOfOneCell_mayNameEachOtherInAnyOrder() {
    assertEquals(
        "3", kernel.run("int a() { return b(); } int b() { return 3; } System.out.print(a());"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "int one = \"one\";",
        "int one() { return nobody(); }",
        "for (int i = 0; i < 3; i++) {",
        "int zero = 0;\nint one = 1 / zero;",
        "org.roastfield.core.units.Nowhere.celsius(1);",
      })
  void aCellThatIsWrong_fails(String cell) {
    PrintStream screen = System.out;
    assertThrows(AssertionError.class, () -> kernel.run(cell));
    assertSame(screen, System.out);
  }
}
