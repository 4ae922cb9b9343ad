package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import midplate.column.Loading;
import midplate.identity.LaneRole;
import midplate.identity.SpotShape;
import midplate.notebook.ColumnRun;
import midplate.notebook.ColumnStep;
import midplate.notebook.ComparisonPlate;
import midplate.notebook.Entered;
import midplate.notebook.JarAdditive;
import midplate.notebook.PlatePhoto;
import midplate.notebook.ReactionPlate;
import midplate.notebook.ReactionSpecies;
import midplate.notebook.Study;
import midplate.notebook.StudyBed;
import midplate.notebook.StudyChecks;
import midplate.notebook.StudyColumn;
import midplate.notebook.StudyComparison;
import midplate.notebook.StudyHrf;
import midplate.notebook.StudyPlate;
import midplate.notebook.StudyPurity;
import midplate.notebook.StudyReaction;
import midplate.notebook.StudySpot;
import midplate.notebook.TubeMark;
import midplate.notebook.UnreadableStudy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written is read again as it was. */
class StudyRoundTripTest {
    private static final Path KEPT = Path.of("shared", "studies");
    private static final StudyFiles FILES = StudyFiles.builtIn();

    static Stream<Path> keptFiles() throws IOException {
        try (Stream<Path> files = Files.list(KEPT)) {
            return files.sorted().toList().stream();
        }
    }

    private static Study kept(String file) throws IOException, UnreadableStudy {
        return FILES.read(Files.readAllBytes(KEPT.resolve(file)));
    }

    @Test
    void aFileOfEachVersionIsKept() throws IOException {
        assertEquals(
                Stream.iterate(1, version -> version + 1)
                        .limit(StudyUpgrades.NEWEST)
                        .map(version -> KEPT.resolve("version-" + version + ".json"))
                        .toList(),
                keptFiles().toList());
    }

    @ParameterizedTest
    @CsvSource({"10, 10", "12.50, 12.50", "1.25e1, 12.5", "1E1, 10", "1e-999999999, 0", "1e-99999999999, 0"})
    void aShareOfVersion1BecomesAnEluentWithoutAnExponent(String written, String eluent)
            throws IOException, UnreadableStudy {
        String file = Files.readString(KEPT.resolve("version-1.json"))
                .replaceFirst("\"percentStrong\": [0-9.]+", "\"percentStrong\": " + written);
        StudyPlate plate =
                FILES.read(file.getBytes(StandardCharsets.UTF_8)).plates().get(0);
        assertEquals(eluent, plate.eluent());
        assertEquals(Double.parseDouble(written), plate.percentStrong().orElseThrow());
    }

    @ParameterizedTest
    @MethodSource("keptFiles")
    void aKeptFileOfEachVersionIsWrittenAndReadAgainAsItWas(Path file) throws IOException, UnreadableStudy {
        Study study = FILES.read(Files.readAllBytes(file));
        byte[] written = FILES.write(study);
        assertEquals(study, FILES.read(written));
        assertEquals(List.of(), Schemas.broken("study", new String(written, StandardCharsets.UTF_8)));
    }

    // the kept file was written by hand, as a person would lay it out
    @Test
    void theKeptFileOfTheNewestVersionIsWrittenSignBySign() throws IOException, UnreadableStudy {
        String file = Files.readString(KEPT.resolve("version-" + StudyUpgrades.NEWEST + ".json"));
        assertEquals(
                file.strip(),
                new String(FILES.write(kept("version-" + StudyUpgrades.NEWEST + ".json")), StandardCharsets.UTF_8)
                        .strip());
    }

