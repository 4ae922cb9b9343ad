package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The steps from a picture to spots, each by itself, in the browser they run in. */
class PhotoStepsIT extends OnPage {
    /**
     * Draws a straightened plate of 40 × 70 mm: round spots {x, mm, sigma, dark} whose darkening is a normal curve, dark bars
     * {x, mm, wide, tall, dark}, and light that may differ from place to place; scatter of about one of 255.
     */
    private static final String DRAWN = """
            const { plateOf, proposed, read, linesFault } = await import('/photo/reading/plate.js');
            let seed = 1;
            const scatter = () => (seed = (seed * 1664525 + 1013904223) % 4294967296) / 4294967296 - 0.5;
            const shown = light => 255 * (light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055);
            const drawn = (spots, bars = [], light = () => 0.6) => {
                const [perMm, width, height] = [12, 480, 840];
                const data = new Uint8ClampedArray(4 * width * height);
                for (let row = 0; row < height; row++) {
                    for (let column = 0; column < width; column++) {
                        const [x, mm] = [(column + 0.5) / perMm, 70 - (row + 0.5) / perMm];
                        let seen = light(x, mm);
                        for (const s of spots) seen *= 1 - s.dark * Math.exp(-((x - s.x) ** 2 + (mm - s.mm) ** 2) / (2 * s.sigma ** 2));
                        for (const b of bars) if (Math.abs(x - b.x) < b.wide / 2 && Math.abs(mm - b.mm) < b.tall / 2) seen *= 1 - b.dark;
                        const at = 4 * (row * width + column);
                        data.set([0.98, 0.95, 0.9].map(tone => shown(tone * seen) + 3 * scatter()), at);
                        data[at + 3] = 255;
                    }
                }
                return { width, height, data, perMm, widthMm: 40, heightMm: 70 };
            };
            const lines = { start: [10, 10], front: [62, 62, 62] };
            const spotsOf = flat => read(plateOf(flat), lines).lanes.flatMap(lane => lane.spots);
            """;

    /** Four lanes of spots between start line and front, far enough apart. */
    private static final String SPOTS = """
            const spots = [6, 15, 24, 33].flatMap((x, lane) => [17, 33, 49].map((mm, place) =>
                ({ x, mm: mm + 1.7 * lane + 0.37 * place, sigma: 0.9 + 0.2 * place, dark: 0.2 + 0.15 * lane })));
            """;

    private Page page;

    @BeforeEach
    void openPage() {
        page = open();
    }

    private Object run(String body) {
        return page.evaluate("async () => {" + body + "}");
    }

    @SuppressWarnings("unchecked")
    private List<Object> list(String body) {
        return (List<Object>) run(body);
    }

    private static double number(Object value) {
        return ((Number) value).doubleValue();
    }

    private static double field(Object map, String name) {
        return number(((Map<?, ?>) map).get(name));
    }

    /** Savitzky and Golay, Anal. Chem. 36 (1964) 1627, table I: quadratic, 5, 7 and 9 points (from memory). */
    @Test
    void theWeightsOfSavitzkyAndGolayAreThoseOfTheirTable() {
        Map<Integer, double[]> table = Map.of(
                2, new double[] {-3, 12, 17, 12, -3, 35},
                3, new double[] {-2, 3, 6, 7, 6, 3, -2, 21},
                4, new double[] {-21, 14, 39, 54, 59, 54, 39, 14, -21, 231});
        table.forEach((half, printed) -> {
            List<Object> weights = list("const { savitzkyGolay } = await import('/photo/reading/smooth.js');"
                    + "return [...savitzkyGolay(" + half + ", 2)];");
            assertEquals(2 * half + 1, weights.size());
            for (int i = 0; i < weights.size(); i++) {
                assertEquals(printed[i] / printed[printed.length - 1], number(weights.get(i)), 1e-12, half + ", " + i);
            }
        });
    }

