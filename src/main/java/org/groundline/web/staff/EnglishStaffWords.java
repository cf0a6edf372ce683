package org.groundline.web.staff;

/// English.
record EnglishStaffWords() implements StaffWords {
    @Override
    public String classBoard() {
        return "Class board";
    }

    @Override
    public String student() {
        return "Student";
    }

    @Override
    public String intake() {
        return "Intake";
    }

    @Override
    public String allIntakes() {
        return "All intakes";
    }

    @Override
    public String show() {
        return "Show";
    }

    @Override
    public String noStudents() {
        return "No students yet. Each student of the intake will stand here with where they are in each module. Enter students on the page People first.";
    }

    @Override
    public String ready() {
        return "ready to sign";
    }

    @Override
    public String sittingNow() {
        return "sitting a test";
    }

    @Override
    public String notBegun() {
        return "not begun";
    }

    @Override
    public String erased() {
        return "(erased)";
    }

    @Override
    public String requirements() {
        return "Requirements";
    }

    @Override
    public String met() {
        return "met";
    }

    @Override
    public String missing() {
        return "missing";
    }

    @Override
    public String testPassed() {
        return "Progress test passed";
    }

    @Override
    public String noTestYet() {
        return "No test was sat yet";
    }

    @Override
    public String talkedThrough() {
        return "Safety-critical answers talked through";
    }

    @Override
    public String nothingOpen() {
        return "None is open";
    }

    @Override
    public String demonstrations() {
        return "Demonstrations";
    }

    @Override
    public String toTalkThrough() {
        return "To talk through";
    }

    @Override
    public String given() {
        return "Answered";
    }

    @Override
    public String unanswered() {
        return "Not answered";
    }

    @Override
    public String outcome() {
        return "What came of the talk";
    }

    @Override
    public String explainedBack() {
        return "The student explained it back";
    }

    @Override
    public String notYetUnderstood() {
        return "Not yet understood";
    }

    @Override
    public String note() {
        return "Note (kept apart from the record, can be erased)";
    }

    @Override
    public String recordTalk() {
        return "Record the talk";
    }

    @Override
    public String observed() {
        return "observed";
    }

    @Override
    public String notObserved() {
        return "Not observed yet";
    }

    @Override
    public String observedToday() {
        return "I observed it today";
    }

    @Override
    public String signOff() {
        return "Sign off";
    }

    @Override
    public String signing() {
        return "By signing you say that the student has understood the theory of this module. The entry cannot be edited; a mistake is put right by a reversal with a reason.";
    }

    @Override
    public String password() {
        return "Your password";
    }

    @Override
    public String opensWhenMet() {
        return "Opens when nothing is missing above.";
    }

    @Override
    public String signOffs() {
        return "Sign-offs";
    }

    @Override
    public String signedOffBy() {
        return "signed off by";
    }

    @Override
    public String reversedBy() {
        return "reversed by";
    }

    @Override
    public String reason() {
        return "Reason";
    }

    @Override
    public String reverse() {
        return "Reverse this sign-off";
    }

    @Override
    public String attempts() {
        return "Tests";
    }

    @Override
    public String result() {
        return "result";
    }

    @Override
    public String notSaved() {
        return "Not saved.";
    }

    @Override
    public String tests() {
        return "Tests";
    }

    @Override
    public String openTest() {
        return "Open a test";
    }

    @Override
    public String module() {
        return "Module";
    }

    @Override
    public String hours() {
        return "Can be begun for";
    }

    @Override
    public String hoursUnit() {
        return "hours from now";
    }

    @Override
    public String place() {
        return "Place";
    }

    @Override
    public String openButton() {
        return "Open the test";
    }

    @Override
    public String openHint() {
        return "Each student who begins gets a paper of their own from the same rules. The time for the paper runs from the moment it is begun.";
    }

    @Override
    public String openedTests() {
        return "Opened tests";
    }

    @Override
    public String noTests() {
        return "No test was opened yet. Choose a module and an intake below.";
    }

    @Override
    public String from() {
        return "From";
    }

    @Override
    public String until() {
        return "Until";
    }

    @Override
    public String by() {
        return "By";
    }

    @Override
    public String openNow() {
        return "open now";
    }

    @Override
    public String closed() {
        return "closed";
    }

    @Override
    public String test() {
        return "Test";
    }

    @Override
    public String noIntakeYet() {
        return "There is no intake yet. Begin one on the page People.";
    }

    @Override
    public String passRates() {
        return "Pass rates by topic";
    }

    @Override
    public String topic() {
        return "Topic";
    }

    @Override
    public String counted() {
        return "Counted";
    }

    @Override
    public String sameInFigures() {
        return "The same in figures";
    }

    @Override
    public String said() {
        return "Count";
    }

    @Override
    public String share() {
        return "Share";
    }

    @Override
    public String range() {
        return "95\u202f% range";
    }

    @Override
    public String ratesCaption(String passMark) {
        return "Share of students who reached the pass mark ("
                + passMark
                + " of the marks) in the topic, at their first counted sitting. Dot: what was seen; line: the range in which the true share may well lie (95\u202f%).";
    }