    @Test
    void whatTheKeptFileSaysIsInTheStudy() throws IOException, UnreadableStudy {
        Study study = kept("version-2.json");
        assertEquals("20261026-p3h8d5wz2n", study.id().value());
        assertEquals(Instant.parse("2026-10-26T14:20:45.120Z"), study.modified());
        assertEquals(Study.Keeping.AT_HAND, study.keeping());
        assertEquals(
                Entered.text("1?"),
                study.spots().get(1).what().orElseThrow().groups().get("alcohol"));
        StudyPlate first = study.plates().get(0);
        assertEquals(OptionalDouble.of(10), first.percentStrong());
        assertEquals(
                Optional.of(StudyPlate.Lining.LINED),
                first.conditions().orElseThrow().lined());
        StudyPlate.SpotSeen seen = first.lanes().get(0).readings().get(0);
        assertEquals(Entered.number("27.5", 27.5), seen.place());
        assertEquals(Optional.of(Entered.number("3", 3)), seen.sizeMm());
        assertEquals(List.of("s2", "s3"), first.lanes().get(0).readings().get(1).spots());
        assertEquals(StudyPlate.Given.RF, first.lanes().get(1).readings().get(0).given());
        StudyPlate second = study.plates().get(1);
        assertEquals(Entered.text("4o"), second.widthMm());
        assertEquals(Entered.NOTHING, second.frontMm());
        assertEquals(OptionalDouble.empty(), second.percentStrong());
        assertEquals(new JarAdditive("own", "1 % formic acid"), second.additive());
        assertEquals(List.of("s1", "s2"), study.next().apart());
        assertEquals(0.39, study.advices().get(0).spots().get(1).high());
        assertTrue(study.notes().contains("\n"), study.notes());
    }

    @Test
    void whatTheKeptFileSaysOfColumnsIsInTheStudy() throws IOException, UnreadableStudy {
        StudyColumn column = kept("version-3.json").column().orElseThrow();
        assertEquals(Optional.of("s2"), column.target());
        assertEquals(Entered.number("250", 250), column.massMg());
        assertEquals(StudyBed.Kind.CARTRIDGE, column.bed().kind());
        assertEquals(Loading.DRY, column.loading());
        assertEquals(Entered.NOTHING, column.loadMl());
        assertEquals(StudyColumn.Elution.OWN, column.elution());
        assertEquals(
                List.of(
                        new ColumnStep("19 : 1", OptionalDouble.of(5), Entered.number("60", 60)),
                        new ColumnStep("4 :", OptionalDouble.empty(), Entered.text("12o"))),
                column.steps());
        ColumnRun run = column.runs().get(0);
        assertEquals(Optional.of(Entered.number("12", 12)), run.bed().grams());
        assertEquals(Optional.of(List.of()), run.tubes().get(0).marks(), "looked at, nothing seen");
        assertEquals(
                Optional.of(List.of(new TubeMark("s1", 1), new TubeMark("s2", 2))),
                run.tubes().get(2).marks());
        assertEquals(Optional.empty(), run.tubes().get(4).marks(), "not looked at");
        assertEquals(Entered.number("25.1034", 25.1034), run.flasks().get(0).tareGrams());
        assertEquals(Entered.text("24,98x"), run.flasks().get(1).tareGrams());
        assertEquals(
                new StudyBed(
                        StudyBed.Kind.GLASS,
                        Optional.of(Entered.number("12", 12)),
                        Optional.of(Entered.number("20", 20)),
                        Optional.of(Entered.number("150", 150))),
                column.runs().get(1).bed(),
                "what was typed for a cartridge is kept beside");
    }

    @Test
    void aStudyFromBeforeColumnsHasNone() throws IOException, UnreadableStudy {
        assertEquals(Optional.empty(), kept("version-2.json").column());
        assertEquals(Optional.empty(), kept("version-1.json").column());
    }

