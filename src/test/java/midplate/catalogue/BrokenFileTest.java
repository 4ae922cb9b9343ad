package midplate.catalogue;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A broken file is refused by its name")
class BrokenFileTest extends CopiedSolventData {
    @Test
    void aMissingColumnIsNamed() throws IOException {
        edit("properties.csv", text -> text.replaceFirst("locator", "page"));
        assertTrue(fault().startsWith(
                        "properties.csv, row 1, column page: \"page\". Allowed: each of [solvent, property,"));
        edit("properties.csv", text -> text.replaceFirst("page", "solvent"));
        assertTrue(fault().startsWith("properties.csv, row 1, column solvent: \"solvent\". Allowed: each of"));
    }

    @Test
    void aColumnLeftOutIsNamed() throws IOException {
        edit("stand-ins.csv", text -> text.replaceFirst(",note\n", "\n"));
        String message = fault();
        assertTrue(message.startsWith("stand-ins.csv, row 1, column note: \"\". Allowed: each of"), message);
        assertTrue(message.endsWith("Add the missing column."), message);
    }

    @Test
    void aRowWithACellTooManyIsNamed() throws IOException {
        edit("gaps.csv", text -> text.replaceFirst("\n", "\npentane,density,20 °C,a note, with a comma\n"));
        assertTrue(fault().startsWith(
                        "gaps.csv, row 2, column note: \" with a comma\". Allowed: 4 cells in a row, not 5."));
    }

    @Test
    void anOpenQuoteIsNoCsv() throws IOException {
        edit("gaps.csv", text -> text + "pentane,density,\"20 °C,no end\n");
        assertTrue(fault().contains("gaps.csv, row -, column -: ") && fault().contains("CSV as in RFC 4180"), fault());
    }

    @Test
    void anEmptyFileHasNoHeader() throws IOException {
        edit("gaps.csv", text -> "");
        assertTrue(fault().startsWith("gaps.csv, row 1, column solvent: \"\". Allowed: each of"), fault());
        edit("gaps.csv", text -> "solvent,property,condition,note\n");
        assertTrue(fault().startsWith("gaps.csv, row 2, column -: \"\". Allowed: at least one row"), fault());
    }

    @Test
    void aMissingFileIsNamed() throws IOException {
        Files.delete(folder.resolve("miscibility.csv"));
        assertTrue(
                fault().startsWith("miscibility.csv, row -, column -:") && fault().contains("Put the file back"),
                fault());
    }

    @Test
    void bytesThatAreNoUtf8AreRefused() throws IOException {
        byte[] latin =
                "solvent,property,condition,note\npentane,density,20 °C,x\n".getBytes(StandardCharsets.ISO_8859_1);
        Files.write(folder.resolve("gaps.csv"), latin);
        assertTrue(fault().contains("Allowed: text in UTF-8. Save it in UTF-8."), fault());
    }

    @Test
    void aBrokenSourceIsNamedByItsKey() throws IOException {
        String start = "\"Snyder1968\": {";
        edit("sources.json", text -> text.replace(start, start + "\"pages\": \"1\","));
        assertTrue(fault().startsWith(
                        "sources.json, row Snyder1968, column pages: \"pages\". Allowed: citation, year, address."));
        edit("sources.json", text -> text.replace("\"pages\": \"1\",", "\"address\": \"www.example.org\","));
        assertTrue(fault().startsWith(
                        "sources.json, row Snyder1968, column address: \"www.example.org\". Allowed: an http"));
        edit("sources.json", text -> text.replaceFirst("\"year\": \"[^\"]*\"", "\"year\": 1968"));
        assertTrue(fault().contains(", column year: \"1968\". Allowed: a text that is not empty."), fault());
    }

    @Test
    void sourcesMustBeOneObjectWithEachKeyOnce() throws IOException {
        edit(
                "sources.json",
                text -> text.replaceFirst("\\{", "{\"Sadek2004\": {\"citation\": \"x\", \"year\": \"y\"},"));
        assertTrue(fault().contains("JSON, each key once") && fault().contains("Sadek2004"), fault());
        edit("sources.json", text -> "[]");
        assertTrue(fault().contains("Allowed: one object from key to source."), fault());
        edit("sources.json", text -> "{\"sadek\": {}}");
        assertTrue(fault().startsWith("sources.json, row sadek, column -: \"sadek\". Allowed: a key like Author2004."));
        edit("sources.json", text -> "{\"Sadek2004\": 1}");
        assertTrue(fault().contains("an object with citation and year"), fault());
        edit("sources.json", text -> "{\"Sadek2004\": {\"year\": \"2004\"}}");
        assertTrue(fault().startsWith("sources.json, row Sadek2004, column citation: \"\"."), fault());
    }
}
