package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A chart saved as a file: it must be whole without the page it comes from. */
record SavedDrawing(String source, Document document) {
    /** The page's paper in daylight. */
    static final String LIGHT_PAPER = "rgb(251, 249, 244)";

    private static final Set<String> SHAPES = Set.of("path", "line", "rect", "circle", "text");

    static SavedDrawing of(Page page, String chart) throws IOException {
        Download download = page.waitForDownload(() -> page.click("#" + chart + "-svg"));
        assertTrue(download.suggestedFilename().matches("midplate-[a-z-]+\\.svg"), download.suggestedFilename());
        String source = Files.readString(download.path());
        try {
            DocumentBuilderFactory parsers = DocumentBuilderFactory.newInstance();
            parsers.setNamespaceAware(true);
            return new SavedDrawing(
                    source, parsers.newDocumentBuilder().parse(new InputSource(new StringReader(source))));
        } catch (SAXException | ParserConfigurationException broken) {
            throw new AssertionError("no XML: " + source, broken);
        }
    }

    /** Width and height of a chart saved as PNG. */
    static List<Integer> pictureSize(Page page, String chart) throws IOException {
        Download download = page.waitForDownload(() -> page.click("#" + chart + "-png"));
        assertTrue(download.suggestedFilename().endsWith(".png"), download.suggestedFilename());
        BufferedImage picture = ImageIO.read(download.path().toFile());
        int paper = picture.getRGB(picture.getWidth() - 1, picture.getHeight() - 1);
        assertEquals(0xFFFBF9F4, paper, "light paper to the corner: " + Integer.toHexString(paper));
        return List.of(picture.getWidth(), picture.getHeight());
    }

    private List<Element> elements() {
        NodeList all = document.getElementsByTagName("*");
        List<Element> found = new ArrayList<>();
        for (int i = 0; i < all.getLength(); i++) {
            found.add((Element) all.item(i));
        }
        return found;
    }

    private Element root() {
        return document.getDocumentElement();
    }

    int width() {
        return Integer.parseInt(root().getAttribute("width"));
    }

    int height() {
        return Integer.parseInt(root().getAttribute("height"));
    }

    /** What stands in the only element of a name. */
    String text(String name) {
        List<Element> found = elements().stream()
                .filter(each -> each.getTagName().equals(name))
                .toList();
        assertEquals(1, found.size(), name);
        return found.get(0).getTextContent();
    }

    void assertWhole() {
        assertEquals("http://www.w3.org/2000/svg", root().getNamespaceURI());
        for (String unknown : List.of("var(", "currentColor", "undefined", "NaN", "url(")) {
            assertFalse(source.contains(unknown), unknown);
        }
        List<Element> shapes = elements().stream()
                .filter(each -> SHAPES.contains(each.getTagName()))
                .toList();
        assertTrue(shapes.size() > 20, shapes.size() + " shapes");
        for (Element each : elements()) {
            assertFalse(each.hasAttribute("class") || each.hasAttribute("style"), each.getTagName());
        }
        for (Element each : shapes) {
            String told = each.getTagName() + " " + each.getTextContent();
            assertFalse(each.getAttribute("fill").isEmpty(), told + " has no fill");
            assertFalse(each.getAttribute("stroke").isEmpty(), told + " has no stroke");
            boolean seen = !each.getAttribute("fill").equals("none")
                    || !each.getAttribute("stroke").equals("none");
            assertTrue(seen, told + " cannot be seen");
            if (each.getTagName().equals("text")) {
                assertFalse(each.getAttribute("font-family").isEmpty(), told + " has no font");
                assertFalse(each.getAttribute("font-size").isEmpty(), told + " has no size");
            }
        }
        Element paper = shapes.get(0);
        assertEquals(LIGHT_PAPER, paper.getAttribute("fill"));
        assertTrue(text("desc").length() > 20, "a description");
        String[] box = root().getAttribute("viewBox").split(" ", -1);
        assertEquals(width() / Double.parseDouble(box[2]), height() / Double.parseDouble(box[3]), 1e-9);
        assertEquals(box[3], paper.getAttribute("height"), "paper under all of it");
    }
}
