package midplate.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

@DisplayName("Charts of the results")
class ChartsTest {
    private static Accuracy accuracy() {
        Map<String, Map<String, Figure>> contenders = new LinkedHashMap<>();
        contenders.put(
                "Mine & <yours>",
                Map.of(
                        "plates.all.tenth-5.said", new Figure(0.45, 0.01, 321),
                        "plates.all.tenth-5.came", new Figure(0.5, 0.05, 321),
                        "one-trial.trial-rf-03.trial", new Figure(0.2, 0.01, 50),
                        "one-trial.trial-rf-03.error", new Figure(0.05, 0.01, 50),
                        "one-trial.trial-rf-03.half-width", new Figure(0.1, 0.02, 50)));
        contenders.put(
                Contenders.BEFORE,
                Map.of(
                        "plates.all.tenth-10.said", new Figure(1, 0, 4),
                        "plates.all.tenth-10.came", new Figure(0.9, 0.1, 4)));
        contenders.put("Law", Map.of());
        return new Accuracy(Map.of(), contenders, Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of());
    }

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    // The plotting area begins at (80, 30) and is 440 wide and high: said 0.45 lies at x = 278, came 0.5 at y = 250,
    // two
    // standard errors of 0.05 reach from 206 to 294.
    @Test
    void chancesLieWhereTheyWereSaidAndCameTrue() {
        String svg = ChanceChart.of(accuracy());
        assertTrue(svg.contains("<circle cx=\"278.0\" cy=\"250.0\""), svg);
        assertTrue(svg.contains("x1=\"278.0\" y1=\"294.0\" x2=\"278.0\" y2=\"206.0\""), svg);
        assertTrue(svg.contains(">321</text>"), "how many stand behind it");
        assertTrue(svg.contains("x1=\"80.0\" y1=\"470.0\" x2=\"520.0\" y2=\"30.0\""), "the diagonal");
    }

    // A square of 7 px around (520, 74); 0.9 + 2·0.1 is drawn to 1 only, y = 30, and down to 0.7, y = 162.
    @Test
    void whatLiesBeyondTheAxisIsDrawnToItsEnd() {
        String svg = ChanceChart.of(accuracy());
        assertTrue(svg.contains("<rect x=\"516.5\" y=\"70.5\" width=\"7\""), svg);
        assertTrue(svg.contains("x1=\"520.0\" y1=\"162.0\" x2=\"520.0\" y2=\"30.0\""), svg);
    }

    // The left area begins at (70, 56), 330 wide for Rf 0 to 1 and 280 high for errors up to 0.25; the right one at
    // 500,
    // for
    // half widths up to 0.4: (0.2, 0.05) at (136, 280) and (0.2, 0.1) at (566, 266).
    @Test
    void errorsLieAtTheRfOfTheirTrial() {
        String svg = TrialChart.of(accuracy());
        assertTrue(svg.contains("<circle cx=\"136.0\" cy=\"280.0\""), svg);
        assertTrue(svg.contains("<circle cx=\"566.0\" cy=\"266.0\""), svg);
        assertTrue(svg.contains("x1=\"136.0\" y1=\"291.2\" x2=\"136.0\" y2=\"268.8\""), "one standard error");
    }

    @Test
    void theySpeakToThoseWhoDoNotSeeThemAndRunNothing() throws Exception {
        for (String svg : new String[] {ChanceChart.of(accuracy()), TrialChart.of(accuracy())}) {
            Document document = parsed(svg);
            assertEquals("img", document.getDocumentElement().getAttribute("role"));
            assertTrue(document.getElementsByTagName("title")
                            .item(0)
                            .getTextContent()
                            .length()
                    > 10);
            String description = document.getElementsByTagName("desc").item(0).getTextContent();
            assertTrue(description.contains("Mine & <yours>: "), description);
            assertEquals(0, document.getElementsByTagName("script").getLength());
            assertFalse(svg.contains("href") || svg.contains("@import") || svg.contains("style="), svg);
            assertTrue(svg.contains(">Law</text>"), "the legend names all");
        }
    }
}
