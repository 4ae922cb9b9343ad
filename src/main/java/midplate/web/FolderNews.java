package midplate.web;

import java.util.ArrayList;
import java.util.List;
import midplate.notebook.FolderFault;
import midplate.notebook.FolderTrouble;
import midplate.notebook.StudyFolder;
import midplate.notebook.StudyList;
import midplate.notebook.StudySearch;
import midplate.words.Message;

/** What a person who starts the program should know of files in the folder that are no studies at hand. */
final class FolderNews {
    /** More would push the address off the screen; the page has them all. */
    private static final int MOST = 10;

    private FolderNews() {}

    /** In the order of the file names; nothing where all is well. */
    static List<Message> of(StudyFolder folder) {
        List<FolderTrouble> troubles;
        try {
            StudyList list = folder.list(new StudySearch("", StudySearch.Which.ALL, 0, 1));
            troubles = list.troubles();
        } catch (FolderFault fault) {
            return fault.kind() == FolderFault.Kind.CLOSED
                    ? List.of()
                    : List.of(fault.refusal().reason(), fault.refusal().todo());
        }
        List<Message> news = new ArrayList<>(
                troubles.stream().limit(MOST).map(FolderTrouble::text).toList());
        if (troubles.size() > MOST) {
            news.add(Message.of("terminal.more-troubles", "count", troubles.size() - MOST));
        }
        return news;
    }
}
