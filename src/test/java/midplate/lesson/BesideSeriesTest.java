package midplate.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import midplate.catalogue.PairBasis;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.words.Language;
import midplate.words.Message;
import midplate.words.Refusal;
import midplate.words.Texts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** What is set beside a series: another pair of equal published strength, and another layer by theory. */
class BesideSeriesTest {
    private static final LessonSample SAMPLE =
            Samples.of("hexane", "ethyl acetate", "A", "O=C(c1ccccc1)c1ccccc1", "B", "OC(c1ccccc1)c1ccccc1");

    private static Solvent solvent(String name) {
        return Samples.CATALOGUE.solvent(name);
    }

    private static PlateSeries against(LessonSample sample, String weak, String strong) {
        SeriesQuestion.Eluent other = new SeriesQuestion.Eluent(solvent(weak), solvent(strong));
        return PlateSeries.of(
                Samples.MODEL, new SeriesQuestion(sample, List.of(), Optional.of(other), Optional.empty()));
    }

    private static PlateSeries layers(LessonSample sample) {
        return PlateSeries.of(
                Samples.MODEL, new SeriesQuestion(sample, List.of(), Optional.empty(), Optional.of(Sorbent.ALUMINA)));
    }

    /**
     * Snyder, Principles of Adsorption Chromatography, 1968 (memory): equi-eluotropic mixtures in pentane on alumina, printed for an activity of
     * 0.60. At the activity kept to here strengths move by at most 0.005 more (own arithmetic).
     */
    @ParameterizedTest
    @CsvFileSource(files = "shared/reference/equi-eluotropic-alumina.csv", useHeadersInDisplayName = true)
    void mixturesOnAluminaHaveThePrintedStrength(String strong, double percent, double strength, String source) {
        if (Samples.CATALOGUE.find(strong).isPresent()) { // benzene is offered nowhere
            PublishedStrength published = PublishedStrength.of(
                            Samples.CATALOGUE, Sorbent.ALUMINA, solvent("pentane"), solvent(strong))
                    .orElseThrow();
            assertEquals(strength, published.at(percent), 0.015, source);
            assertEquals(percent, published.percentFor(published.at(percent)).orElseThrow(), 1e-6);
        }
    }

    @Test
    void theOtherPairIsEquallyStrongAtEveryShareItReaches() {
        PlateSeries series = against(SAMPLE, "hexane", "acetone");
        EqualPlates other = series.against().orElseThrow();
        assertEquals(PairBasis.THEORY, other.basis());
        PublishedStrength here = PublishedStrength.of(
                        Samples.CATALOGUE, Sorbent.SILICA, solvent("hexane"), solvent("ethyl acetate"))
                .orElseThrow();
        PublishedStrength there = PublishedStrength.of(
                        Samples.CATALOGUE, Sorbent.SILICA, solvent("hexane"), solvent("acetone"))
                .orElseThrow();
        int reached = 0;
        for (int i = 0; i < other.equal().size(); i++) {
            if (other.equal().get(i).isPresent()) {
                double percent = other.equal().get(i).get();
                assertEquals(here.at(other.percentStrong().get(i)), there.at(percent), 1e-6);
                assertTrue(percent >= other.lowest() && percent <= other.highest());
                reached++;
            }
        }
        assertTrue(reached > other.equal().size() / 2, "acetone is stronger than ethyl acetate");
        for (EqualPlates.Parting parting : other.partings()) {
            parting.wider()
                    .forEach(share -> share.ifPresent(
                            chance -> assertTrue(chance >= 0 && chance <= 1, () -> "chance " + chance)));
        }
    }

    @Test
    void ethersEndIsBelowThatOfEthylAcetateSoThereNothingIsEquallyStrong() {
        // published ε on silica, newer series: ether 0.43 below ethyl acetate 0.48 (Sadek 2004, p. 70, read)
        EqualPlates other = against(SAMPLE, "hexane", "diethyl ether").against().orElseThrow();
        assertTrue(other.equal().get(other.equal().size() - 1).isEmpty());
        assertTrue(other.equal().stream().anyMatch(Optional::isPresent));
    }

    @ParameterizedTest
    @CsvSource({
        "hexane, ethyl acetate, hexane, ethyl acetate, against.strong, lesson.series-same-pair",
        "hexane, toluene, dichloromethane, methanol, against.strong, lesson.series-strength-apart",
        "hexane, ethyl acetate, hexane, methanol, against.strong, catalogue.pair-partly-miscible",
    })
    void whatCannotStandBesideIsRefused(
            String weak, String strong, String otherWeak, String otherStrong, String field, String reason) {
        LessonSample sample = Samples.of(weak, strong, "A", "COc1ccccc1");
        Refusal refusal = assertThrows(Refusal.class, () -> against(sample, otherWeak, otherStrong));
        assertEquals(field, refusal.field());
        assertEquals(reason, refusal.reason().key());
    }

