package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import midplate.wire.Exchange;
import midplate.wire.FakeAdviser;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The page in a real browser, with invented advice behind it except where a test says otherwise: ask and see one advice. */
class PageIT {
    private static final Path SHOTS = Path.of("target", "screenshots");
    private static Playwright playwright;
    private static Browser browser;
    private static PageServer server;
    private static PageServer measured;

    private final List<String> complaints = new ArrayList<>();
    private final List<String> outside = new ArrayList<>();
    private BrowserContext context;
    private String address = server.address();

    @BeforeAll
    static void start() {
        server = PageServer.of(FakeAdviser.exchange(), 0, Path.of("web")).start();
        measured = PageServer.of(Exchange.builtIn(), 0, Path.of("web")).start();
        playwright = Playwright.create();
        browser = Chromium.launch(playwright);
    }

    @AfterAll
    static void stop() {
        browser.close();
        playwright.close();
        server.stop();
        measured.stop();
    }

    @AfterEach
    void nothingWasComplainedAboutAndNothingLeftTheMachine() {
        context.close();
        assertEquals(List.of(), complaints, "errors in the browser's console");
        assertEquals(List.of(), outside, "requests to elsewhere");
    }

    private Page open(ColorScheme scheme, int width, int height) {
        context = browser.newContext(
                new Browser.NewContextOptions().setColorScheme(scheme).setViewportSize(width, height));
        Page page = context.newPage();
        page.onConsoleMessage(message -> {
            boolean refusedOnPurpose = message.text().contains("status of 422");
            if ((message.type().equals("error") || message.type().equals("warning")) && !refusedOnPurpose) {
                complaints.add(message.text());
            }
        });
        page.onPageError(complaints::add);
        page.onRequest(request -> {
            if (!request.url().startsWith(address)) {
                outside.add(request.url());
            }
        });
        page.navigate(address);
        page.waitForSelector("html[data-ready=yes]");
        return page;
    }

    private Page open() {
        return open(ColorScheme.LIGHT, 1280, 900);
    }

