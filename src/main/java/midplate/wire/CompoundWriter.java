package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import midplate.catalogue.FunctionalGroup;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.PlatePair;
import midplate.chemistry.GroupCounts;
import midplate.inference.StructureForecast;
import midplate.structure.Molecule;
import midplate.words.Allowed;
import midplate.words.Message;

/** Writes what compounds are made of and what that does in a pair. */
final class CompoundWriter {
    /** Decimals of effects [ln units] and of molar masses. */
    private static final int DECIMALS = 3;

    private static final int DECIMALS_OF_MASS = 2;

    private final Compounds compounds;
    private final Speech speech;

    CompoundWriter(Compounds compounds, Speech speech) {
        this.compounds = compounds;
        this.speech = speech;
    }

    /** A spot's compound, for an answer with advice. */
    ObjectNode ofSpot(SpotStructure structure, Optional<StructureForecast> forecast) {
        ObjectNode node = JsonWriting.object().put("spot", structure.spot());
        GroupCounts counts = structure.described().counts();
        structure.described().molecule().ifPresent(molecule -> node.put("smiles", molecule.smiles()));
        ArrayNode groups = node.putArray("groups");
        Map<String, StructureForecast.Part> parts = parts(forecast);
        counted(counts).forEach(group -> groups.add(counted(group, counts, parts)));
        heldBy(node, forecast);
        return node.put("detail", detail(counts)).put("unrecognised", counts.of(FunctionalGroups.UNRECOGNISED));
    }

    /** A compound by itself. */
    String whole(Compounds.Described described, Optional<StructureForecast> forecast) {
        ObjectNode node = JsonWriting.object();
        GroupCounts counts = described.counts();
        Optional<Molecule> molecule = described.molecule();
        molecule.ifPresent(known -> {
            node.put("smiles", known.smiles()).put("formula", known.formula());
            node.set("molarMass", JsonWriting.number(known.molarMass(), DECIMALS_OF_MASS));
        });
        node.put("detail", detail(counts));
        ArrayNode groups = node.putArray("groups");
        Map<String, StructureForecast.Part> parts = parts(forecast);
        for (FunctionalGroup group : counted(counts)) {
            ObjectNode told = counted(group, counts, parts);
            energy(told, group);
            molecule.ifPresent(known -> places(told, known, group.id()));
            groups.add(told);
        }
        heldBy(node, forecast);
        node.set("notes", JsonWriting.messages(notes(described, forecast), speech.texts()));
        molecule.map(compounds.structures()::draw).filter(svg -> !svg.isEmpty()).ifPresent(svg -> node.put("svg", svg));
        return JsonWriting.text(node);
    }

    private static void heldBy(ObjectNode node, Optional<StructureForecast> forecast) {
        forecast.flatMap(StructureForecast::heldBy).ifPresent(part -> node.put("heldBy", part.id()));
    }

    /** What is to be told of a compound. */
    private List<Message> notes(Compounds.Described described, Optional<StructureForecast> forecast) {
        List<Message> notes = new ArrayList<>();
        described.molecule().ifPresent(molecule -> notes.addAll(molecule.notes()));
        told("structure.rare", described, forecast, part -> part.compounds() > 0)
                .ifPresent(notes::add);
        told("structure.unmeasured", described, forecast, part -> part.compounds() == 0)
                .ifPresent(notes::add);
        return notes;
    }

    /** The rare groups of a compound of which something holds. */
    private Optional<Message> told(
            String key,
            Compounds.Described described,
            Optional<StructureForecast> forecast,
            Predicate<StructureForecast.Part> holds) {
        List<Message> groups = forecast.stream()
                .flatMap(known -> known.rare().stream())
                .filter(holds)
                .map(part -> compounds.groups().find(part.id()))
                .flatMap(Optional::stream)
                .filter(group -> Compounds.isClass(group) && described.counts().of(group.id()) > 0)
                .map(group -> Compounds.said(group.id()))
                .toList();
        return groups.isEmpty() ? Optional.empty() : Optional.of(Message.of(key, "groups", Allowed.list(groups)));
    }

    /** All groups and classes, and what each does in every pair. */
    String all(List<PlatePair> pairs, Foretelling foretelling) {
        ObjectNode body = JsonWriting.object();
        ArrayNode groups = body.putArray("groups");
        ArrayNode classes = body.putArray("classes");
        classes.add(named(Compounds.HYDROCARBON, Compounds.saidOfClass(Compounds.HYDROCARBON)));
        for (FunctionalGroup group : compounds.groups().all()) {
            ObjectNode node = named(group.id(), Compounds.said(group.id()))
                    .put("kind", group.kind().id())
                    .put("most", Compounds.most(group));
            energy(node, group);
            node.put("source", group.source().key()).put("note", speech.said(group.note()));
            ObjectNode effects = node.putObject("pairs");
            GroupCounts one = new GroupCounts(Map.of(group.id(), 1), GroupCounts.Detail.GROUPS);
            for (PlatePair pair : pairs) {
                Optional<StructureForecast> forecast = foretelling.of(pair.sorbent(), pair.weak(), pair.strong(), one);
                StructureForecast.Part part = parts(forecast).get(group.id());
                if (part != null) {
                    effect(effects.putObject(pair.id()), part);
                }
            }
            groups.add(node);
            if (Compounds.isClass(group)) {
                classes.add(named(group.id(), Compounds.saidOfClass(group.id())));
            }
        }
        return JsonWriting.text(body);
    }

    private ObjectNode named(String id, Message name) {
        return JsonWriting.object().put("id", id).put("name", speech.texts().render(name));
    }

    private List<FunctionalGroup> counted(GroupCounts counts) {
        return compounds.groups().all().stream()
                .filter(group -> counts.of(group.id()) > 0)
                .toList();
    }

    private ObjectNode counted(FunctionalGroup group, GroupCounts counts, Map<String, StructureForecast.Part> parts) {
        ObjectNode node = named(group.id(), Compounds.said(group.id())).put("count", counts.of(group.id()));
        StructureForecast.Part part = parts.get(group.id());
        if (part != null) {
            effect(node, part);
        }
        return node;
    }

    private static void effect(ObjectNode node, StructureForecast.Part part) {
        node.set("effect", JsonWriting.number(part.effect(), DECIMALS));
        node.set("error", JsonWriting.number(part.error(), DECIMALS));
        node.put("compounds", part.compounds()).put("rare", part.compounds() < StructureForecast.FEW_COMPOUNDS);
    }

    private static void energy(ObjectNode node, FunctionalGroup group) {
        node.set("energy", JsonWriting.number(group.energy(), DECIMALS_OF_MASS));
        node.put("energyBasis", group.basis().id());
    }

    private static void places(ObjectNode node, Molecule molecule, String group) {
        molecule.found().stream().filter(found -> found.group().equals(group)).forEach(found -> {
            list(node.putArray("atoms"), found.atoms());
            list(node.putArray("bonds"), found.bonds());
        });
    }

    private static void list(ArrayNode node, List<List<Integer>> places) {
        for (List<Integer> place : places) {
            ArrayNode inner = node.addArray();
            place.forEach(inner::add);
        }
    }

    private static Map<String, StructureForecast.Part> parts(Optional<StructureForecast> forecast) {
        return forecast.stream()
                .flatMap(known -> known.parts().stream())
                .collect(Collectors.toMap(StructureForecast.Part::id, Function.identity()));
    }

    private static String detail(GroupCounts counts) {
        return counts.detail().name().toLowerCase(Locale.ROOT);
    }
}