    @Test
    void whatTheKeptFileSaysOfChecksIsInTheStudy() throws IOException, UnreadableStudy {
        StudyChecks checks = kept("version-4.json").checks().orElseThrow();
        StudyComparison identity = checks.identity().orElseThrow();
        assertEquals(
                List.of("acetophenone", "ester from the shelf", ""),
                identity.references().stream().map(StudySpot::name).toList());
        assertEquals(
                Optional.of(Entered.text("4o")), identity.candidates().get(1).hrf());
        ComparisonPlate plate = identity.plates().get(0);
        assertEquals(OptionalDouble.of(20), plate.eluent().percentStrong());
        assertEquals(
                List.of(LaneRole.UNKNOWN, LaneRole.CO_SPOT, LaneRole.REFERENCE, LaneRole.REFERENCE),
                plate.lanes().stream().map(ComparisonPlate.Lane::role).toList());
        ComparisonPlate.Reading seen = plate.lanes().get(1).readings().get(0);
        assertEquals(Entered.number("33.0", 33), seen.place());
        assertEquals(Optional.of(SpotShape.STREAK), seen.shape());
        assertEquals(StudyPlate.Given.RF, plate.lanes().get(1).readings().get(1).given());
        assertEquals(Optional.empty(), plate.lanes().get(0).readings().get(0).shape(), "nobody said it");
        StudyPurity purity = checks.purity().orElseThrow();
        assertEquals(Optional.of("s1"), purity.spot());
        assertEquals(List.of("uv-254", "iodine"), purity.seenBy());
        assertEquals(Entered.text("1 ?"), purity.concentrationPercent());
        assertEquals(Optional.of(StudyPurity.AtStart.WEAK), purity.atStart());
        StudyHrf hrf = checks.hrf().orElseThrow();
        assertEquals("TC", hrf.system());
        assertEquals(
                List.of("lidocaine", "desipramine"), List.copyOf(hrf.measured().keySet()), "in the order typed");
        assertEquals(Entered.number("42", 42), hrf.spots().get(0).hrf());
        StudyReaction reaction = checks.reaction().orElseThrow();
        assertEquals(Entered.number("90", 90), reaction.expectedMinutes());
        assertEquals(Optional.of("s1"), reaction.species().get(0).spot());
        assertEquals(ReactionSpecies.Part.PRODUCT, reaction.species().get(1).part());
        assertEquals(
                List.of(
                        new ReactionPlate.Mark("x1", 2, Optional.empty()),
                        new ReactionPlate.Mark("x2", 3, Optional.of(Entered.text("0.2?"))),
                        new ReactionPlate.Mark("x3", 0, Optional.empty())),
                reaction.plates().get(1).marks());
        assertEquals(OptionalInt.of(0), reaction.plates().get(0).baseline(), "looked at, nothing there");
        assertEquals(OptionalInt.empty(), reaction.plates().get(1).baseline(), "not looked at");
    }

    @Test
    void aStudyFromBeforeChecksHasNone() throws IOException, UnreadableStudy {
        for (int version = 1; version < 4; version++) {
            assertEquals(Optional.empty(), kept("version-" + version + ".json").checks());
        }
    }

    @Test
    void whatTheKeptFileSaysOfAPhotoIsInTheStudy() throws IOException, UnreadableStudy {
        StudyPlate plate = kept("version-5.json").plates().get(0);
        PlatePhoto photo = plate.photo().orElseThrow();
        assertEquals(PlatePhoto.Light.UV_254, photo.light());
        assertTrue(photo.name().sha256().startsWith("ba7816bf"), photo.name().sha256());
        List<StudyPlate.SpotSeen> seen = plate.lanes().get(0).readings();
        assertEquals(Optional.of(Entered.number("0.20", 0.2)), seen.get(0).errorMm());
        assertEquals(Optional.of("sharp-head"), seen.get(0).shape());
        assertEquals(Optional.empty(), seen.get(1).errorMm());
        assertEquals(Optional.of(Entered.text("o.4")), seen.get(2).errorMm());
        assertEquals(Optional.empty(), kept("version-5.json").plates().get(1).photo());
        for (int version = 1; version < 5; version++) {
            for (StudyPlate before : kept("version-" + version + ".json").plates()) {
                assertEquals(Optional.empty(), before.photo());
                assertTrue(before.lanes().stream()
                        .flatMap(lane -> lane.readings().stream())
                        .allMatch(reading -> reading.errorMm().isEmpty()));
            }
        }
    }

