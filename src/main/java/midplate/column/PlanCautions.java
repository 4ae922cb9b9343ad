package midplate.column;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import midplate.catalogue.Caution;
import midplate.catalogue.Hazard;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Solvent;
import midplate.words.Allowed;
import midplate.words.Message;

/**
 * What harms at a column: pressure and glass, much flammable solvent, ethers, silica dust. Reminders only: the supplier's safety data
 * sheet, the local rules and the person responsible for the laboratory come first. Common practice, no source.
 */
final class PlanCautions {
    private static final String PEROXIDES = "peroxides";
    private static final String CHLORINE = "Cl";
    private static final String NERVES = "nerve-damage";
    /** Hazard statements of solvents that are classed as causing cancer or genetic defects, or suspected of it. */
    private static final Set<String> CANCER = Set.of("H340", "H341", "H350", "H351");
    /** Of poisons through mouth, skin or lungs. */
    private static final Set<String> POISONS = Set.of("H300", "H301", "H310", "H311", "H330", "H331");

    private static final double ML_PER_L = 1000;
    /** Solvents that boil up to here [°C] boil in a warm hand or a heated jacket; common practice, no source. */
    private static final double NEAR_ROOM_C = 40;

    private final SolventCatalogue catalogue;

    PlanCautions(SolventCatalogue catalogue) {
        this.catalogue = catalogue;
    }

    List<Message> of(ChosenProgram chosen) {
        boolean glass = chosen.column().bed() instanceof GlassColumn;
        List<Solvent> poured = List.of(
                chosen.question().sample().weak(), chosen.question().sample().strong());
        List<Message> all = new ArrayList<>();
        all.add(Message.of("column.caution-sheet-first"));
        all.add(amount(chosen));
        solvents(poured, all);
        all.add(Message.of("column.caution-wear"));
        all.add(glass ? Message.of("column.caution-glass") : Message.of("column.caution-cartridge"));
        all.add(glass ? Message.of("column.caution-bed-glass") : Message.of("column.caution-bed-cartridge"));
        all.add(Message.of("column.caution-look"));
        if (!chosen.question().sample().structures().containsKey(chosen.target())) {
            all.add(Message.of("column.acid-unknown"));
        }
        if (glass || chosen.isDry()) {
            all.add(Message.of("column.caution-dust"));
        }
        all.add(glass ? Message.of("column.caution-used-glass") : Message.of("column.caution-used-silica"));
        all.add(Message.of("column.caution-evaporate"));
        return List.copyOf(all);
    }

    /** How much is to be mixed for all portions. */
    private static Message amount(ChosenProgram chosen) {
        double litres = StepPours.of(chosen.program().program().until(chosen.runMl())).stream()
                        .mapToDouble(ColumnPlan.StepPour::mixMl)
                        .sum()
                * chosen.runs()
                / ML_PER_L;
        return chosen.runs() == 1
                ? Message.of("column.caution-solvent", "litres", litres)
                : Message.of("column.caution-solvent-runs", "litres", litres, "runs", chosen.runs());
    }

    /** What the labels of the solvents and the cautions of the catalogue say of them. */
    private void solvents(List<Solvent> poured, List<Message> all) {
        for (Solvent solvent : poured) {
            List<String> codes = catalogue.hazards(solvent).stream()
                    .map(Hazard::code)
                    .distinct()
                    .toList();
            if (!codes.isEmpty()) {
                all.add(Message.of("column.caution-label", "solvent", solvent.said(), "codes", Allowed.words(codes)));
            }
            List<String> cautions =
                    catalogue.cautions(solvent).stream().map(Caution::key).toList();
            if (cautions.contains(NERVES)) {
                all.add(Message.of("column.caution-nerves"));
            }
            if (isSaid(codes, CANCER)) {
                all.add(Message.of("column.caution-cancer", "solvent", solvent.said()));
            }
            if (isSaid(codes, POISONS)) {
                all.add(Message.of("column.caution-poison", "solvent", solvent.said()));
            }
            if (boilsLow(solvent)) {
                all.add(Message.of("column.caution-boils-low", "solvent", solvent.said()));
            }
            if (cautions.contains(PEROXIDES)) {
                all.add(Message.of("column.caution-peroxides", "solvent", solvent.said()));
            }
        }
        if (poured.stream().anyMatch(solvent -> solvent.formula().contains(CHLORINE))) {
            all.add(Message.of("column.caution-chlorinated"));
        }
    }

    private static boolean isSaid(List<String> codes, Set<String> some) {
        return codes.stream()
                .flatMap(code -> Arrays.stream(code.split("\\+", -1)))
                .anyMatch(code -> some.stream().anyMatch(code::startsWith));
    }

    private boolean boilsLow(Solvent solvent) {
        return Stream.of("boiling_point", "boiling_range_low")
                .flatMap(kind -> catalogue.preferred(solvent, kind, "").stream())
                .anyMatch(value -> value.number() <= NEAR_ROOM_C);
    }
}
