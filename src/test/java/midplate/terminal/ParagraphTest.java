package midplate.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class ParagraphTest {
    private static String printed(Paragraph paragraph) {
        StringWriter text = new StringWriter();
        PrintWriter out = new PrintWriter(text);
        paragraph.print(out);
        out.flush();
        return text.toString().replace("\r", "");
    }

    @Test
    void breaksBetweenWordsAtEightySigns() {
        String text = printed(Paragraph.item("word ".repeat(40).strip()));
        assertTrue(text.lines().allMatch(line -> line.length() <= 80), text);
        assertTrue(text.startsWith("- word"), text);
        assertTrue(text.lines().skip(1).allMatch(line -> line.startsWith("  word")), text);
        assertEquals(40, text.split("word", -1).length - 1);
    }

    @Test
    void keepsALongWordWhole() {
        assertEquals("a\n" + "x".repeat(100) + "\nb\n", printed(Paragraph.of("a " + "x".repeat(100) + " b")));
    }

    @Test
    void letsNoControlSignThrough() {
        assertEquals("a?[31m\n", printed(Paragraph.of("a\u001b[31m")));
    }
}
