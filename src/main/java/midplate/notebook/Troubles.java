package midplate.notebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import midplate.words.Message;

/** The files that are no studies at hand, of the whole folder. */
final class Troubles {
    private Troubles() {}

    /** Those that were left as they are, and those set aside whose place nothing has taken since. */
    static List<FolderTrouble> of(FolderRooms rooms, StudyIndex.Content content, List<SetAside.Damaged> aside) {
        List<FolderTrouble> troubles = new ArrayList<>(content.troubles());
        Map<StudyId, StudySummary> studies = content.studies().stream()
                .map(StudyIndex.Listed::summary)
                .collect(Collectors.toMap(StudySummary::id, Function.identity()));
        for (SetAside.Damaged damaged : aside) {
            StudySummary study = studies.get(damaged.id());
            String file = rooms.shown(damaged.file());
            if (study == null) {
                troubles.add(aside(file, "folder.file-set-aside", damaged));
            } else if (study.notices().stream()
                    .anyMatch(notice -> file.equals(notice.args().get("file")))) {
                troubles.add(aside(file, "folder.file-set-aside-version-before", damaged));
            }
        }
        troubles.sort(Comparator.comparing(FolderTrouble::file));
        return troubles;
    }

    private static FolderTrouble aside(String file, String key, SetAside.Damaged damaged) {
        return new FolderTrouble(
                file,
                FolderTrouble.Kind.SET_ASIDE,
                Message.of(key, "file", file, "study", damaged.id().value(), "reason", damaged.reason()));
    }
}
