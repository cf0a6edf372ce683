package org.groundline.web.brief;

/// English.
record EnglishBriefWords() implements BriefWords {
    @Override
    public String briefs() {
        return "Briefs";
    }

    @Override
    public String briefsOf(String module) {
        return "Briefs: " + module;
    }

    @Override
    public String brief() {
        return "Brief";
    }

    @Override
    public String whatFor() {
        return "One page on each topic, to be read before practising it.";
    }

    @Override
    public String unread() {
        return "not read yet";
    }

    @Override
    public String read(String day) {
        return "read on " + day;
    }

    @Override
    public String changed(String day) {
        return "changed since it was read on " + day;
    }

    @Override
    public String readOf(int read, int all) {
        return "Briefs: %d of %d read".formatted(read, all);
    }

    @Override
    public String noBriefYet() {
        return "no brief yet";
    }

    @Override
    public String noBriefs() {
        return "No topic of this module has a brief yet.";
    }

    @Override
    public String iHaveRead() {
        return "I have read this";
    }

    @Override
    public String acknowledging() {
        return "Your instructor sees which briefs you have read. It counts for nothing else.";
    }

    @Override
    public String practise() {
        return "Practise this topic";
    }

    @Override
    public String backToCourse() {
        return "Back to the course";
    }

    @Override
    public String allOfModule() {
        return "All briefs of the module, to print";
    }

    @Override
    public String onSheets() {
        return "Printed, each brief is one sheet of A4: for the wall or a folder.";
    }

    @Override
    public String objectives() {
        return "Objectives";
    }

    @Override
    public String servedObjectives() {
        return "What you should be able to do afterwards";
    }

    @Override
    public String sources() {
        return "Sources";
    }

    @Override
    public String version(String digits) {
        return "Version " + digits;
    }
}