    @Override
    public String howComputed() {
        return "How is this computed?";
    }

    @Override
    public String howComputedText() {
        return "Each student counts once a module, in the first counted sitting of it; practice never counts. A topic’s share is students who reached the pass mark within the topic, divided by students whose sitting held enough items of it (the policy says how many). The range is Wilson’s: (p + z²/2n ± z·√(p(1−p)/n + z²/4n²)) / (1 + z²/n) with z = 1.96. Where sittings held fewer items, the share of items missed is given instead, its range widened because the items of one student hang together. With too few students nothing is said.";
    }

    @Override
    public String itemsMissed() {
        return "items missed";
    }

    @Override
    public String people() {
        return "People";
    }

    @Override
    public String name() {
        return "Name";
    }

    @Override
    public String roles() {
        return "Roles";
    }

    @Override
    public String email() {
        return "E-mail address";
    }

    @Override
    public String enterPerson() {
        return "Enter a person";
    }

    @Override
    public String givenName() {
        return "Given name";
    }

    @Override
    public String familyName() {
        return "Family name";
    }

    @Override
    public String firstPassword() {
        return "First password";
    }

    @Override
    public String firstPasswordHint() {
        return "At least 12 letters. Give it to the person, who can change it.";
    }

    @Override
    public String role() {
        return "Role";
    }

    @Override
    public String authorisation() {
        return "Authorisation, for instructors who sign";
    }

    @Override
    public String authNumber() {
        return "Number";
    }

    @Override
    public String issuer() {
        return "Issued by";
    }

    @Override
    public String validUntil() {
        return "Valid until";
    }

    @Override
    public String enter() {
        return "Enter";
    }

    @Override
    public String intakes() {
        return "Intakes";
    }

    @Override
    public String begins() {
        return "begins";
    }

    @Override
    public String beginIntake() {
        return "Begin an intake";
    }

    @Override
    public String beginsOn() {
        return "Begins on";
    }

    @Override
    public String addStudent() {
        return "Put a student into it";
    }

    @Override
    public String add() {
        return "Add";
    }

    @Override
    public String noMembers() {
        return "Nobody is in it yet.";
    }

    @Override
    public String policy() {
        return "Policy";
    }

    @Override
    public String rule() {
        return "Rule";
    }

    @Override
    public String value() {
        return "Value";
    }

    @Override
    public String passMark() {
        return "Pass mark of a paper";
    }

    @Override
    public String topicItems() {
        return "Items of a topic a sitting needs, to count for the topic’s rate";
    }

    @Override
    public String numericShare() {
        return "Numeric items in a paper, at most";
    }

    @Override
    public String studentsToSpeak() {
        return "Students below which a rate stays silent";
    }

    @Override
    public String changePolicy() {
        return "Enter the next version";
    }

    @Override
    public String policyHint() {
        return "Holds for sittings that begin from now on; each sitting keeps the version it was begun under.";
    }

    @Override
    public String enterVersion() {
        return "Enter this version";
    }

    @Override
    public String percent() {
        return "percent";
    }

    @Override
    public String items() {
        return "items";
    }

    @Override
    public String studentsUnit() {
        return "students";
    }

    @Override
    public String signed(String day) {
        return "signed " + day;
    }

    @Override
    public String passed(int talks, int demonstrations) {
        return "passed"
                + (talks > 0 ? ", " + talks + (talks == 1 ? " talk open" : " talks open") : "")
                + (demonstrations > 0 ? ", " + demonstrations + " to be shown" : "");
    }

    @Override
    public String notPassed(String percent) {
        return "not passed, " + percent;
    }

    @Override
    public String attempt(int hundredths, int possible, String day) {
        return "%s of %d marks, %s, on %s"
                .formatted(
                        java.math.BigDecimal.valueOf(hundredths, 2)
                                .stripTrailingZeros()
                                .toPlainString(),
                        possible / 100,
                        org.groundline.web.request.Percent.whole(hundredths, possible),
                        day);
    }

    @Override
    public String openTalks(int open) {
        return open
                + (open == 1
                        ? " answer still to be talked through"
                        : " answers still to be talked through");
    }

    @Override
    public String talksBefore(int talks) {
        return talks
                + (talks == 1
                        ? " talk so far, not yet understood"
                        : " talks so far, not yet understood");
    }

    @Override
    public String asOf(String time) {
        return "As of " + time;
    }

    @Override
    public String students(int count) {
        return count + (count == 1 ? " student" : " students");
    }

    @Override
    public String tooFew(int count) {
        return count == 0 ? "nobody has sat this yet" : "too few students to say: " + count;
    }

    @Override
    public String reached(int reached, int students) {
        return "%d of %d students reached the mark".formatted(reached, students);
    }

    @Override
    public String missed(int missed, int items) {
        return "%d of %d items missed".formatted(missed, items);
    }

    @Override
    public String version(int version, String since) {
        return "Version %d, in force since %s".formatted(version, since);
    }
}