    private static Locator field(Page page, String label) {
        return page.getByLabel(label, new Page.GetByLabelOptions().setExact(true));
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    private static void assertAnswered(Page page) {
        page.waitForSelector(".ratio");
        assertEquals("7 : 2", page.textContent(".ratio"));
        assertTrue(page.textContent(".pour").contains("7.8 ml hexane + 2.2 ml ethyl acetate"));
        assertTrue(page.textContent(".chance").contains("about 87 of 100 plates"));
        assertTrue(page.textContent("#jar").contains("safety data sheet"));
        assertTrue(page.isVisible("#why"));
        assertEquals(1, page.locator("svg.expected").count());
    }

    @Test
    void asksAndSeesOneAdviceByMouse() {
        Page page = open();
        button(page, "Add a spot").click();
        field(page, "Eluent: % ethyl acetate, or hexane : ethyl acetate").fill("10");
        field(page, "Rf of A").fill("0.05");
        field(page, "Rf of B").fill("0,12");
        assertEquals(2, page.locator("svg.measured .spot").count());
        button(page, "What next?").click();
        assertAnswered(page);
        button(page, "Put this plate on the sheet").click();
        assertEquals("7 : 2", page.locator("#eluent-1").inputValue());
        assertTrue(page.textContent("#said").contains("Ask again."));
    }

    @Test
    void asksAndSeesOneAdviceByKeyboardAlone() {
        Page page = open();
        tabTo(page, "amount");
        tabTo(page, "spot-s1");
        tabTo(page, "add-spot");
        page.keyboard().press("Enter");
        assertEquals("spot-s2", focused(page));
        tabTo(page, "eluent-0");
        page.keyboard().type("9 : 1");
        tabTo(page, "rf-0-s1");
        page.keyboard().type("0.05");
        tabTo(page, "rf-0-s2");
        page.keyboard().type("0.12");
        tabTo(page, "what-next");
        page.keyboard().press("Enter");
        assertAnswered(page);
    }

    private static void tabTo(Page page, String id) {
        for (int i = 0; i < 40; i++) {
            if (focused(page).equals(id)) {
                return;
            }
            page.keyboard().press("Tab");
        }
        throw new AssertionError("Tab does not reach " + id + "; stands on " + focused(page));
    }

    private static String focused(Page page) {
        return String.valueOf(page.evaluate("document.activeElement ? document.activeElement.id : ''"));
    }

    @Test
    void enterInAFieldAsks() {
        Page page = open();
        field(page, "Rf of A").fill("0.05");
        field(page, "Eluent: % ethyl acetate, or hexane : ethyl acetate").fill("10");
        page.keyboard().press("Enter");
        assertAnswered(page);
    }

    @Test
    void tellsEachFaultBesideItsFieldAndLosesNothing() {
        Page page = open();
        field(page, "Eluent: % ethyl acetate, or hexane : ethyl acetate").fill("101");
        field(page, "Rf of A").fill("1.2");
        field(page, "Eluent wanted, ml").fill("much");
        button(page, "What next?").click();
        page.waitForSelector("#rf-0-s1-fault");
        assertTrue(page.textContent("#eluent-0-fault").contains("101"), page.textContent("#eluent-0-fault"));
        assertTrue(page.textContent("#rf-0-s1-fault").contains("1.2"), page.textContent("#rf-0-s1-fault"));
        assertTrue(page.isVisible("#amount-fault"));
        assertEquals("true", page.getAttribute("#rf-0-s1", "aria-invalid"));
        assertEquals("rf-0-s1-fault", page.getAttribute("#rf-0-s1", "aria-describedby"));
        assertEquals("101", page.locator("#eluent-0").inputValue());
        assertEquals("1.2", page.locator("#rf-0-s1").inputValue());
        shoot(page, "faults");
        assertClean(page);
        field(page, "Rf of A").fill("0.2");
        field(page, "Eluent: % ethyl acetate, or hexane : ethyl acetate").fill("10");
        field(page, "Eluent wanted, ml").fill("10");
        button(page, "What next?").click();
        assertAnswered(page);
        assertEquals(0, page.locator(".fault").count());
    }

    @Test
    void theSheetSurvivesAReload() {
        Page page = open();
        button(page, "Add a spot").click();
        field(page, "Spot 2").fill("starting ester");
        field(page, "Rf of starting ester").fill("0.33");
        page.locator("#pair").selectOption("2");
        page.locator("#setting").selectOption("class");
        field(page, "Eluent: % methanol, or dichloromethane : methanol").fill("5 %");
        page.reload();
        page.waitForSelector("html[data-ready=yes]");
        assertEquals("starting ester", field(page, "Spot 2").inputValue());
        assertEquals("0.33", field(page, "Rf of starting ester").inputValue());
        assertEquals("5 %", page.locator("#eluent-0").inputValue());
        assertEquals("class", page.locator("#setting").inputValue());
        assertEquals("2", page.locator("#pair").inputValue());
    }

    @Test
    void aDraftThatCannotBeReadIsPassedOver() {
        Page page = open();
        for (String draft : List.of("{", "null", "[]", "{\"pair\": 9}", "{\"pair\": 0, \"plates\": [null]}")) {
            page.evaluate("text => localStorage.setItem('midplate-draft', text)", draft);
            page.reload();
            page.waitForSelector("html[data-ready=yes]");
            assertEquals("A", field(page, "Spot 1").inputValue(), draft);
        }
    }

    @Test
    void namesAreTextAndNeverMarkup() {
        Page page = open();
        String name = "<img src=x onerror=alert(1)>";
        field(page, "Spot 1").fill(name);
        field(page, "Rf of " + name).fill("0.4");
        field(page, "Eluent: % ethyl acetate, or hexane : ethyl acetate").fill("10");
        button(page, "What next?").click();
        assertAnswered(page);
        assertEquals(0, page.locator("img").count());
        assertTrue(page.textContent("figure.next").contains(name));
    }

    @Test
    void theExampleIsMarkedAsInventedUntilItIsChanged() {
        Page page = open();
        assertFalse(page.isVisible("#example-mark"));
        button(page, "Fill in an invented example").click();
        assertEquals("Invented example", page.textContent("#example-mark"));
        assertTrue(page.isVisible("#example-mark"));
        page.reload();
        page.waitForSelector("html[data-ready=yes]");
        assertTrue(page.isVisible("#example-mark"));
        field(page, "Rf of A").fill("0.4");
        assertFalse(page.isVisible("#example-mark"));
        button(page, "Clear the sheet").click();
        assertEquals("", page.locator("#eluent-0").inputValue());
    }

    /** With the real advice: what was measured, the equation and the works are one press away. */
    @Test
    void tellsWhereTheNumberComesFrom() {
        address = measured.address();
        Page page = open(ColorScheme.LIGHT, 390, 844);
        button(page, "Fill in an invented example").click();
        page.locator("#setting").selectOption("class");
        button(page, "What next?").click();
        page.getByText("Where does it come from?").click();
        assertTrue(page.getByText("η = c + s · G").isVisible());
        String from = page.textContent("#from-where");
        for (String part : List.of(
                "hexane : ethyl acetate on silica",
                "readings in all",
                "Setting, class",
                "Chem 8 (2022) 3202",
                "Snyder, Principles of Adsorption Chromatography",
                "Refused: ")) {
            assertTrue(from.contains(part), part + " in " + from);
        }
        assertEquals(
                8,
                page.locator("#from-where table").nth(0).locator("tbody tr").count(),
                "the measured ratios of hexane with ethyl acetate");
        assertEquals(
                5,
                page.locator("#from-where table").nth(1).locator("tbody tr").count(),
                "the fifths of the chance said");
        assertTrue(page.textContent(".hold").contains("run in a class"));
    }

    @Test
    void tellsOfPublishedValuesTheSourceAndWhetherItWasRead() {
        Page page = open();
        button(page, "Fill in an invented example").click();
        button(page, "What next?").click();
        page.getByText("hexane and ethyl acetate as published").click();
        String values = page.textContent("#published");
        assertTrue(values.contains("Eluent strength ε⁰ (silica newer): 0.48 ["), values);
        assertTrue(values.contains("Boiling point: 68.7 °C ["), values);
        assertTrue(values.contains("p. 70; read there"), values);
        assertTrue(values.contains("from memory, not looked up"), values);
        assertFalse(values.contains("alumina"), values);
    }

    @Test
    void onATelephoneTheAnswerStaysInReachUntilSomethingChanges() {
        Page page = open(ColorScheme.LIGHT, 390, 844);
        assertFalse(page.isVisible("#in-reach"));
        button(page, "Fill in an invented example").click();
        button(page, "What next?").click();
        assertAnswered(page);
        page.evaluate("window.scrollTo(0, 0)");
        assertEquals("7 : 2, about 87 of 100", page.textContent("#in-reach"));
        assertTrue(page.isVisible("#in-reach"));
        field(page, "Rf of A").fill("0.3");
        assertFalse(page.isVisible("#in-reach"));
    }

    /** With the real advice: every spot stays at the start at half ethyl acetate. */
    @Test
    void aLowChanceSaysWhatWouldHelpBesideIt() {
        address = measured.address();
        Page page = open();
        field(page, "Eluent: % ethyl acetate, or hexane : ethyl acetate").fill("50");
        field(page, "Rf of A").fill("0");
        button(page, "What next?").click();
        page.waitForSelector(".ratio");
        assertEquals("pure ethyl acetate", page.textContent(".ratio"));
        assertEquals("10 ml ethyl acetate", page.textContent(".pour"));
        assertTrue(page.textContent(".chance").contains("Most likely no ratio of these two solvents"));
        assertTrue(page.textContent(".chance").contains("Another way: "));
    }

    @Test
    void saysOfATextWhereANumberIsWantedWhatToGive() {
        Page page = open();
        field(page, "Eluent: % ethyl acetate, or hexane : ethyl acetate").fill("9 to 1");
        field(page, "Rf of A").fill("low");
        button(page, "What next?").click();
        page.waitForSelector("#rf-0-s1-fault");
        assertEquals("\"low\" is no Rf. Give a number from 0 to 1, such as 0.25.", page.textContent("#rf-0-s1-fault"));
        assertTrue(page.textContent("#eluent-0-fault").startsWith("\"9 to 1\" cannot be read."));
    }

    @Test
    void saysSoWhenTheServerIsGone() {
        Page page = open();
        page.route("**/api/advice", route -> route.abort());
        field(page, "Eluent: % ethyl acetate, or hexane : ethyl acetate").fill("10");
        field(page, "Rf of A").fill("0.4");
        button(page, "What next?").click();
        page.getByText("Midplate does not answer.").waitFor();
        assertEquals("0.4", field(page, "Rf of A").inputValue());
        complaints.removeIf(text -> text.contains("ERR_FAILED"));
    }

    @ParameterizedTest
    @CsvSource({"LIGHT, 1280", "DARK, 1280", "LIGHT, 390", "DARK, 390", "LIGHT, 360"})
    void isCleanByTheAccessibilityRulesAndFits(ColorScheme scheme, int width) {
        Page page = open(scheme, width, width > 1000 ? 900 : 800);
        assertClean(page);
        button(page, "Fill in an invented example").click();
        button(page, "What next?").click();
        assertAnswered(page);
        for (Locator summary : page.locator("summary").all()) {
            summary.click();
        }
        assertClean(page);
        Object spill = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        assertEquals(0, ((Number) spill).intValue(), "nothing spills over the side");
        shoot(page, String.format(Locale.ROOT, "answer-%s-%d", scheme, width).toLowerCase(Locale.ROOT));
    }

    private static void assertClean(Page page) {
        List<String> found = new AxeBuilder(page)
                .analyze().getViolations().stream().map(PageIT::told).toList();
        assertEquals(List.of(), found);
    }

    private static String told(Rule rule) {
        return rule.getId() + ": " + rule.getHelp() + " "
                + rule.getNodes().get(0).getHtml();
    }

    private static void shoot(Page page, String name) {
        page.evaluate("window.scrollTo(0, 0)");
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(SHOTS.resolve(name + ".png"))
                .setFullPage(true));
        page.screenshot(new Page.ScreenshotOptions().setPath(SHOTS.resolve(name + "-first-view.png")));
    }
}
