package org.groundline.web.staff;

import org.groundline.web.Doors;
import org.groundline.web.request.Routes;

/// All pages for instructors and the school.
public final class StaffPages {
    private final Doors doors;

    public StaffPages(Doors doors) {
        this.doors = doors;
    }

    public void addTo(Routes routes) {
        new BoardPages(doors).addTo(routes);
        new RecordPages(doors).addTo(routes);
        new TestPages(doors).addTo(routes);
        new RatePages(doors).addTo(routes);
        new PeoplePages(doors).addTo(routes);
        new PolicyPages(doors).addTo(routes);
    }
}
