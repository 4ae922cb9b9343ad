package midplate.wire;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a file is by the bytes it begins with, never by its name, and never by unpacking anything. */
enum FileKind {
    SPREADSHEET("import.kind-spreadsheet", "todo.save-as-csv"),
    ZIP("import.kind-zip", "todo.unpack-first"),
    PACKED("import.kind-packed", "todo.unpack-first"),
    PDF("import.kind-pdf", "todo.type-or-csv"),
    PICTURE("import.kind-picture", "todo.type-or-csv"),
    TEXT_DOCUMENT("import.kind-document", "todo.save-as-csv"),
    WEB_PAGE("import.kind-web-page", "todo.save-as-csv");

    private static final int HEAD = 512;
    private static final byte[] ZIP_MARK = {'P', 'K', 3, 4};
    private static final byte[] EMPTY_ZIP = {'P', 'K', 5, 6};
    private static final byte[] SPANNED_ZIP = {'P', 'K', 7, 8};
    private static final byte[] OLD_OFFICE = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0};
    private static final byte[][] PACKERS = {
        {0x1F, (byte) 0x8B},
        {'B', 'Z', 'h'},
        {(byte) 0xFD, '7', 'z', 'X', 'Z', 0},
        {'7', 'z', (byte) 0xBC, (byte) 0xAF, 0x27, 0x1C},
        {'R', 'a', 'r', '!', 0x1A, 7},
        {0x28, (byte) 0xB5, 0x2F, (byte) 0xFD},
    };
    private static final byte[][] PICTURES = {
        {(byte) 0x89, 'P', 'N', 'G'},
        {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF},
        {'G', 'I', 'F', '8'},
        {'I', 'I', '*', 0},
        {'M', 'M', 0, '*'},
        {'B', 'M'},
    };
    private static final int BOX = 4;

    private final String key;
    private final String todo;

    FileKind(String key, String todo) {
        this.key = key;
        this.todo = todo;
    }

    /** The key of what it is called. */
    String key() {
        return key;
    }

    /** The key of what to do with it. */
    String todo() {
        return todo;
    }

    /** What a file is that is no plain text of ours; empty where it may be one. */
    static Optional<FileKind> of(byte[] bytes) {
        if (begins(bytes, ZIP_MARK) || begins(bytes, EMPTY_ZIP) || begins(bytes, SPANNED_ZIP)) {
            return Optional.of(office(bytes));
        }
        if (begins(bytes, OLD_OFFICE)) {
            return Optional.of(SPREADSHEET);
        }
        if (Arrays.stream(PACKERS).anyMatch(mark -> begins(bytes, mark))) {
            return Optional.of(PACKED);
        }
        String head = new String(bytes, 0, Math.min(HEAD, bytes.length), StandardCharsets.ISO_8859_1);
        boolean binary = head.indexOf('\0') >= 0 || head.chars().anyMatch(sign -> sign < '\t');
        boolean picture = Arrays.stream(PICTURES).anyMatch(mark -> begins(bytes, mark));
        boolean boxed = head.startsWith("ftyp", BOX) || (head.startsWith("RIFF") && head.startsWith("WEBP", 2 * BOX));
        if (boxed || (picture && (binary || bytes[0] < 0))) {
            return Optional.of(PICTURE);
        }
        return byWords(head);
    }

    /** New office files are zip archives whose entries are named in plain bytes. */
    private static FileKind office(byte[] bytes) {
        String all = new String(bytes, StandardCharsets.ISO_8859_1);
        if (all.contains("xl/workbook") || all.contains("opendocument.spreadsheet")) {
            return SPREADSHEET;
        }
        return all.contains("word/document") || all.contains("opendocument.text") ? TEXT_DOCUMENT : ZIP;
    }

    private static Optional<FileKind> byWords(String head) {
        String words =
                head.replaceFirst("^\u00EF\u00BB\u00BF", "").stripLeading().toLowerCase(Locale.ROOT);
        if (words.startsWith("%pdf-")) {
            return Optional.of(PDF);
        }
        if (words.startsWith("{\\rtf")) {
            return Optional.of(TEXT_DOCUMENT);
        }
        boolean marked = words.startsWith("<!doctype")
                || words.startsWith("<html")
                || words.startsWith("<?xml")
                || words.startsWith("<svg");
        return marked ? Optional.of(WEB_PAGE) : Optional.empty();
    }

    private static boolean begins(byte[] bytes, byte[] mark) {
        return TableBytes.begins(bytes, mark);
    }
}
