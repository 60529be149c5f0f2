package faultfinch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class ColumnsTest {

  @Test
  void columns_printed_alignFiguresRightAndWrapTheLast() {
    Columns columns = new Columns();
    columns.row("name", "no.", "about");
    columns.row("x", "7", "one two three four five six");
    columns.row("long one", "16", "");
    StringWriter out = new StringWriter();
    columns.print(new PrintWriter(out), 40);
    // 8 + 2 and 3 + 2 characters stand before the last column; 25 are left for it.
    assertEquals(
        """
        name      no.  about
        x           7  one two three four five
                       six
        long one   16
        """,
        out.toString().replace(System.lineSeparator(), "\n"));
  }
}
