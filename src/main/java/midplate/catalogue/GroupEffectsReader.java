package midplate.catalogue;

import java.util.ArrayList;
import java.util.List;

/** Reads what structures say in each pair, from the files that the index names. */
final class GroupEffectsReader {
    private static final double FAR = 50;
    private static final double LEAST_VARIANCE = 1e-6;
    private static final double MOST_PARTS = 1000;

    private GroupEffectsReader() {}

    /**
     * Reads all of them.
     *
     * @param pairs the pairs that there are
     */
    static List<GroupEffects> read(DataFolder folder, String prefix, CurveJson index, List<String> pairs) {
        List<GroupEffects> all = new ArrayList<>();
        List<String> parts = parts();
        for (String pair : index.texts("structures")) {
            if (!pairs.contains(pair)) {
                throw index.fault("structures", pair, "one of " + pairs);
            }
            CurveJson json = CurveJson.read(folder, prefix + GroupEffects.file(pair));
            if (!json.text("pair").equals(pair)) {
                throw json.fault("pair", json.text("pair"), "the pair that index.json names: " + pair);
            }
            all.add(effects(json, pair, parts));
        }
        return all;
    }

    /** The parts of a molecule as they are counted today. */
    static List<String> parts() {
        List<String> parts = new ArrayList<>();
        parts.add(GroupEffects.CONSTANT);
        parts.addAll(FunctionalGroups.builtIn().ids());
        parts.add(GroupEffects.FURTHER);
        return parts;
    }

    private static GroupEffects effects(CurveJson json, String pair, List<String> parts) {
        List<GroupEffects.Effect> effects = new ArrayList<>();
        for (CurveJson each : json.objects("effects")) {
            effects.add(new GroupEffects.Effect(
                    each.text("part"),
                    each.number("c", -FAR, FAR),
                    each.number("s", -FAR, FAR),
                    each.whole("compounds", 0),
                    each.number("most", 0, MOST_PARTS)));
        }
        List<String> came = effects.stream().map(GroupEffects.Effect::part).toList();
        if (!came.equals(parts)) {
            List<String> strange =
                    came.stream().filter(part -> !parts.contains(part)).toList();
            throw json.fault(
                    "effects",
                    strange.isEmpty() ? came.size() + " parts in another order or number" : String.join(", ", strange),
                    GroupEffects.CONSTANT + ", the groups of " + FunctionalGroups.FILE + " in their order, "
                            + GroupEffects.FURTHER);
        }
        List<GroupEffects.Typical> typical = new ArrayList<>();
        for (CurveJson each : json.objects("typical")) {
            if (!parts.contains(each.text("part"))) {
                throw each.fault("part", each.text("part"), "a part that stands under effects");
            }
            typical.add(new GroupEffects.Typical(
                    each.text("part"), each.number("mean", 0, 100), each.number("variance", 0, 10_000)));
        }
        return new GroupEffects(
                pair,
                effects,
                json.number("scale", 0, FAR),
                triangle(json, "covarianceC", effects.size()),
                triangle(json, "covarianceS", effects.size()),
                json.number("residualC", LEAST_VARIANCE, FAR),
                json.number("residualS", LEAST_VARIANCE, FAR),
                typical,
                json.number("classC", 0, FAR),
                json.number("classS", 0, FAR),
                json.count("compounds"));
    }

    private static List<Double> triangle(CurveJson json, String field, int parts) {
        List<Double> numbers = json.numbers(field, -FAR * FAR, FAR * FAR);
        int wanted = parts * (parts + 1) / 2;
        if (numbers.size() != wanted) {
            throw json.fault(field, numbers.size() + " numbers", wanted + " numbers, for " + parts + " parts");
        }
        return numbers;
    }
}