    /**
     * Own arithmetic with published strengths: ethyl acetate 0.58 and hexane 0.01 on alumina, 0.48 and 0.01 on silica (Sadek 2004, p. 70, read;
     * Snyder 1968 and 1983, memory H): from hexane on ethyl acetate gains 0.57 and 0.47, so log10 k is less by α′·A_s·0.10.
     */
    @Test
    void onAluminaTheLawMovesSpotsByTheDifferenceOfTheStrengths() {
        PlateSeries series = layers(SAMPLE);
        OtherLayer layer = series.otherLayer().orElseThrow();
        int last = layer.percentStrong().size() - 1;
        assertEquals(0.58, layer.there().get(last), 1e-9);
        assertEquals(0.01, layer.there().get(0), 1e-9);
        assertEquals(0.48, layer.here().get(last), 1e-9);
        assertEquals(0.01, layer.here().get(0), 1e-9);
        for (OtherLayer.Spot spot : layer.spots()) {
            List<Double> here = series.curves().spots().get(spot.name()).rf();
            assertEquals(Math.max(here.get(0), 0.002), spot.rf().get(0), 0.003, "alike in the weak solvent");
            int middle = layer.percentStrong().size() / 3; // a few per cent, where no spot is at a line
            double gain = layer.there().get(middle) - layer.here().get(middle); // both 0.01 in hexane
            double expected = logK(here.get(middle)) - 0.57 * spot.soluteArea() * gain;
            assertEquals(expected, logK(spot.rf().get(middle)), 0.1, spot.name());
            assertTrue(spot.rf().get(middle) > here.get(middle) + 0.02, spot.name());
            // areas of compounds of one to three rings: benzene 6.0, naphthalene 8.2 (Snyder 1968, memory M)
            assertTrue(spot.soluteArea() > 4 && spot.soluteArea() < 16, spot.toString());
        }
    }

    @Test
    void theLayerTellsThatEvenTheDirectionIsAssumedAndHowMuchTheStrengthCountsOnEach() {
        OtherLayer layer = layers(SAMPLE).otherLayer().orElseThrow();
        List<Message> said = layer.sentences(SAMPLE);
        Message shows = said.stream()
                .filter(message -> message.key().equals("lesson.series-layer-shows"))
                .findFirst()
                .orElseThrow();
        // ethyl acetate 0.48 on silica, 0.58 on alumina, hexane 0.01 on both (Sadek 2004, p. 70, read; Snyder 1968 and
        // 1983, memory H)
        assertEquals(0.47, (double) shows.args().get("hereGain"), 1e-9);
        assertEquals(0.57, (double) shows.args().get("thereGain"), 1e-9);
        for (Language language : Language.values()) {
            String words = said.stream()
                    .map(message -> Texts.of(language).render(message))
                    .reduce("", String::concat);
            String assumed =
                    language == Language.GERMAN ? "schon die Richtung folgt aus der Annahme" : "even that direction";
            assertTrue(words.contains(assumed), words);
        }
    }

    @Test
    void whatTheEqualStrengthAndWhatTheSpotsRestOnAreToldApart() {
        List<Message> said = against(SAMPLE, "hexane", "diethyl ether")
                .against()
                .orElseThrow()
                .sentences(Samples.CATALOGUE, SAMPLE);
        assertEquals(
                List.of("lesson.series-equal-by", "lesson.series-other-measured"),
                said.stream().map(Message::key).limit(2).toList());
        for (Language language : Language.values()) {
            for (Message message : said) {
                String words = Texts.of(language).render(message);
                assertTrue(Character.isUpperCase(words.charAt(0)), words);
            }
        }
    }

    private static double logK(double rf) {
        return Math.log10((1 - rf) / rf);
    }

    @Test
    void aLayerWithoutPublishedValuesIsRefusedNamingThoseThatHaveThem() {
        // no strength of the mixed solvent on alumina is published here
        LessonSample mixed = Samples.of("heptane", "ethyl-acetate-ethanol-3-1", "A", "COc1ccccc1");
        Refusal refusal = assertThrows(Refusal.class, () -> layers(mixed));
        assertEquals("otherLayer", refusal.field());
        assertEquals("lesson.series-layer-unknown", refusal.reason().key());
        assertTrue(
                refusal.allowed().toString().contains("ethyl-acetate"),
                refusal.allowed().toString());
    }
}