    /** What Whittaker's smoother punishes, second differences, a straight line has none of: it comes back at any stiffness. */
    @Test
    void aStraightLineStaysAsItIsUnderTheSmootherAndABendDoesNot() {
        List<Object> rests = list("""
                const { whittaker } = await import('/photo/reading/smooth.js');
                const far = values => Math.max(...whittaker(values, values.map((_, i) => 1 + (i % 3)), 1e6).map((z, i) => Math.abs(z - values[i])));
                const places = Array.from({ length: 60 }, (_, i) => i);
                return [far(places.map(i => 2 - 0.3 * i)), far(places.map(i => 0.01 * i * i))];
                """);
        assertEquals(0, number(rests.get(0)), 1e-4);
        assertTrue(number(rests.get(1)) > 1, "a parabola is flattened: " + rests.get(1));
    }

    /** The map u = (2x + y + 1)/w, v = (3y − x + 2)/w, w = 1 + x/2 + y/4, worked out by hand for four points and a fifth. */
    @Test
    void fourPointsGiveTheMapAndItsInverseGivesThemBack() {
        List<Object> found = list("""
                const { homography, inverse, mapped } = await import('/photo/reading/homography.js');
                const from = [{ x: 0, y: 0 }, { x: 2, y: 0 }, { x: 2, y: 4 }, { x: 0, y: 4 }];
                const to = [{ x: 1, y: 2 }, { x: 2.5, y: 0 }, { x: 3, y: 4 }, { x: 2.5, y: 7 }];
                const map = homography(from, to);
                const fifth = mapped(map, { x: 1, y: 2 });
                const back = mapped(inverse(map), fifth);
                const inLine = homography([{ x: 0, y: 0 }, { x: 1, y: 1 }, { x: 2, y: 2 }, { x: 0, y: 4 }], to);
                return [fifth.x, fifth.y, back.x, back.y, inLine === null];
                """);
        assertEquals(2.5, number(found.get(0)), 1e-9);
        assertEquals(3.5, number(found.get(1)), 1e-9);
        assertEquals(1, number(found.get(2)), 1e-9);
        assertEquals(2, number(found.get(3)), 1e-9);
        assertEquals(true, found.get(4), "three points in a line determine no map");
    }

    /** A normal curve is a fifth of its height 1.794 standard deviations from its middle: sqrt(2 ln 5). */
    @Test
    void aSpotOnSlopingGroundComesBackWithItsCentreItsWidthAndItsContrast() {
        List<Object> spots = list(DRAWN + """
                return spotsOf(drawn([{ x: 17.3, mm: 37.25, sigma: 1.3, dark: 0.4 }], [], (x, mm) => 0.3 + 0.008 * x + 0.004 * mm));
                """);
        assertEquals(1, spots.size());
        assertEquals(37.25, field(spots.get(0), "mm"), 0.06);
        assertEquals(17.3, field(spots.get(0), "xMm"), 0.1);
        assertEquals((37.25 - 10) / 52, field(spots.get(0), "rf"), 0.0012);
        assertEquals(2 * 1.794 * 1.3, field(spots.get(0), "sizeMm"), 0.35);
        assertEquals(0.4, field(spots.get(0), "contrast"), 0.07);
    }

    /** Two equal normal curves show two tops from two standard deviations apart on (known since Helguero 1904, from memory). */
    @ParameterizedTest
    @CsvSource({"4.4, 2", "2.2, 1"})
    void twoSpotsAreTwoWhereADipPartsThemAndOneWhereNoneDoes(double apart, int count) {
        List<Object> spots = list(DRAWN + "const d = " + apart / 2 + """
                ;
                return spotsOf(drawn([{ x: 20, mm: 35 - d, sigma: 1.2, dark: 0.4 }, { x: 20, mm: 35 + d, sigma: 1.2, dark: 0.4 }]));
                """);
        assertEquals(count, spots.size());
        double middle =
                spots.stream().mapToDouble(spot -> field(spot, "mm")).average().orElseThrow();
        assertEquals(35, middle, 0.1);
        if (count == 2) {
            assertEquals(apart, field(spots.get(1), "mm") - field(spots.get(0), "mm"), 0.25);
        }
    }