    @Test
    void version1IsReadAsItWasAgreed() throws IOException, UnreadableStudy {
        Study study = kept("version-1.json");
        assertEquals(Study.Keeping.AT_HAND, study.keeping());
        assertEquals(Study.Origin.OWN, study.origin());
        assertEquals("hexane", study.next().weak());
        assertEquals("ethyl-acetate", study.next().strong());
        assertEquals(new JarAdditive("own", "1 % triethylamine"), study.next().additive());
        assertEquals(Entered.number("0.2", 0.2), study.next().windowLow());
        assertEquals(Entered.number("0.8", 0.8), study.next().windowHigh());
        assertEquals("usual", study.next().windowKind());
        assertEquals(List.of(), study.next().apart());
        assertEquals(Entered.number("10", 10), study.next().amountMl());
        assertEquals(Entered.number("50", 50), study.next().jarDiameterMm());
        assertEquals(
                StudySpot.By.SMILES, study.spots().get(0).what().orElseThrow().by());
        assertEquals(
                StudySpot.By.GROUPS, study.spots().get(1).what().orElseThrow().by());
        assertEquals(Optional.empty(), study.spots().get(2).what());
        StudyPlate first = study.plates().get(0);
        assertEquals("10", first.eluent());
        assertEquals(OptionalDouble.of(10), first.percentStrong());
        assertEquals(JarAdditive.NONE, first.additive());
        assertEquals(List.of(), first.notSeen());
        assertEquals(
                List.of("l1", "l2", "l3"),
                study.plates().stream()
                        .flatMap(plate -> plate.lanes().stream())
                        .map(StudyPlate.Lane::id)
                        .toList());
        List<StudyPlate.SpotSeen> seen = study.plates().stream()
                .flatMap(plate -> plate.lanes().stream())
                .flatMap(lane -> lane.readings().stream())
                .toList();
        assertEquals(
                List.of("r1", "r2", "r3", "r4", "r5"),
                seen.stream().map(StudyPlate.SpotSeen::id).toList());
        assertEquals(
                List.of(List.of("s1"), List.of("s2"), List.of(), List.of("s1"), List.of("s2")),
                seen.stream().map(StudyPlate.SpotSeen::spots).toList());
        assertEquals(Optional.of("stain"), seen.get(0).seen());
        assertEquals(
                new JarAdditive("own", "1 % triethylamine"),
                study.plates().get(1).additive());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void anyStudyIsWrittenAndReadAgainAsItWas(long seed) throws IOException, UnreadableStudy {
        RandomStudies studies = new RandomStudies(seed);
        Set<Study> different = new HashSet<>();
        for (int i = 0; i < 250; i++) {
            Study study = studies.next();
            byte[] written = FILES.write(study);
            assertEquals(study, FILES.read(written), () -> new String(written, StandardCharsets.UTF_8));
            assertArrayEquals(written, FILES.write(FILES.read(written)));
            assertEquals(List.of(), Schemas.broken("study", new String(written, StandardCharsets.UTF_8)));
            different.add(study);
        }
        assertTrue(different.size() > 240, "the studies differ");
    }

    @Test
    void aStudyIsSentAsItIsWritten() throws IOException {
        ObjectMapper json = new ObjectMapper();
        RandomStudies studies = new RandomStudies(5);
        for (int i = 0; i < 50; i++) {
            Study study = studies.next();
            assertEquals(
                    json.readTree(FILES.write(study)),
                    json.readTree(JsonWriting.text(StudyWriter.tree(study))),
                    study.toString());
        }
    }

    @Test
    void aNumberKeepsTheDigitsItWasTypedInAndIsNeverTurnedIntoAText() throws IOException, UnreadableStudy {
        Study study = kept("version-2.json");
        String typed = new String(FILES.write(study), StandardCharsets.UTF_8).replace("27.5", "27.500");
        assertTrue(new String(FILES.write(FILES.read(typed.getBytes(StandardCharsets.UTF_8))), StandardCharsets.UTF_8)
                .contains("\"centreMm\": 27.500,"));
        Entered german = Entered.number("0,35", 0.35);
        StudyPlate plate = study.plates().get(0);
        StudyPlate comma = new StudyPlate(
                plate.id(),
                german,
                plate.widthMm(),
                plate.startMm(),
                plate.frontMm(),
                plate.weak(),
                plate.strong(),
                plate.eluent(),
                plate.percentStrong(),
                plate.additive(),
                plate.conditions(),
                plate.lanes(),
                plate.notSeen(),
                plate.photo());
        assertEquals("0.35", StudyWriter.plate(comma).get("heightMm").toString());
    }

    @Test
    void oneReadingIsOneLine() throws IOException, UnreadableStudy {
        String file = new String(FILES.write(kept("version-2.json")), StandardCharsets.UTF_8);
        assertTrue(file.lines().allMatch(line -> line.split("\"centreMm\"", -1).length <= 2), file);
        assertFalse(file.lines().anyMatch(line -> line.endsWith(" ")), file);
    }
}
