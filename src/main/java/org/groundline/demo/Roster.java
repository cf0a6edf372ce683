package org.groundline.demo;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;

import org.groundline.school.Role;
import org.groundline.school.Schools.NewSchool;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

import java.io.IOException;
import java.io.InputStream;
import java.text.Normalizer;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/// The invented school as the file `demo-data/school.yaml` describes it.
record Roster(
        String code,
        String name,
        String zone,
        String language,
        String password,
        List<Staff> staff,
        String issuer,
        List<Intake> intakes,
        String reversal,
        Talks talks,
        String observed) {
    private static final String FILE = "/demo-data/school.yaml";

    Roster {
        staff = List.copyOf(staff);
        intakes = List.copyOf(intakes);
    }

    /// A member of staff.
    record Staff(
            String given,
            String family,
            String email,
            List<String> roles,
            boolean shown,
            Optional<Paper> authorisation) {
        Staff {
            roles = List.copyOf(roles);
        }

        Set<Role> granted() {
            Set<Role> granted = EnumSet.noneOf(Role.class);
            roles.forEach(word -> granted.add(Role.findByWord(word).orElseThrow()));
            return granted;
        }
    }

    /// An authorisation.
    ///
    /// @param authorised days before the present on which it began
    /// @param until days after the present on which it ends
    record Paper(String number, List<String> methods, int authorised, int until) {
        Paper {
            methods = List.copyOf(methods);
        }
    }

    /// An intake.
    ///
    /// @param began days before the present
    record Intake(String name, int began, List<SharedIdeas> sharedIdeas, List<Student> students) {
        Intake {
            sharedIdeas = List.copyOf(sharedIdeas);
            students = List.copyOf(students);
        }
    }

    /// Wrong ideas that a share of an intake holds.
    record SharedIdeas(String topic, int percent, List<String> ideas) {
        SharedIdeas {
            ideas = List.copyOf(ideas);
        }
    }

    /// A student.
    ///
    /// @param ability in logits
    record Student(String given, String family, double ability, boolean shown) {
        /// Given and family name without accents and spaces.
        String email() {
            return plain(given) + "." + plain(family) + "@kestrel.example";
        }

        private static String plain(String name) {
            return Normalizer.normalize(name.toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
                    .replace("ı", "i")
                    .replace("æ", "ae")
                    .replaceAll("[^a-z]", "");
        }
    }

    /// What instructors note about talks.
    record Talks(List<String> explainedBack, List<String> notYetUnderstood) {
        Talks {
            explainedBack = List.copyOf(explainedBack);
            notYetUnderstood = List.copyOf(notYetUnderstood);
        }
    }

    NewSchool school() {
        return new NewSchool(code, name, zone, language);
    }

    /// The first of a role.
    Staff first(Role role) {
        return staff.stream().filter(s -> s.granted().contains(role)).findFirst().orElseThrow();
    }

    /// How many students there are.
    int size() {
        return intakes.stream().mapToInt(c -> c.students().size()).sum();
    }

    /// Reads the file that comes with the program.
    static Roster shipped() {
        try (InputStream stream = Roster.class.getResourceAsStream(FILE)) {
            if (stream == null) {
                throw new IllegalStateException(FILE + " is missing from the program");
            }
            Object tree = new Load(LoadSettings.builder().build()).loadFromInputStream(stream);
            return JsonMapper.builder()
                    .addModule(new Jdk8Module())
                    .propertyNamingStrategy(PropertyNamingStrategies.KEBAB_CASE)
                    .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                    .build()
                    .convertValue(tree, Roster.class);
        } catch (IOException e) {
            throw new IllegalStateException(FILE + " cannot be read", e);
        }
    }
}
