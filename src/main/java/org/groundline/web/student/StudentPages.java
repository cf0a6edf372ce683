package org.groundline.web.student;

import org.groundline.web.Doors;
import org.groundline.web.request.Routes;

/// All pages of a student.
public final class StudentPages {
    private final Doors doors;

    public StudentPages(Doors doors) {
        this.doors = doors;
    }

    public void addTo(Routes routes) {
        new CoursePages(doors).addTo(routes);
        new PracticePages(doors).addTo(routes);
        new TestPages(doors).addTo(routes);
        new SittingPages(doors).addTo(routes);
        new ResultPages(doors).addTo(routes);
    }
}
