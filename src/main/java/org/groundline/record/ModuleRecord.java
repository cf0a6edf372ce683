package org.groundline.record;

import org.groundline.bank.Module;

import java.util.List;
import java.util.Optional;

/// A student's record in one module, with the evidence behind each requirement.
///
/// The requirements of a sign-off are three: a counted test passed, every safety-critical answer
/// that was not right talked through, every demonstration of the module observed.
///
/// @param attempts counted sittings handed in, in the order they were begun
/// @param sittingNow whether a test is being sat
/// @param toTalkThrough from all counted sittings of the module
/// @param signOffs in the order they were entered, reversed ones among them
public record ModuleRecord(
        Module module,
        List<Attempt> attempts,
        boolean sittingNow,
        List<TalkItem> toTalkThrough,
        List<ShownDemonstration> demonstrations,
        List<SignOff> signOffs) {
    public ModuleRecord {
        attempts = List.copyOf(attempts);
        toTalkThrough = List.copyOf(toTalkThrough);
        demonstrations = List.copyOf(demonstrations);
        signOffs = List.copyOf(signOffs);
    }

    /// The test that a sign-off would rest on: the last one passed.
    public Optional<Attempt> basis() {
        return attempts.stream().filter(Attempt::passed).reduce((first, second) -> second);
    }

    /// The demonstrations not observed yet.
    public List<ShownDemonstration> toShow() {
        return demonstrations.stream().filter(d -> d.observed().isEmpty()).toList();
    }

    /// The sign-off that stands.
    public Optional<SignOff> standing() {
        return signOffs.stream().filter(SignOff::stands).findFirst();
    }

    /// Where the student stands.
    public ModuleState state() {
        if (standing().isPresent()) {
            return new ModuleState.SignedOff(standing().get().at());
        }
        if (basis().isPresent()) {
            return toTalkThrough.isEmpty() && toShow().isEmpty()
                    ? new ModuleState.Ready()
                    : new ModuleState.Passed(toTalkThrough.size(), toShow().size());
        }
        if (sittingNow) {
            return new ModuleState.Sitting();
        }
        return attempts.isEmpty()
                ? new ModuleState.NotBegun()
                : notPassed(attempts.get(attempts.size() - 1));
    }

    private static ModuleState notPassed(Attempt last) {
        return new ModuleState.NotPassed(last.hundredths(), last.possible(), last.passMark());
    }
}