    @Test
    void pencilLinesAreNoSpotsAndASpotBesideThemIsOne() {
        String bars =
                "[{ x: 20, mm: 40, wide: 30, tall: 0.4, dark: 0.5 }, { x: 12, mm: 30, wide: 0.4, tall: 5, dark: 0.5 },"
                        + " { x: 20, mm: 10, wide: 38, tall: 0.4, dark: 0.5 }, { x: 20, mm: 62, wide: 38, tall: 0.4, dark: 0.5 }]";
        assertEquals(List.of(), list(DRAWN + "return spotsOf(drawn([], " + bars + "));"));
        List<Object> spots =
                list(DRAWN + "return spotsOf(drawn([{ x: 25, mm: 30, sigma: 0.8, dark: 0.5 }], " + bars + "));");
        assertEquals(1, spots.size());
        assertEquals(30, field(spots.get(0), "mm"), 0.1);
    }

    @Test
    void linesAreProposedWhereTheyAreDrawnAndNotWhereThereAreNone() {
        List<Object> found = list(DRAWN + """
                const bars = [{ x: 20, mm: 9.5, wide: 38, tall: 0.4, dark: 0.4 }, { x: 20, mm: 63.2, wide: 38, tall: 0.4, dark: 0.4 }];
                const [with_, without] = [bars, []].map(marks => proposed(plateOf(drawn([{ x: 20, mm: 40, sigma: 1, dark: 0.4 }], marks))));
                return [...with_.start, ...with_.front, without.start, without.front];
                """);
        for (int i = 0; i < 5; i++) {
            assertEquals(i < 2 ? 9.5 : 63.2, number(found.get(i)), 0.15, "height " + i);
        }
        assertNull(found.get(5));
        assertNull(found.get(6));
    }

    /** Half the light, and light that falls to a third across the plate either way: no centre moves by a tenth of a millimetre. */
    @ParameterizedTest
    @CsvSource({"0.3", "0.2 + 0.4 * x / 40", "0.6 - 0.4 * mm / 70", "0.2 + 0.2 * x / 40 + 0.2 * mm / 70"})
    void theLightMovesNoCentre(String light) {
        List<Object> rests = list(
                DRAWN + SPOTS + "const even = spotsOf(drawn(spots)); const other = spotsOf(drawn(spots, [], (x, mm) => "
                        + light + "));" + """
                const far = found => spots.map(({ x, mm }) => Math.min(...found.map(spot => Math.hypot(spot.xMm - x, spot.mm - mm))));
                return [even.length, other.length, Math.max(...far(even)), Math.max(...far(other))];
                """);
        assertEquals(12, number(rests.get(0)));
        assertEquals(12, number(rests.get(1)));
        assertEquals(0, number(rests.get(2)), 0.1);
        assertEquals(0, number(rests.get(3)), 0.1);
    }

    @Test
    void thePlatesCornersAreFoundAndNoneWhereThereIsNoPlate() {
        List<Object> far = list("""
                const { cornersOf } = await import('/photo/reading/corners.js');
                const corners = [{ x: 0.2, y: 0.86 }, { x: 0.75, y: 0.9 }, { x: 0.78, y: 0.13 }, { x: 0.26, y: 0.1 }];
                const photo = draw => {
                    const context = new OffscreenCanvas(900, 1200).getContext('2d');
                    const ground = context.createLinearGradient(0, 0, 900, 1200);
                    ground.addColorStop(0, '#706860');
                    ground.addColorStop(1, '#a09890');
                    context.fillStyle = ground;
                    context.fillRect(0, 0, 900, 1200);
                    if (draw) {
                        context.fillStyle = '#e8e6e0';
                        context.beginPath();
                        for (const { x, y } of corners) context.lineTo(900 * x, 1200 * y);
                        context.fill();
                    }
                    return context.getImageData(0, 0, 900, 1200);
                };
                const found = cornersOf(photo(true)).corners;
                return [Math.max(...found.map(({ x, y }, i) => Math.hypot(900 * (x - corners[i].x), 1200 * (y - corners[i].y)))), cornersOf(photo(false))];
                """);
        assertEquals(0, number(far.get(0)), 1.5, "pixels");
        assertNull(far.get(1));
    }

