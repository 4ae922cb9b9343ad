package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.catalogue.LocalizationClass;
import midplate.lesson.SurfacePicture.Share;
import midplate.lesson.SurfacePicture.Solute;
import midplate.words.Allowed;
import midplate.words.Digits;
import midplate.words.Message;

/** Says what a picture of the surface shows, with its numbers. */
public final class SurfaceReasons {
    private static final int HUNDRED = 100;

    private final SurfacePicture picture;
    private final int now;

    private SurfaceReasons(SurfacePicture picture) {
        this.picture = picture;
        this.now = picture.placeOf(picture.now());
    }

    /** Of a picture. */
    public static SurfaceReasons of(SurfacePicture picture) {
        return new SurfaceReasons(picture);
    }

    /** Why raising the share moves every spot, and why the polar one moves last. */
    public List<Message> sentences() {
        List<Message> said = new ArrayList<>();
        said.add(surface());
        said.add(every());
        said.add(picture.solutes().size() > 1 ? last() : only());
        said.addAll(SurfaceBalances.of(picture).sentences());
        return said;
    }

    /** What the law misses where the strong solvent binds to single sites; empty where it does not. */
    public Optional<Message> caution() {
        LocalizationClass how = picture.localization();
        return switch (how) {
            case LOCALIZING_BASIC, LOCALIZING_NON_BASIC, VERY_STRONG_LOCALIZING ->
                Optional.of(Message.of("lesson.why-localizes", "strong", strong()));
            case WEAK, NON_LOCALIZING, UNKNOWN -> Optional.empty();
        };
    }

    private Message strong() {
        return picture.sample().strong().said();
    }

    private Message surface() {
        Share here = picture.shares().get(now);
        Share there = picture.shares().get(picture.placeOf(picture.further()));
        return Message.of(
                "lesson.why-surface",
                "strong",
                strong(),
                "percent",
                Digits.aboutPercent(here.percentStrong()),
                "taken",
                ofHundred(here.coverage()),
                "other",
                Digits.aboutPercent(there.percentStrong()),
                "otherTaken",
                ofHundred(there.coverage()));
    }

    /** From the lower of the two shares to the higher one. */
    private Message every() {
        int low = picture.placeOf(Math.min(picture.now(), picture.further()));
        int high = picture.placeOf(Math.max(picture.now(), picture.further()));
        List<Message> falls = picture.solutes().stream()
                .map(solute -> Message.of(
                        "lesson.why-falls",
                        "name",
                        solute.name(),
                        "from",
                        ofHundred(solute.adsorbed(low)),
                        "to",
                        ofHundred(solute.adsorbed(high))))
                .toList();
        Share one = picture.shares().get(low);
        Share other = picture.shares().get(high);
        return Message.of(
                "lesson.why-every",
                "strong",
                strong(),
                "low",
                Digits.aboutPercent(one.percentStrong()),
                "high",
                Digits.aboutPercent(other.percentStrong()),
                "weakest",
                one.strength(),
                "strongest",
                other.strength(),
                "falls",
                Allowed.list(falls));
    }

    private Message only() {
        Solute solute = picture.solutes().get(0);
        return Message.of(
                "lesson.why-only",
                "name",
                solute.name(),
                "held",
                held(solute),
                "time",
                ofHundred(solute.adsorbed(now)));
    }

    private Message last() {
        Solute last = picture.solutes().get(0);
        Solute first = last;
        for (Solute solute : picture.solutes()) {
            last = solute.adsorbed(now) > last.adsorbed(now) ? solute : last;
            first = solute.adsorbed(now) < first.adsorbed(now) ? solute : first;
        }
        return Message.of(
                "lesson.why-last",
                "last",
                last.name(),
                "lastTime",
                ofHundred(last.adsorbed(now)),
                "first",
                first.name(),
                "firstTime",
                ofHundred(first.adsorbed(now)),
                "percent",
                Digits.aboutPercent(picture.now()),
                "strong",
                strong());
    }

    /** The strongest group with its energy. */
    private static Message held(Solute solute) {
        return solute.sums()
                .strongest()
                .map(counted -> Message.of(
                        "lesson.why-held",
                        "group",
                        Message.of("group." + counted.group().id()),
                        "energy",
                        counted.group().energy()))
                .orElse(Message.of("lesson.why-held-by-none"));
    }

    private static int ofHundred(double share) {
        return (int) Math.round(HUNDRED * share);
    }
}
