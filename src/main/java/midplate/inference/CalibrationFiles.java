package midplate.inference;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import midplate.catalogue.GroupDifference;
import midplate.catalogue.GroupEffects;
import midplate.catalogue.JointTraits;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.PlatePair;
import midplate.catalogue.TheoryCheck;
import midplate.catalogue.TheoryStrength;

/** Writes what was fitted, so that the same fit gives the same bytes: fixed order, six significant digits, no date. */
public final class CalibrationFiles {
    private static final MathContext DIGITS = new MathContext(6);
    private static final JsonMapper MAPPER = new JsonMapper();
    private static final ObjectWriter WRITER =
            MAPPER.writer(new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n")));

    private CalibrationFiles() {}

    /** Writes {@code index.json} and one file for each pair into a folder, which is made if it is not there. */
    public static void write(MeasuredPairs fitted, Path folder) throws IOException {
        Files.createDirectories(folder);
        ObjectNode index = MAPPER.createObjectNode();
        ArrayNode pairs = index.putArray("pairs");
        fitted.pairs().forEach(pair -> pairs.add(pair.id()));
        fitted.joint().ifPresent(joint -> joint(joint, index));
        ArrayNode structures = index.putArray("structures");
        fitted.structures().forEach(effects -> structures.add(effects.pair()));
        List<GroupDifference> differences =
                fitted.joint().map(JointTraits::differences).orElse(List.of());
        if (!differences.isEmpty()) {
            index.put("differences", GroupDifference.FILE);
            write(differences(differences), folder.resolve(GroupDifference.FILE));
        }
        if (fitted.theory().isPresent()) {
            index.put("theory", TheoryStrength.FILE);
            write(theory(fitted.theory().get()), folder.resolve(TheoryStrength.FILE));
        }
        write(index, folder.resolve("index.json"));
        for (PlatePair pair : fitted.pairs()) {
            write(pair(pair), folder.resolve(pair.id() + ".json"));
        }
        for (GroupEffects effects : fitted.structures()) {
            write(effects(effects), folder.resolve(GroupEffects.file(effects.pair())));
        }
    }

    /** An object to fill in. */
    static ObjectNode object() {
        return MAPPER.createObjectNode();
    }

    static void write(ObjectNode node, Path file) throws IOException {
        Files.writeString(file, WRITER.writeValueAsString(node) + "\n");
    }

    private static void joint(JointTraits joint, ObjectNode index) {
        ObjectNode node = index.putObject("joint");
        ArrayNode axes = node.putArray("axes");
        for (JointTraits.Axis axis : joint.axes()) {
            axes.addObject()
                    .put("pair", axis.pair())
                    .put("trait", axis.trait().name().toLowerCase(Locale.ROOT));
        }
        numbers(node.putArray("means"), joint.means());
        numbers(node.putArray("covariance"), joint.covariance());
        node.putObject("width")
                .put("factor", rounded(joint.width().factor()))
                .put("slope", rounded(joint.width().slope()));
        ArrayNode reaches = index.putArray("reaches");
        for (JointTraits.Reach reach : joint.reaches()) {
            reaches.addObject()
                    .put("from", reach.from())
                    .put("to", reach.to())
                    .put("compounds", reach.compounds())
                    .put("lowest", rounded(reach.lowest()))
                    .put("highest", rounded(reach.highest()));
        }
    }

    private static ObjectNode differences(List<GroupDifference> differences) {
        ObjectNode node = MAPPER.createObjectNode();
        ArrayNode all = node.putArray("differences");
        for (GroupDifference difference : differences) {
            ObjectNode each = all.addObject();
            each.put("from", difference.from());
            each.put("to", difference.to());
            each.put("compounds", difference.compounds());
            each.put("residual", rounded(difference.residual()));
            each.put("unseen", rounded(difference.unseen()));
            ArrayNode parts = each.putArray("parts");
            for (GroupDifference.Part part : difference.parts()) {
                parts.addObject()
                        .put("part", part.part())
                        .put("c", rounded(part.c()))
                        .put("compounds", part.compounds());
            }
            numbers(each.putArray("covariance"), difference.covariance());
        }
        return node;
    }

    private static ObjectNode theory(TheoryStrength theory) {
        ObjectNode node = MAPPER.createObjectNode();
        node.put("series", theory.series().name().toLowerCase(Locale.ROOT));
        node.put("activity", rounded(theory.activity()));
        node.put("slope", rounded(theory.slope()));
        ArrayNode checks = node.putArray("checks");
        for (TheoryCheck check : theory.checks()) {
            ObjectNode each = checks.addObject();
            each.put("kind", check.kind().id());
            each.put("pair", check.pair());
            each.put("from", check.from());
            numbers(each.putArray("percents"), check.percents());
            each.put("compounds", check.compounds());
            each.put("bias", rounded(check.bias()));
            each.put("scatter", rounded(check.scatter()));
            each.put("deviationC", rounded(check.deviationC()));
            each.put("deviationS", rounded(check.deviationS()));
        }
        return node;
    }

    private static ObjectNode pair(PlatePair pair) {
        ObjectNode node = MAPPER.createObjectNode();
        node.put("sorbent", pair.sorbent().id());
        node.put("weak", pair.weak().id());
        node.put("strong", pair.strong().id());
        ObjectNode trusted = node.putObject("trusted");
        trusted.put("from", rounded(pair.trustedFrom()));
        trusted.put("to", rounded(pair.trustedTo()));
        numbers(node.putArray("percentStrong"), pair.percentStrong());
        numbers(node.putArray("strength"), pair.strength());
        numbers(node.putArray("strengthError"), pair.strengthError());
        numbers(node.putArray("hold"), pair.hold());
        numbers(node.putArray("early"), pair.early());
        numbers(node.putArray("noiseScale"), pair.noiseScale());
        node.put("noiseLeftAtLines", rounded(pair.noiseLeftAtLines()));
        node.put("atLines", rounded(pair.atLines()));
        node.put("stretchStart", rounded(pair.stretchStart()));
        node.put("stretchFront", rounded(pair.stretchFront()));
        ObjectNode fit = node.putObject("fit");
        fit.put("compounds", pair.compounds());
        fit.put("readings", pair.readings());
        fit.put("residual", rounded(pair.residual()));
        ObjectNode provenance = node.putObject("provenance");
        pair.provenance().sources().forEach(provenance.putArray("sources")::add);
        provenance.put("inputSha256", pair.provenance().inputSha256());
        provenance.put("leftOut", pair.provenance().leftOut());
        provenance.put("command", pair.provenance().command());
        ArrayNode bells = node.putObject("traits").putArray("bells");
        for (PlatePair.Bell bell : pair.prior().bells()) {
            ObjectNode each = bells.addObject();
            each.put("weight", rounded(bell.weight()));
            numbers(each.putArray("middle"), List.of(bell.c(), bell.s(), bell.t()));
            numbers(
                    each.putArray("covariance"),
                    List.of(
                            bell.varianceC(),
                            bell.covarianceCS(),
                            bell.covarianceCT(),
                            bell.varianceS(),
                            bell.covarianceST(),
                            bell.varianceT()));
        }
        return node;
    }

    private static ObjectNode effects(GroupEffects fitted) {
        ObjectNode node = MAPPER.createObjectNode();
        node.put("pair", fitted.pair());
        node.put("compounds", fitted.compounds());
        node.put("scale", rounded(fitted.scale()));
        node.put("residualC", rounded(fitted.residualC()));
        node.put("residualS", rounded(fitted.residualS()));
        node.put("classC", rounded(fitted.classC()));
        node.put("classS", rounded(fitted.classS()));
        ArrayNode effects = node.putArray("effects");
        for (GroupEffects.Effect effect : fitted.effects()) {
            effects.addObject()
                    .put("part", effect.part())
                    .put("c", rounded(effect.c()))
                    .put("s", rounded(effect.s()))
                    .put("compounds", effect.compounds())
                    .put("most", rounded(effect.most()));
        }
        ArrayNode typical = node.putArray("typical");
        for (GroupEffects.Typical each : fitted.typical()) {
            typical.addObject()
                    .put("part", each.part())
                    .put("mean", rounded(each.mean()))
                    .put("variance", rounded(each.variance()));
        }
        numbers(node.putArray("covarianceC"), fitted.covarianceC());
        numbers(node.putArray("covarianceS"), fitted.covarianceS());
        return node;
    }

    static void numbers(ArrayNode node, List<Double> values) {
        values.forEach(value -> node.add(rounded(value)));
    }

    static BigDecimal rounded(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(DIGITS).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }
}
