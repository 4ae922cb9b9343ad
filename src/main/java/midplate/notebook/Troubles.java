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
    /** The value of a text that is the id of a study. */
    static final String STUDY = "id";

    private Troubles() {}

    /** Those that were left as they are, and those set aside whose place nothing has taken since. */
    static List<FolderTrouble> of(FolderRooms rooms, StudyIndex.Content content, List<SetAside.Damaged> aside) {
        List<FolderTrouble> troubles = new ArrayList<>();
        Map<StudyId, StudySummary> studies = content.studies().stream()
                .map(StudyIndex.Listed::summary)
                .collect(Collectors.toMap(StudySummary::id, Function.identity()));
        content.troubles().forEach(trouble -> troubles.add(copied(trouble, studies)));
        for (SetAside.Damaged damaged : aside) {
            StudySummary study = studies.get(damaged.id());
            String file = rooms.shown(damaged.file());
            if (study == null) {
                troubles.add(aside(file, "folder.file-set-aside", damaged, ""));
            } else if (study.notices().stream()
                    .anyMatch(notice -> file.equals(notice.args().get("file")))) {
                troubles.add(aside(file, "folder.file-set-aside-version-before", damaged, study.title()));
            }
        }
        troubles.sort(Comparator.comparing(FolderTrouble::file));
        return troubles;
    }

    /** To give a copy the name of its original would write over that. */
    private static FolderTrouble copied(FolderTrouble trouble, Map<StudyId, StudySummary> studies) {
        if (trouble.kind() != FolderTrouble.Kind.MISNAMED
                || !(trouble.text().args().get(STUDY) instanceof String value)) {
            return trouble;
        }
        return StudyId.in(value)
                .map(studies::get)
                .map(original -> new FolderTrouble(
                        trouble.file(),
                        trouble.kind(),
                        Message.of(
                                "folder.file-copy",
                                "file",
                                trouble.file(),
                                "study",
                                called(original.id(), original.title()))))
                .orElse(trouble);
    }

    /** A study by its title, which a person knows; by its id only where it has none. */
    private static Object called(StudyId id, String title) {
        return title.isBlank() ? id.value() : Message.of("folder.study-titled", "title", title);
    }

    private static FolderTrouble aside(String file, String key, SetAside.Damaged damaged, String before) {
        String title = damaged.title().isBlank() ? before : damaged.title();
        return new FolderTrouble(
                file,
                FolderTrouble.Kind.SET_ASIDE,
                Message.of(key, "file", file, "study", called(damaged.id(), title), "reason", damaged.reason()));
    }
}
