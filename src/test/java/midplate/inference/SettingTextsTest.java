package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertTrue;

import midplate.plate.Setting;
import midplate.words.Message;
import midplate.words.Texts;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is said of a setting is what is reckoned with. */
class SettingTextsTest {
    @ParameterizedTest
    @EnumSource(Setting.class)
    void tellsTheErrorsThatTheSettingAdds(Setting setting) {
        PlateScatter scatter = PlateScatter.of(setting);
        String text = Texts.english().render(Message.of("answer.setting-" + setting.id()));
        if (scatter.isShared()) {
            assertTrue(text.contains(" " + scatter.readingError() + " of each Rf"), text);
            assertTrue(text.contains(" " + scatter.sharedError() / 4 + " midway up the plate"), text);
        } else {
            assertTrue(text.contains("nothing is added"), text);
        }
    }
}
