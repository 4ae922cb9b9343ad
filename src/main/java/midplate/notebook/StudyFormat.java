package midplate.notebook;

/** How a study is written into a file and read from it: all that the folder knows of the form of its files. */
public interface StudyFormat {
    /**
     * The study in a file, whatever its version as long as it is known.
     *
     * @param file all bytes of the file, without the digest that the folder puts into its files
     * @throws UnreadableStudy where there is none, or one of a newer program
     */
    Study read(byte[] file) throws UnreadableStudy;

    /** The file of a study, in the newest version; format and version come first. */
    byte[] write(Study study);
}
