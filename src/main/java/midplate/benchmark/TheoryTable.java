package midplate.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One reading in a pair tells another: by the program, the same told the structure, the same as if the other pair had not been
 * measured, and published models.
 */
final class TheoryTable {
    private static final List<String> KINDS = List.of("switch-to-ether", "switch-to-methanol", "switch-to-acetate");
    private static final List<String> HEADS =
            List.of("ether 33 and 50 % from ethyl acetate", "methanol from ethyl acetate", "ethyl acetate from ether");

    private TheoryTable() {}

    static String of(Accuracy accuracy) {
        List<String> contenders = List.copyOf(accuracy.contenders().keySet());
        String program = contenders.get(0);
        List<String> heads = new ArrayList<>(List.of(program));
        boolean told = accuracy.structures().containsKey(StructureContenders.PROGRAM);
        if (told) {
            heads.add(StructureContenders.PROGRAM);
        }
        heads.addAll(List.of("as if not measured", "difference"));
        List<String> peers = contenders.stream()
                .filter(name ->
                        accuracy.contenders().getOrDefault(name, Map.of()).containsKey(error(KINDS.get(0))))
                .filter(name -> !name.equals(program) && !name.equals(Contenders.BEFORE))
                .toList();
        heads.addAll(peers);
        MarkdownTable table = new MarkdownTable("another pair", heads);
        for (int i = 0; i < KINDS.size(); i++) {
            String kind = KINDS.get(i);
            row(table, "error, " + HEADS.get(i), accuracy, program, told, peers, error(kind), FigureForm.RF);
            String bands = kind + ".cover90";
            row(table, "– 90 % bands hold", accuracy, program, told, peers, bands, FigureForm.PERCENT);
        }
        return table.toString();
    }

    private static String error(String kind) {
        return kind + ".error";
    }

    private static void row(
            MarkdownTable table,
            String head,
            Accuracy accuracy,
            String program,
            boolean told,
            List<String> peers,
            String figure,
            FigureForm form) {
        List<String> cells = new ArrayList<>();
        cells.add(form.text(figure(accuracy.contenders(), program, figure)));
        if (told) {
            cells.add(form.text(figure(accuracy.structures(), StructureContenders.PROGRAM, figure)));
        }
        cells.add(form.text(figure(accuracy.theory(), program, figure)));
        cells.add(form.ofDifference().text(figure(accuracy.differences(), Accuracy.notMeasured(program), figure)));
        peers.forEach(peer -> cells.add(form.text(figure(accuracy.contenders(), peer, figure))));
        table.row(head, cells);
    }

    private static @Nullable Figure figure(Map<String, Map<String, Figure>> part, String name, String figure) {
        return part.getOrDefault(name, Map.of()).get(figure);
    }
}
