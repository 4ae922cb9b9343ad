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
import midplate.catalogue.GroupEffects;
import midplate.catalogue.MeasuredPair;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.PairLink;

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
        ArrayNode links = index.putArray("links");
        fitted.links().forEach(link -> links.add(link(link)));
        ArrayNode structures = index.putArray("structures");
        fitted.structures().forEach(effects -> structures.add(effects.pair()));
        write(index, folder.resolve("index.json"));
        for (MeasuredPair pair : fitted.pairs()) {
            write(pair(pair), folder.resolve(pair.id() + ".json"));
        }
        for (GroupEffects effects : fitted.structures()) {
            write(effects(effects), folder.resolve(GroupEffects.file(effects.pair())));
        }
    }

    private static void write(ObjectNode node, Path file) throws IOException {
        Files.writeString(file, WRITER.writeValueAsString(node) + "\n");
    }

    private static ObjectNode link(PairLink link) {
        ObjectNode node = MAPPER.createObjectNode();
        node.put("from", link.from());
        node.put("to", link.to());
        node.put("intercept", rounded(link.intercept()));
        node.put("slope", rounded(link.slope()));
        node.put("deviation", rounded(link.deviation()));
        node.put("compounds", link.compounds());
        node.put("lowest", rounded(link.lowest()));
        node.put("highest", rounded(link.highest()));
        return node;
    }

    private static ObjectNode pair(MeasuredPair pair) {
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
        for (MeasuredPair.Bell bell : pair.prior().bells()) {
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

    private static void numbers(ArrayNode node, List<Double> values) {
        values.forEach(value -> node.add(rounded(value)));
    }

    private static BigDecimal rounded(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(DIGITS).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }
}
