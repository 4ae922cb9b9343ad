package midplate;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.NullMarked;

/** Who may know whom: imports run one way, from the doors down to the words. */
@AnalyzeClasses(packages = "midplate", importOptions = ImportOption.DoNotIncludeTests.class)
class RoomsTest {
    private static final String FRONT_STEP = "";

    /** The floor of each room; a room knows the floors below its own, and no neighbour. */
    private static final Map<String, Integer> FLOORS = Map.ofEntries(
            Map.entry(FRONT_STEP, 9),
            Map.entry("web", 8),
            Map.entry("batch", 8),
            Map.entry("terminal", 8),
            Map.entry("benchmark", 8),
            Map.entry("wire", 7),
            Map.entry("notebook", 6),
            Map.entry("column", 5),
            Map.entry("identity", 5),
            Map.entry("lesson", 5),
            Map.entry("advice", 4),
            Map.entry("inference", 3),
            Map.entry("structure", 3),
            Map.entry("plate", 2),
            Map.entry("catalogue", 2),
            Map.entry("chemistry", 1),
            Map.entry("words", 0));

    private static String room(JavaClass type) {
        String name = type.getPackageName();
        if (name.equals("midplate")) {
            return FRONT_STEP;
        }
        String below = name.substring("midplate.".length());
        int dot = below.indexOf('.');
        return dot < 0 ? below : below.substring(0, dot);
    }

    private static boolean ours(JavaClass type) {
        return type.getPackageName().equals("midplate") || type.getPackageName().startsWith("midplate.");
    }

    @ArchTest
    static final ArchRule every_room_has_its_floor = classes()
            .should(new ArchCondition<>("be in a room that is listed here") {
                @Override
                public void check(JavaClass type, ConditionEvents events) {
                    if (!FLOORS.containsKey(room(type))) {
                        events.add(SimpleConditionEvent.violated(
                                type, type.getName() + ": give its room a floor in RoomsTest"));
                    }
                }
            });

    @ArchTest
    static final ArchRule imports_run_one_way = classes().should(new ArchCondition<>("know only the floors below") {
        @Override
        public void check(JavaClass type, ConditionEvents events) {
            for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
                JavaClass target = dependency.getTargetClass().getBaseComponentType();
                if (ours(target) && !room(target).equals(room(type)) && floor(target) >= floor(type)) {
                    events.add(SimpleConditionEvent.violated(type, dependency.getDescription()));
                }
            }
        }
    });

    private static int floor(JavaClass type) {
        return FLOORS.getOrDefault(room(type), Integer.MAX_VALUE);
    }

    @ArchTest
    static final ArchRule chemistry_is_pure = noClasses()
            .that()
            .resideInAPackage("midplate.chemistry..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "java.io..", "java.nio..", "java.net..", "java.util.logging..", "com.fasterxml..", "org.slf4j..")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule json_is_read_in_few_rooms = noClasses()
            .that()
            .resideOutsideOfPackages(
                    "midplate.wire..",
                    "midplate.catalogue..",
                    "midplate.inference..",
                    "midplate.benchmark..",
                    "midplate.web..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("com.fasterxml..");

    @ArchTest
    static final ArchRule only_web_knows_the_server = noClasses()
            .that()
            .resideOutsideOfPackage("midplate.web..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("io.javalin..", "org.eclipse.jetty..", "jakarta..");

    @ArchTest
    static final ArchRule only_structure_knows_its_library = noClasses()
            .that()
            .resideOutsideOfPackage("midplate.structure..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.openscience..");

    @ArchTest
    static final ArchRule every_package_says_what_it_is_for = classes()
            .should(new ArchCondition<>("be in a null-marked package with a package-info") {
                @Override
                public void check(JavaClass type, ConditionEvents events) {
                    boolean marked = type.getPackage()
                            .tryGetPackageInfo()
                            .map(info -> info.isAnnotatedWith(NullMarked.class))
                            .orElse(false);
                    if (!marked) {
                        events.add(SimpleConditionEvent.violated(
                                type, type.getPackageName() + " lacks a package-info.java with @NullMarked"));
                    }
                }
            });

    @ArchTest
    static final ArchRule names_say_what_a_thing_is =
            noClasses().should(endWith("Util", "Utils", "Service", "Manager", "Dto", "DTO", "Helper"));

    private static ArchCondition<JavaClass> endWith(String... endings) {
        return new ArchCondition<>("have a name that ends with one of " + String.join(", ", endings)) {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                for (String ending : endings) {
                    if (type.getSimpleName().endsWith(ending)) {
                        events.add(SimpleConditionEvent.satisfied(type, type.getName() + " ends with " + ending));
                    }
                }
            }
        };
    }

    @ArchTest
    static final ArchRule an_enum_says_it_and_no_boolean = methods()
            .that()
            .arePublic()
            .and()
            .areDeclaredInClassesThat()
            .arePublic()
            .should(new ArchCondition<>("have no boolean parameter") {
                @Override
                public void check(JavaMethod method, ConditionEvents events) {
                    boolean made = method.getModifiers().contains(JavaModifier.SYNTHETIC);
                    boolean takesBoolean = method.getRawParameterTypes().stream()
                            .anyMatch(type -> type.isEquivalentTo(boolean.class) || type.isEquivalentTo(Boolean.class));
                    if (takesBoolean && !made) {
                        events.add(SimpleConditionEvent.violated(
                                method, String.format(Locale.ROOT, "%s: say it with an enum", method.getFullName())));
                    }
                }
            });

    @ArchTest
    static final ArchRule no_field_is_named_ignored = fields().should(new ArchCondition<>("not be named ignored") {
        @Override
        public void check(JavaField field, ConditionEvents events) {
            if (field.getName().equals("ignored")) {
                events.add(SimpleConditionEvent.violated(field, field.getFullName()));
            }
        }
    });

    @ArchTest
    static final ArchRule the_rules_see_the_code = classes()
            .that(DescribedPredicate.describe("are Main", type -> type.getName().equals("midplate.Main")))
            .should()
            .bePublic();
}