    @ParameterizedTest
    @CsvSource({
        "all-black, 'drawnFile(600, 800, \"#030303\")'",
        "all-white, 'drawnFile(600, 800, \"#ffffff\")'",
        "too-small, 'drawnFile(150, 800, \"#808080\")'",
        "too-large, 'pngOf(10000, 6000)'",
        "heic, 'new Blob([Uint8Array.of(0, 0, 0, 24, ...bytes(\"ftypheic\"), 0, 0, 0, 0, ...bytes(\"mif1heic\"), ...new Uint8Array(64))])'",
        "not-a-picture, 'new Blob([\"Rf 0.31, 0.55; no picture at all\"])'",
        "not-a-picture, 'new Blob([])'",
        "fine, 'drawnFile(600, 800, \"#808080\")'",
    })
    void whatIsNoPictureOfAPlateIsToldApart(String expected, String file) {
        assertEquals(expected, run("""
                const { decoded } = await import('/photo/reading/decode.js');
                const bytes = text => [...text].map(letter => letter.charCodeAt(0));
                const drawnFile = (width, height, colour) => {
                    const canvas = new OffscreenCanvas(width, height);
                    const context = canvas.getContext('2d');
                    context.fillStyle = colour;
                    context.fillRect(0, 0, width, height);
                    return canvas.convertToBlob();
                };
                const pngOf = (width, height) => {
                    const head = new DataView(new ArrayBuffer(33));
                    [0x89, ...bytes('PNG'), 13, 10, 26, 10, 0, 0, 0, 13, ...bytes('IHDR')].forEach((byte, i) => head.setUint8(i, byte));
                    head.setUint32(16, width);
                    head.setUint32(20, height);
                    return new Blob([head]);
                };
                const found = await decoded(await %s);
                return found.fault?.code ?? 'fine';
                """.formatted(file)));
    }

    @ParameterizedTest
    @CsvSource({
        "'[[0.2, 0.9], [0.8, 0.9], [0.8, 0.1], [0.2, 0.1]]',",
        "'[[0.2, 0.9], [0.8, 0.1], [0.8, 0.9], [0.2, 0.1]]', corners-crossed",
        "'[[0.8, 0.9], [0.2, 0.9], [0.2, 0.1], [0.8, 0.1]]', corners-crossed",
        "'[[0.2, 0.9], [0.22, 0.9], [0.22, 0.88], [0.2, 0.88]]', corners-small",
    })
    void cornersThatMakeNoPlateAreRefused(String corners, String expected) {
        assertEquals(
                expected,
                run("const { cornersFault } = await import('/photo/reading/flat.js'); return cornersFault(" + corners
                        + ".map(([x, y]) => ({ x, y })), { width: 1500, height: 2000 });"));
    }

    @ParameterizedTest
    @CsvSource({
        "'[10, 10]', '[60, 60, 60]',",
        "'[60, 60]', '[10, 10, 10]', front-below-start",
        "'[10, 50]', '[60, 60, 40]', front-below-start",
        "'[-3, 10]', '[60, 60, 60]', lines-outside",
        "'[10, 10]', '[60, NaN, 60]', lines-outside",
    })
    void linesThatMakeNoRunAreRefused(String start, String front, String expected) {
        assertEquals(
                expected,
                run("const { linesFault } = await import('/photo/reading/plate.js'); return linesFault({ start: "
                        + start + ", front: " + front + " }, { heightMm: 70 });"));
    }
}
