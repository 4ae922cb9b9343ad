package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import midplate.words.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which language a request likes best; the meaning of q is that of RFC 9110, section 12.4.2. */
class TongueTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "de                              | GERMAN",
                "DE-at                           | GERMAN",
                "de-DE,de;q=0.9,en;q=0.8         | GERMAN",
                "en-GB,en;q=0.9,de;q=0.8         | ENGLISH",
                "en;q=0.5, de;q=0.7              | GERMAN",
                "en;q=0.7,de;q=0.7               | ENGLISH",
                "de ; q=1.000 , en               | GERMAN",
                "fr,it;q=0.9                     | ENGLISH",
                "fr,de;q=0.1                     | GERMAN",
                "de;q=0                          | ENGLISH",
                "de;q=0,en;q=0                   | ENGLISH",
                "*                               | ENGLISH",
                "deutsch                         | ENGLISH",
                "''                              | ENGLISH",
                ",,;;q=,                         | ENGLISH",
                "de;q=1.5                        | ENGLISH",
                "de;q=NaN                        | ENGLISH",
                "de;q=-1                         | ENGLISH",
                "de;level=1                      | ENGLISH",
                "de_DE                           | ENGLISH",
                "nonsense!!, de                  | GERMAN",
            })
    void takesTheFirstLanguageSpokenHereInTheOrderOfQ(String header, Language expected) {
        assertEquals(expected, Tongue.asked(header));
    }

    @Test
    void isEnglishWithoutAHeaderAndReadsALongOneOnlyToItsFiftieth() {
        assertEquals(Language.ENGLISH, Tongue.asked(null));
        assertEquals(Language.ENGLISH, Tongue.asked("fr,".repeat(100_000) + "de"));
        assertEquals(Language.GERMAN, Tongue.asked("fr,".repeat(48) + "de"));
    }
}
